package quarterlight.findings;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.car.Zone;
import quarterlight.rust.ZoneRust;
import quarterlight.rust.need.Load;
import quarterlight.rust.need.LoadTable;
import quarterlight.thickness.ZoneThickness;
import quarterlight.thickness.gauge.GaugeReach;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.trial.Trial;
import quarterlight.visit.trial.TrialNames;
import quarterlight.visit.trial.TrialResult;

/**
 * What was not looked at, measured or tried: the other half of every finding. Immutable.
 *
 * @param stated zones that the inspector says were not looked at, with the reason
 * @param structural zones that carry load in this construction and were not looked at for rust
 * @param unmeasured outer panels without a reading, of those that the gauge could read
 * @param panels how many outer panels the gauge could read
 * @param untried functions that were not tried, with the reason if one was noted
 */
public record NotLookedAt(
        List<String> stated, List<Zone> structural, List<Zone> unmeasured, int panels, List<String> untried) {
    private static final int NAMED = 6;
    private static final Set<Load> CARRIES = EnumSet.of(Load.MAIN, Load.SHELL);

    public NotLookedAt {
        stated = List.copyOf(stated);
        structural = List.copyOf(structural);
        unmeasured = List.copyOf(unmeasured);
        untried = List.copyOf(untried);
    }

    public static NotLookedAt of(Findings car) {
        List<String> stated = new ArrayList<>();
        for (Statement row : car.visit().standing()) {
            if (row.is(Condition.NOT_LOOKED_AT)) {
                String label = car.catalog()
                        .find(row.zone())
                        .map(Zone::label)
                        .orElse(row.zone().value());
                stated.add(label + ": " + row.text());
            }
        }
        List<Zone> zones = car.zones();
        List<Zone> structural = zones.stream()
                .filter(zone -> CARRIES.contains(
                        LoadTable.of(zone, car.visit().facts().car().body().construction())))
                .filter(zone ->
                        !car.rust().zone(zone.id()).map(ZoneRust::lookedAt).orElse(false))
                .toList();
        List<Zone> panels = zones.stream()
                .filter(Zone::finish)
                .filter(zone -> isReadable(car, zone))
                .toList();
        List<Zone> unmeasured = panels.stream()
                .filter(zone -> car.thickness()
                        .zone(zone.id())
                        .map(ZoneThickness::spots)
                        .map(List::isEmpty)
                        .orElse(true))
                .toList();
        List<String> untried = new ArrayList<>();
        for (Recorded<Trial> row : car.visit().trials()) {
            if (row.value().result() == TrialResult.NOT_TRIED) {
                untried.add(TrialNames.said(row.value().item())
                        + row.value().note().map(note -> " (" + note + ")").orElse(""));
            }
        }
        return new NotLookedAt(stated, structural, unmeasured, panels.size(), untried);
    }

    private static boolean isReadable(Findings car, Zone zone) {
        return car.thickness()
                .zone(zone.id())
                .map(ZoneThickness::readable)
                .orElseGet(() -> GaugeReach.reads(
                        car.visit().facts().car().substrateOf(zone.id()),
                        car.thickness().modes()));
    }

    /** Whether no panel was measured of those that the gauge could read. */
    public boolean nothingMeasured() {
        return panels > 0 && unmeasured.size() == panels;
    }

    /** Full sentences; none if nothing was left out. */
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>(stated);
        if (!structural.isEmpty()) {
            sentences.add(say("matters.not-looked-at.not-looked-at-for-rust", named(structural)));
        }
        if (!unmeasured.isEmpty()) {
            sentences.add(say("matters.not-looked-at.outer-panels-without-a-reading", named(unmeasured)));
        }
        if (!untried.isEmpty()) {
            sentences.add(say("matters.not-looked-at.not-tried", String.join("; ", untried)));
        }
        return sentences;
    }

    private static String named(List<Zone> zones) {
        String names = zones.stream().limit(NAMED).map(Zone::label).collect(Collectors.joining("; "));
        return zones.size() > NAMED ? say("matters.not-looked-at.and-more", names, zones.size() - NAMED) : names;
    }
}
