package quarterlight.compare.said;

import static quarterlight.language.Sentences.say;
import static quarterlight.language.Sentences.within;

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
                List.of(say("compare.facts-text.not-on-this-car-it", within(place))),
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
            lines.add(
                    photos.isEmpty()
                            ? say("compare.facts-text.nobody-looked-there")
                            : say("compare.facts-text.photographed-nothing-is-recorded-of"));
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
            return say("compare.facts-text.not-measured");
        }
        ZoneThickness zone = facts.thickness().get();
        List<String> parts = new ArrayList<>();
        zone.meanUm().stream().forEach(um -> parts.add(unit.of(um)));
        level.stream().forEach(share -> parts.add(say("compare.facts-text.times-its-level", Numerals.fixed(share, 1))));
        parts.add(say("compare.facts-text.spots", zone.spots().size()));
        if (zone.noMetal() > 0) {
            parts.add(say("compare.facts-text.no-metal-found-at", zone.noMetal()));
        }
        if (zone.overSpots() > 0) {
            parts.add(say("compare.facts-text.beyond-the-gauge-s-range", zone.overSpots()));
        }
        String text = String.join(", ", parts) + ".";
        return !zone.readable()
                ? say("compare.facts-text.the-gauge-cannot-read-what", text)
                : facts.gaugeFailed() ? say("compare.facts-text.with-a-gauge-whose-check", text) : text;
    }

    private static String history(ZoneHistory history) {
        return say(
                "compare.facts-text.refinish-likelihood-band-repair",
                ZoneHistory.shown(history.refinishScore()),
                history.shownBand(),
                ZoneHistory.shown(history.repairScore()));
    }

    private static String dates(ZoneFacts facts) {
        return facts.dateContradictions().isEmpty()
                ? say("compare.facts-text.dates-and-numbers-judged-none", facts.datesJudged())
                : facts.dateContradictions().stream().map(one -> one.sentence()).collect(Collectors.joining(" "));
    }
}
