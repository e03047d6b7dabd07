package quarterlight.compare;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.marks.Contradiction;
import quarterlight.rust.ZoneRust;
import quarterlight.rust.need.RepairNeed;
import quarterlight.thickness.ZoneThickness;
import quarterlight.thickness.statistics.MeanDifference;
import quarterlight.units.Numerals;
import quarterlight.units.ThicknessText;

/**
 * Finds where a zone of two cars differs beyond its uncertainty. Rules (judgement but for the interval):
 * <ul>
 *   <li>thickness: each mean over the level of its own car; the two shares lie apart by a factor of 1.6 or more, and the
 *       95 % Welch interval of the difference of their logarithms does not hold 0; two spots each are needed. How thick one
 *       car is beside another says nothing by itself. It speaks for neither car. Nothing is said if a gauge check failed.
 *   <li>refinish likelihood: the bands over the three priors lie apart, and the likelihoods by 20 points or more.
 *   <li>repair likelihood: below 20 on one side and above 50 on the other.
 *   <li>rust: the shares differ by more than 2 standard deviations from the marking, and the grades differ.
 *   <li>repair need: the needs differ.
 *   <li>dates: one side has dates, numbers or features that do not go together with the car; it speaks for the other if
 *       dates were judged there too, else that is evidence which the other lacks.
 * </ul>
 */
final class ZoneContrasts {
    private static final double LEVEL = 0.95;
    /** Least factor between the shares of two cars' levels worth saying: two steps of the scale of the diagram; judgment. */
    private static final double CLEAR_FACTOR = 1.6;

    /** Bare metal may read 0 or less, which has no logarithm: it counts as this much. */
    private static final double LEAST_UM = 1;

    /** Least difference of two refinish likelihoods worth saying: one step of the hatching; judgement. */
    private static final int CLEAR_POINTS = 20;

    private static final int LOW_REPAIR = 20;
    private static final int HIGH_REPAIR = 50;
    private static final double SDS = 2;

    private final ZoneFacts a;
    private final ZoneFacts b;
    private final Letters letters;
    private final ThicknessText unit;
    private final List<Contrast> found = new ArrayList<>();

    private ZoneContrasts(ZoneFacts a, ZoneFacts b, Letters letters, ThicknessText unit) {
        this.a = a;
        this.b = b;
        this.letters = letters;
        this.unit = unit;
    }

    static List<Contrast> of(ZoneFacts a, ZoneFacts b, Letters letters, ThicknessText unit) {
        ZoneContrasts contrasts = new ZoneContrasts(a, b, letters, unit);
        contrasts.thickness();
        contrasts.finish();
        contrasts.rust();
        contrasts.need();
        contrasts.dates();
        return contrasts.found;
    }

    private void thickness() {
        double[] spotsA = spots(a);
        double[] spotsB = spots(b);
        if (spotsA.length == 0 && spotsB.length == 0 || a.gaugeFailed() || b.gaugeFailed()) {
            return;
        }
        if (spotsA.length < 2 || spotsB.length < 2) {
            if (spotsA.length >= 2 || spotsB.length >= 2) {
                Side lacks = spotsA.length < 2 ? Side.A : Side.B;
                int has = Math.min(spotsA.length, spotsB.length);
                missing(
                        Aspect.THICKNESS,
                        lacks,
                        say(
                                has == 0
                                        ? "compare.zone-contrasts.not-measured-on"
                                        : "compare.zone-contrasts.measured-at-one-spot-only",
                                letters.of(lacks)));
            }
            return;
        }
        double levelA = a.levelUm().orElseThrow();
        double levelB = b.levelUm().orElseThrow();
        double shareA = mean(spotsA) / levelA;
        double shareB = mean(spotsB) / levelB;
        boolean apart = Math.max(shareA, shareB) >= CLEAR_FACTOR * Math.min(shareA, shareB);
        if (apart && isClear(logs(spotsA, levelA), logs(spotsB, levelB))) {
            difference(
                    Aspect.THICKNESS,
                    Optional.empty(),
                    level(Side.A, mean(spotsA), levelA) + "; " + level(Side.B, mean(spotsB), levelB));
        }
    }

    private String level(Side side, double um, double levelUm) {
        return say(
                "compare.zone-contrasts.times-the-level-of-its",
                Numerals.fixed(um / levelUm, 1),
                letters.of(side),
                unit.of(um),
                unit.of(levelUm));
    }

    private static boolean isClear(double[] logsA, double[] logsB) {
        return scatterless(logsA) && scatterless(logsB)
                || MeanDifference.of(logsA, logsB, LEVEL).isClear();
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }

    private static double[] logs(double[] um, double levelUm) {
        return Arrays.stream(um)
                .map(value -> Math.log(Math.max(value, LEAST_UM) / levelUm))
                .toArray();
    }

    private static double[] spots(ZoneFacts facts) {
        return facts.thickness()
                .filter(zone -> zone.readable() && facts.levelUm().isPresent())
                .map(ZoneThickness::spotsUm)
                .orElse(new double[0]);
    }

    private static boolean scatterless(double[] values) {
        for (double value : values) {
            if (value != values[0]) {
                return false;
            }
        }
        return true;
    }

