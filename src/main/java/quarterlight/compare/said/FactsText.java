package quarterlight.compare.said;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import quarterlight.car.Zone;
import quarterlight.compare.ZoneFacts;
import quarterlight.compare.matter.CarEvidence;
import quarterlight.compare.matter.MatterCell;
import quarterlight.compare.matter.Topic;
import quarterlight.compare.matter.ZoneAnswers;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.thickness.ZoneThickness;
import quarterlight.units.Numerals;
import quarterlight.units.ThicknessText;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.statement.Statement;

/**
 * What one car shows in one zone, in lines.
 *
 * @param known false if nothing was looked at there, or the car has no such zone
 * @param evident false if photos at most are known of it
 * @param lines one at least
 * @param level its mean thickness over the level of the car; empty if not measured
 * @param photos pinned there
 */
public record FactsText(
        boolean known, boolean evident, List<String> lines, OptionalDouble level, List<PhotoId> photos) {
    /** Letters that take more room than a photo beside them. */
    private static final int LONG = 900;

    public FactsText {
        lines = List.copyOf(lines);
        photos = List.copyOf(photos);
        if (lines.isEmpty()) {
            throw new IllegalArgumentException("a place is never left blank");
        }
    }

    boolean isLong() {
        return lines.stream().mapToInt(String::length).sum() > LONG;
    }

    static FactsText none(String place) {
        return new FactsText(
                false,
                false,
                List.of("Not on this car: it has no " + lower(place) + "."),
                OptionalDouble.empty(),
                List.of());
    }

    static FactsText of(CarEvidence car, Zone zone, ZoneFacts facts, ThicknessText unit) {
        List<String> lines = new ArrayList<>();
        OptionalDouble level = OptionalDouble.empty();
        if (zone.finish()) {
            level = level(facts);
            lines.add(thickness(facts, unit, level));
        }
        if (facts.finishEvidence()) {
            facts.history().map(FactsText::history).ifPresent(lines::add);
        }
        MatterCell rust = new ZoneAnswers(car, unit).of(Topic.RUST, zone.id(), Optional.empty());
        boolean lookedForRust = facts.rust().filter(one -> one.lookedAt()).isPresent();
        boolean rustMatters = lookedForRust || zone.structural() || zone.finish();
        if (rustMatters) {
            lines.add(rust.text());
        }
        facts.statements().stream()
                .map(Statement::text)
                .filter(text -> lines.stream().noneMatch(line -> line.contains(text)))
                .forEach(lines::add);
        if (facts.datesJudged() > 0) {
            lines.add(dates(facts));
        }
        List<PhotoId> photos = car.photos(zone.id());
        boolean known = level.isPresent()
                || facts.finishEvidence()
                || lookedForRust
                || !facts.statements().isEmpty()
                || facts.datesJudged() > 0;
        if (!known && !rustMatters) {
            lines.add(photos.isEmpty() ? "Nobody looked there." : "Photographed; nothing is recorded of it.");
        }
        return new FactsText(known || !photos.isEmpty(), known, lines, level, photos);
    }

    private static OptionalDouble level(ZoneFacts facts) {
        OptionalDouble mean = facts.thickness()
                .filter(ZoneThickness::readable)
                .map(ZoneThickness::meanUm)
                .orElse(OptionalDouble.empty());
        return mean.isPresent() && facts.levelUm().isPresent()
                ? OptionalDouble.of(mean.getAsDouble() / facts.levelUm().getAsDouble())
                : OptionalDouble.empty();
    }

    private static String thickness(ZoneFacts facts, ThicknessText unit, OptionalDouble level) {
        if (facts.thickness().isEmpty()) {
            return "Not measured.";
        }
        ZoneThickness zone = facts.thickness().get();
        List<String> parts = new ArrayList<>();
        zone.meanUm().stream().forEach(um -> parts.add(unit.of(um)));
        level.stream().forEach(share -> parts.add(Numerals.fixed(share, 1) + " times its level"));
        parts.add(Numerals.count(zone.spots().size(), "spot", "spots"));
        if (zone.noMetal() > 0) {
            parts.add("no metal found at " + zone.noMetal());
        }
        if (zone.overSpots() > 0) {
            parts.add("beyond the gauge's range at " + zone.overSpots());
        }
        String text = String.join(", ", parts) + ".";
        return !zone.readable()
                ? "The gauge cannot read what this is made of: " + text
                : facts.gaugeFailed() ? "With a gauge whose check failed: " + text : text;
    }

    private static String history(ZoneHistory history) {
        return "Refinish likelihood " + ZoneHistory.shown(history.refinishScore()) + " (band " + history.shownBand()
                + "), repair likelihood " + ZoneHistory.shown(history.repairScore()) + ", of 100.";
    }

    private static String dates(ZoneFacts facts) {
        return facts.dateContradictions().isEmpty()
                ? Numerals.count(facts.datesJudged(), "date or number", "dates and numbers")
                        + " judged; none contradicts."
                : facts.dateContradictions().stream().map(one -> one.sentence()).collect(Collectors.joining(" "));
    }

    private static String lower(String label) {
        return Character.toLowerCase(label.charAt(0)) + label.substring(1);
    }
}
