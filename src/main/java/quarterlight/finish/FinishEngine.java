package quarterlight.finish;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import quarterlight.car.FinishProfile;
import quarterlight.finish.history.Scenario;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.finish.model.CarPosterior;
import quarterlight.finish.model.Draws;
import quarterlight.finish.model.Panel;
import quarterlight.finish.place.SpotNeighbors;
import quarterlight.units.Thickness;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.trial.SignKind;

/** Computes finish histories for one profile. Immutable, safe for several threads. */
public final class FinishEngine {
    private final FinishProfile profile;
    private final Draws draws;

    public FinishEngine(FinishProfile profile) {
        this(profile, Draws.USUAL);
    }

    /** @param draws values of the judged numbers to integrate over */
    public FinishEngine(FinishProfile profile, Draws draws) {
        this.profile = profile;
        this.draws = draws;
    }

    public FinishProfile profile() {
        return profile;
    }

    /** @throws IllegalArgumentException if the evidence is of another profile, or of no zone */
    public FinishHistory history(FinishEvidence evidence) {
        return joint(evidence).history();
    }

    /**
     * The history with what ties the zones together.
     *
     * @throws IllegalArgumentException if the evidence is of another profile, or of no zone
     */
    public JointHistory joint(FinishEvidence evidence) {
        if (evidence.profile() != profile || evidence.zones().isEmpty()) {
            throw new IllegalArgumentException("this engine is for profile " + profile.word()
                    + " and for one zone at least, not for profile "
                    + evidence.profile().word() + " with " + evidence.zones().size());
        }
        List<ZoneEvidence> zones = evidence.zones().stream()
                .sorted(Comparator.comparing(ZoneEvidence::zone))
                .toList();
        List<Panel> all = panels(evidence, zones);
        PanelPlaces places = PanelPlaces.of(zones, all);
        CarPosterior car = CarPosterior.of(places.panels(), profile, draws);
        List<ZoneHistory> histories = new ArrayList<>();
        List<FinishHistory.ZonePrior> priors = new ArrayList<>();
        for (ZoneEvidence zone : evidence.zones()) {
            ZoneReport report = new ZoneReport(car.panel(places.of(zone.zone())), zone, evidence);
            if (zone.isJudged()) {
                histories.add(report.history());
            } else {
                priors.add(report.prior());
            }
        }
        double[] level = car.level();
        FinishHistory history = new FinishHistory(
                profile,
                new Thickness(ThicknessUnit.MIL.toUm(level[0])),
                new Thickness(ThicknessUnit.MIL.toUm(level[1])),
                scenarios(car),
                histories,
                priors,
                Remarks.of(evidence));
        return new JointHistory(evidence, places, car, history);
    }

    private static Map<Scenario, Double> scenarios(CarPosterior car) {
        double[] all = car.scenarios();
        Map<Scenario, Double> scenarios = new EnumMap<>(Scenario.class);
        for (Scenario scenario : Scenario.values()) {
            scenarios.put(scenario, all[scenario.ordinal()]);
        }
        return scenarios;
    }

    static List<Panel> panels(FinishEvidence evidence, List<ZoneEvidence> zones) {
        Set<SignKind> silent = silent(zones);
        List<Panel> panels = new ArrayList<>();
        double rangeMil = ThicknessUnit.MIL.fromUm(evidence.gaugeRange().um());
        for (ZoneEvidence zone : zones) {
            ZoneEvidence usable = zone.usable();
            List<Double> mil = new ArrayList<>();
            usable.spotsUm().forEach(um -> mil.add(ThicknessUnit.MIL.fromUm(um)));
            for (int n = 0; n < usable.overRange(); n++) {
                mil.add(rangeMil);
            }
            int[] order = IntStream.range(0, mil.size())
                    .boxed()
                    .sorted(Comparator.comparing(mil::get))
                    .mapToInt(n -> n)
                    .toArray();
            List<ViewPoint> places = usable.allPlaces().isEmpty()
                    ? List.of()
                    : Arrays.stream(order).mapToObj(usable.allPlaces()::get).toList();
            List<SignKind> unsaid = silent.stream()
                    .filter(sign -> !usable.signs().containsKey(sign))
                    .filter(sign -> usable.readable() || sign != SignKind.WEAK_MAGNET)
                    .toList();
            panels.add(new Panel(
                    zone.zone().value(),
                    Arrays.stream(order).mapToObj(mil::get).toList(),
                    usable.noMetal(),
                    usable.signs(),
                    unsaid,
                    usable.rust(),
                    SpotNeighbors.of(places)));
        }
        return panels;
    }

    /** Signs that were noted as seen somewhere and nowhere as absent: this inspector writes down only what is there. */
    private static Set<SignKind> silent(Collection<ZoneEvidence> zones) {
        Set<SignKind> silent = EnumSet.noneOf(SignKind.class);
        zones.forEach(zone -> zone.signs().forEach((sign, seen) -> {
            if (seen) {
                silent.add(sign);
            }
        }));
        zones.forEach(zone -> zone.signs().forEach((sign, seen) -> {
            if (!seen) {
                silent.remove(sign);
            }
        }));
        return silent;
    }
}
