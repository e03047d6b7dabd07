package quarterlight.findings;

import static quarterlight.language.Sentences.say;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.rust.ZoneRust;
import quarterlight.rust.need.RepairNeed;
import quarterlight.units.Numerals;
import quarterlight.visit.mark.OdometerFigure;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.statement.Claim;
import quarterlight.visit.statement.Judgment;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.statement.Statement;

/**
 * A claim laid against what the visit found: what speaks for or against it, what the program proposes, and what the inspector decided.
 * A proposal is made only for what a claim is {@code about} in words that the program knows, and only from evidence of the zones it
 * reaches; else it is open.
 *
 * @param found what the visit found of it, in sentences
 */
public record ClaimedAndFound(Claim claim, Judgment proposed, List<String> found) {
    /** At or below this a zone's refinish likelihood speaks for its first finish. Judgment: the mirror of what counts as likely. */
    private static final int UNLIKELY_SCORE = 20;

    private static final List<String> PAINT = List.of("paint", "finish", "refinish");
    private static final List<String> RUST = List.of("rust", "corrosion");
    private static final List<String> MILEAGE = List.of("mileage", "odometer", "miles", "kilometers");
    private static final List<String> DATES = List.of("numbers", "date", "engine", "matching");

    public ClaimedAndFound {
        Objects.requireNonNull(claim, "claim");
        Objects.requireNonNull(proposed, "proposed");
        found = List.copyOf(found);
    }

    /** What the inspector decided, else what the program proposes. */
    public Judgment judgment() {
        return claim.judged().orElse(proposed);
    }

    /** Every claim of a visit, in the order in which they were made. */
    public static List<ClaimedAndFound> of(Findings car) {
        return car.visit().claims().stream()
                .map(row -> new Laying(car, row.value()).result())
                .toList();
    }

    /** Lays one claim against the findings. */
    private static final class Laying {
        private final Findings car;
        private final Claim claim;
        private final List<String> found = new ArrayList<>();
        private boolean against;
        private boolean speaksFor;

        Laying(Findings car, Claim claim) {
            this.car = car;
            this.claim = claim;
        }

        ClaimedAndFound result() {
            if (isAbout(PAINT)) {
                paint();
            }
            if (isAbout(RUST)) {
                rust();
            }
            if (isAbout(MILEAGE)) {
                mileage();
            }
            if (isAbout(DATES)) {
                dates();
            }
            statements();
            Judgment proposed = against ? Judgment.CONTRADICTED : speaksFor ? Judgment.SUPPORTED : Judgment.OPEN;
            return new ClaimedAndFound(claim, proposed, found);
        }

        private boolean isAbout(List<String> words) {
            String about = claim.about().orElse("").toLowerCase(Locale.ROOT);
            return words.stream().anyMatch(about::contains);
        }

        private boolean reaches(ZoneId zone) {
            return claim.zone().map(zone::equals).orElse(true);
        }

        private String label(ZoneId zone) {
            return car.catalog().find(zone).map(Zone::label).orElse(zone.value());
        }

        private void paint() {
            List<ZoneHistory> known = car.history().zones().stream()
                    .filter(zone -> reaches(zone.zone()))
                    .filter(zone -> !zone.reasons().isEmpty())
                    .toList();
            known.stream()
                    .filter(zone -> zone.refinishScore() >= Findings.LIKELY_SCORE)
                    .forEach(zone -> {
                        against = true;
                        found.add(say(
                                "matters.claimed-and-found.refinish-likelihood-of-100",
                                label(zone.zone()),
                                zone.refinishScore()));
                    });
            if (!against && !known.isEmpty() && known.stream().allMatch(z -> z.refinishScore() <= UNLIKELY_SCORE)) {
                speaksFor = true;
                int highest = known.stream()
                        .mapToInt(ZoneHistory::refinishScore)
                        .max()
                        .orElse(0);
                found.add(say("matters.claimed-and-found.refinish-likelihood-of-zones-with", known.size(), highest));
            }
        }

        private void rust() {
            List<ZoneRust> looked = car.rust().zones().stream()
                    .filter(zone -> reaches(zone.zone().id()) && zone.lookedAt())
                    .toList();
            for (ZoneRust zone : looked) {
                boolean measured = zone.need().filter(n -> n != RepairNeed.NONE).isPresent();
                if (measured || !zone.byEye().isEmpty()) {
                    against = true;
                    found.add(zone.zone().label() + ": "
                            + (measured
                                    ? say(
                                            "matters.claimed-and-found.repair-need",
                                            zone.need().get().said())
                                    : say("matters.claimed-and-found.rust-seen-by-eye-not"))
                            + ".");
                }
            }
            if (!against && claim.zone().isPresent() && !looked.isEmpty()) {
                speaksFor = true;
                found.add(say(
                        "matters.claimed-and-found.looked-at-for-rust-none",
                        label(claim.zone().get())));
            }
        }

        /** A later figure below an earlier one contradicts, unless the odometer may have gone round. */
        private void mileage() {
            List<OdometerFigure> dated = car.visit().odometer().stream()
                    .map(Recorded::value)
                    .sorted(Comparator.comparing((OdometerFigure figure) ->
                            figure.date().map(date -> date.last()).orElse(java.time.LocalDate.MAX)))
                    .toList();
            dated.forEach(figure -> found.add(say(
                    "matters.claimed-and-found.odometer",
                    figure.date().map(date -> " " + date.said()).orElse(""),
                    Numerals.typed(figure.figure()),
                    figure.unit().said(),
                    figure.source().said())));
            BigDecimal before = BigDecimal.ZERO;
            for (OdometerFigure figure : dated) {
                boolean same = figure.unit() == dated.get(0).unit();
                if (same && figure.figure().compareTo(before) < 0 && !figure.wentRound()) {
                    against = true;
                }
                before = same ? figure.figure() : before;
            }
        }

        private void dates() {
            car.marks().contradictions().stream()
                    .filter(contradiction -> contradiction
                            .zone()
                            .map(this::reaches)
                            .orElse(claim.zone().isEmpty()))
                    .forEach(contradiction -> {
                        against = true;
                        found.add(contradiction.sentence());
                    });
        }

        /** What is stated of the zone that was claimed something of; grave and major ones for the car. */
        private void statements() {
            for (Statement statement : car.visit().standing()) {
                boolean here = claim.zone().equals(Optional.of(statement.zone()));
                boolean heavy = statement
                        .severity()
                        .filter(s -> s.compareTo(Severity.MAJOR) >= 0)
                        .isPresent();
                boolean samePart = claim.part().isEmpty()
                        || statement.details().part().isEmpty()
                        || claim.part().equals(statement.details().part());
                if (here && samePart || claim.zone().isEmpty() && heavy) {
                    found.add(label(statement.zone()) + ": " + statement.text());
                }
            }
        }
    }
}