    private void finish() {
        if (a.history().isEmpty() && b.history().isEmpty() || a.gaugeFailed() || b.gaugeFailed()) {
            return;
        }
        if (a.history().isEmpty() || b.history().isEmpty()) {
            Side lacks = b.history().isEmpty() ? Side.B : Side.A;
            missing(Aspect.REFINISH, lacks, say("compare.zone-contrasts.no-spot-and-no-sign", letters.of(lacks)));
            return;
        }
        if (!a.finishEvidence()) {
            return;
        }
        ZoneHistory left = a.history().get();
        ZoneHistory right = b.history().get();
        boolean aLower = left.notFactoryHigh() < right.notFactoryLow();
        boolean apart = aLower || right.notFactoryHigh() < left.notFactoryLow();
        if (apart && Math.abs(left.refinishScore() - right.refinishScore()) >= CLEAR_POINTS) {
            difference(
                    Aspect.REFINISH,
                    Optional.of(aLower ? Side.A : Side.B),
                    both(
                            say("compare.zone-contrasts.refinish-likelihood"),
                            ZoneHistory.shown(left.refinishScore()),
                            ZoneHistory.shown(right.refinishScore())));
        }
        int repairA = left.repairScore();
        int repairB = right.repairScore();
        if (Math.min(repairA, repairB) < LOW_REPAIR && Math.max(repairA, repairB) > HIGH_REPAIR) {
            difference(
                    Aspect.REPAIR,
                    Optional.of(repairA < repairB ? Side.A : Side.B),
                    both(
                            say("compare.zone-contrasts.repair-likelihood"),
                            ZoneHistory.shown(repairA),
                            ZoneHistory.shown(repairB)));
        }
    }

    private void rust() {
        boolean lookedA = a.rust().map(ZoneRust::lookedAt).orElse(false);
        boolean lookedB = b.rust().map(ZoneRust::lookedAt).orElse(false);
        if (lookedA != lookedB) {
            Side lacks = lookedA ? Side.B : Side.A;
            missing(Aspect.RUST, lacks, say("compare.zone-contrasts.not-looked-at-for-rust", letters.of(lacks)));
            return;
        }
        if (!lookedA) {
            return;
        }
        ZoneRust left = a.rust().get();
        ZoneRust right = b.rust().get();
        if (left.percent().isEmpty() || right.percent().isEmpty()) {
            return;
        }
        double apart = left.percent().getAsDouble() - right.percent().getAsDouble();
        double open = SDS * Math.hypot(percentSd(left), percentSd(right));
        int gradeA = left.gradeD610().orElseThrow();
        int gradeB = right.gradeD610().orElseThrow();
        if (gradeA != gradeB && Math.abs(apart) > open) {
            difference(
                    Aspect.RUST,
                    Optional.of(apart < 0 ? Side.A : Side.B),
                    both(
                            say("compare.zone-contrasts.rust-grade-astm-d610"),
                            Integer.toString(gradeA),
                            Integer.toString(gradeB)));
        }
    }

    /** Standard deviation of the rusted share from the marking, points of percent. */
    private static double percentSd(ZoneRust zone) {
        return zone.zoneArea().isPresent()
                ? 100 * zone.rustSdMm2().orElse(0) / zone.zoneArea().get().mm2()
                : 0;
    }

    private void need() {
        Optional<RepairNeed> left = a.rust().flatMap(ZoneRust::need);
        Optional<RepairNeed> right = b.rust().flatMap(ZoneRust::need);
        if (left.isEmpty() || right.isEmpty() || left.equals(right)) {
            return;
        }
        difference(
                Aspect.NEED,
                Optional.of(left.get().compareTo(right.get()) < 0 ? Side.A : Side.B),
                both(
                        say("compare.zone-contrasts.repair-need"),
                        left.get().said(),
                        right.get().said()));
    }

    private void dates() {
        int left = a.dateContradictions().size();
        int right = b.dateContradictions().size();
        if (left == right) {
            return;
        }
        Side better = left < right ? Side.A : Side.B;
        ZoneFacts other = better == Side.A ? a : b;
        if (other.datesJudged() == 0) {
            missing(
                    Aspect.DATES,
                    better,
                    say("compare.zone-contrasts.no-date-read-on", letters.of(better), contradicts(better.other())));
        } else {
            difference(Aspect.DATES, Optional.of(better), contradicts(better.other()));
        }
    }

    private String contradicts(Side side) {
        ZoneFacts worse = side == Side.A ? a : b;
        return say(
                "compare.zone-contrasts.on-does-not-go-together",
                letters.of(side),
                worse.dateContradictions().stream().map(Contradiction::what).collect(Collectors.joining(", ")));
    }

    private String both(String what, String onA, String onB) {
        return say("compare.zone-contrasts.on-on", what, onA, letters.a(), onB, letters.b());
    }

    private void difference(Aspect aspect, Optional<Side> speaksFor, String text) {
        found.add(Contrast.difference(aspect, speaksFor, text));
    }

    private void missing(Aspect aspect, Side side, String text) {
        found.add(Contrast.missing(aspect, side, text));
    }
}
