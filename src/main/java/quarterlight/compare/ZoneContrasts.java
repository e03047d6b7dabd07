package quarterlight.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.marks.Contradiction;
import quarterlight.rust.ZoneRust;
import quarterlight.rust.need.RepairNeed;
import quarterlight.thickness.ZoneThickness;
import quarterlight.thickness.statistics.MeanDifference;

/**
 * Finds where a zone of two cars differs beyond its uncertainty. Rules (judgement but for the interval):
 * <ul>
 *   <li>thickness: the 95 % Welch interval of the difference of means does not hold 0; two spots each are needed. It
 *       speaks for neither car.
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
    /** Least difference of two refinish likelihoods worth saying: one step of the hatching; judgement. */
    private static final int CLEAR_POINTS = 20;

    private static final int LOW_REPAIR = 20;
    private static final int HIGH_REPAIR = 50;
    private static final double SDS = 2;

    private final ZoneFacts a;
    private final ZoneFacts b;
    private final List<Contrast> found = new ArrayList<>();

    private ZoneContrasts(ZoneFacts a, ZoneFacts b) {
        this.a = a;
        this.b = b;
    }

    static List<Contrast> of(ZoneFacts a, ZoneFacts b) {
        ZoneContrasts contrasts = new ZoneContrasts(a, b);
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
        if (spotsA.length == 0 && spotsB.length == 0) {
            return;
        }
        if (spotsA.length < 2 || spotsB.length < 2) {
            if (spotsA.length >= 2 || spotsB.length >= 2) {
                Side lacks = spotsA.length < 2 ? Side.A : Side.B;
                int has = Math.min(spotsA.length, spotsB.length);
                missing(
                        Aspect.THICKNESS,
                        lacks,
                        has == 0 ? "not measured on " + lacks : "measured at one spot only on " + lacks);
            }
            return;
        }
        if (scatterless(spotsA) && scatterless(spotsB)) {
            if (spotsA[0] != spotsB[0]) {
                difference(Aspect.THICKNESS, Optional.empty(), um("", spotsA[0] - spotsB[0], "without any scatter"));
            }
            return;
        }
        MeanDifference difference = MeanDifference.of(spotsA, spotsB, LEVEL);
        if (difference.isClear()) {
            String interval = String.format(
                            Locale.ROOT, "95 %% interval %+.0f to %+.0f", difference.low(), difference.high())
                    .replace('-', '\u2212');
            difference(Aspect.THICKNESS, Optional.empty(), um("on average ", difference.difference(), interval));
        }
    }

    private static String um(String on, double difference, String how) {
        return String.format(
                Locale.ROOT,
                "A is %s%.0f\u2009\u00b5m %s than B (%s)",
                on,
                Math.abs(difference),
                difference > 0 ? "thicker" : "thinner",
                how);
    }

    private static double[] spots(ZoneFacts facts) {
        return facts.thickness()
                .filter(ZoneThickness::readable)
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
        if (a.history().isEmpty() && b.history().isEmpty()) {
            return;
        }
        if (a.history().isEmpty() || b.history().isEmpty()) {
            Side lacks = b.history().isEmpty() ? Side.B : Side.A;
            missing(Aspect.REFINISH, lacks, "no spot and no sign of its own on " + lacks);
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
                    "refinish likelihood " + ZoneHistory.shown(left.refinishScore()) + " on A, "
                            + ZoneHistory.shown(right.refinishScore()) + " on B");
        }
        int repairA = left.repairScore();
        int repairB = right.repairScore();
        if (Math.min(repairA, repairB) < LOW_REPAIR && Math.max(repairA, repairB) > HIGH_REPAIR) {
            difference(
                    Aspect.REPAIR,
                    Optional.of(repairA < repairB ? Side.A : Side.B),
                    "repair likelihood " + ZoneHistory.shown(repairA) + " on A, " + ZoneHistory.shown(repairB)
                            + " on B");
        }
    }

    private void rust() {
        boolean lookedA = a.rust().map(ZoneRust::lookedAt).orElse(false);
        boolean lookedB = b.rust().map(ZoneRust::lookedAt).orElse(false);
        if (lookedA != lookedB) {
            Side lacks = lookedA ? Side.B : Side.A;
            missing(Aspect.RUST, lacks, "not looked at for rust on " + lacks);
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
                    "rust grade (ASTM D610) " + gradeA + " on A, " + gradeB + " on B");
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
                "repair need " + left.get().word() + " on A, " + right.get().word() + " on B");
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
            missing(Aspect.DATES, better, "no date read on " + better + ", " + contradicts(better.other()));
        } else {
            difference(Aspect.DATES, Optional.of(better), contradicts(better.other()));
        }
    }

    private String contradicts(Side side) {
        ZoneFacts worse = side == Side.A ? a : b;
        return "on " + side + " does not go together with the car: "
                + worse.dateContradictions().stream().map(Contradiction::what).collect(Collectors.joining(", "));
    }

    private void difference(Aspect aspect, Optional<Side> speaksFor, String text) {
        found.add(Contrast.difference(aspect, speaksFor, text));
    }

    private void missing(Aspect aspect, Side side, String text) {
        found.add(Contrast.missing(aspect, side, text));
    }
}
