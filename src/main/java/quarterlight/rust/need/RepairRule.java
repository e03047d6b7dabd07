package quarterlight.rust.need;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quarterlight.car.ZoneGroup;
import quarterlight.language.Sentences;

/**
 * The rule that leads from how far rust goes in a zone, whether it went through, damage, and what the zone carries in this
 * construction, to its repair need: of the {@linkplain NeedClause clauses} that hold the strongest decides, and all that
 * hold are reasons. Any other rust asks to be cleaned and painted. Written out in {@code docs/methods/rust.md}.
 */
public final class RepairRule {
    private static final int CLEAN_GRADE = 10;

    private final RepairEvidence e;
    private final Load load;
    private RepairNeed need = RepairNeed.NONE;
    private final List<String> reasons = new ArrayList<>();

    private RepairRule(RepairEvidence evidence) {
        this.e = evidence;
        this.load = evidence.load();
    }

    /** For a zone that carries load and has lost metal. */
    public static String structuralCaution() {
        return say("rust.caution.structural");
    }

    /** For rust on what holds fuel or brake fluid. */
    public static String fuelBrakeCaution() {
        return say("rust.caution.fuel-brake");
    }

    /** For work or a look under the car. */
    public static String liftCaution() {
        return say("rust.caution.lift");
    }

    /** For old paint that is to be worked on. */
    static String paintCaution() {
        return say("rust.caution.paint");
    }

    /** What the zone needs. */
    public static RepairAdvice judge(RepairEvidence evidence) {
        RepairRule rule = new RepairRule(evidence);
        for (NeedClause clause : NeedClause.of(rule.load)) {
            if (clause.holds(evidence)) {
                rule.found(clause.need(), rule.sentence(clause));
            }
        }
        rule.rust();
        return rule.advice();
    }

    private String sentence(NeedClause clause) {
        Extent found = clause.measure().in(e);
        String what = clause.measure().words();
        if (clause.measure() == NeedClause.Measure.LOST_LARGEST) {
            what = lostInWords();
        } else if (found.known() > 0) {
            what = say("rust.reason.amount", what, clause.measure().figure(found.known()));
        } else if (clause.from() > 0) {
            what = say("rust.reason.unmeasured", what);
        }
        return clause.need() == RepairNeed.STRUCTURAL ? say("rust.reason.structural", what) : what;
    }

    private String lostInWords() {
        String largest = e.lost().unmeasured()
                ? say("rust.reason.lost.unknown-size")
                : Sentences.figure("%,.0f mm2", e.lost().largestMm2());
        return switch (e.holes()) {
            case 0 -> say("rust.reason.lost.rotted", largest);
            case 1 -> say("rust.reason.lost.hole", largest);
            default -> say("rust.reason.lost.holes", e.holes(), largest);
        };
    }

    private void rust() {
        if (e.rusted() && e.grade().isEmpty()) {
            found(RepairNeed.REFINISH, say("rust.reason.share-unknown"));
        } else if (e.rusted() && e.grade().getAsInt() < CLEAN_GRADE) {
            found(
                    RepairNeed.REFINISH,
                    say("rust.reason.rust", share(), e.grade().getAsInt()));
        } else if (e.rusted()) {
            found(RepairNeed.NONE, say("rust.reason.touch-up", share()));
        } else if (e.lookedAt()) {
            found(RepairNeed.NONE, say("rust.reason.clean"));
        } else {
            found(RepairNeed.NONE, say("rust.reason.not-looked-at"));
        }
    }

    private String share() {
        double percent = e.percent().orElse(0);
        return percent < 0.01
                ? say("rust.reason.least-share")
                : Sentences.figure(percent < 1 ? "%.2f %%" : "%.1f %%", percent);
    }

    private void found(RepairNeed atLeast, String reason) {
        if (reasons.contains(reason)) {
            return;
        }
        if (atLeast.compareTo(need) > 0) {
            need = atLeast;
            reasons.add(0, reason);
        } else {
            reasons.add(reason);
        }
    }

    private RepairAdvice advice() {
        List<String> cautions = new ArrayList<>();
        boolean work = need != RepairNeed.NONE;
        if (need == RepairNeed.STRUCTURAL) {
            cautions.add(structuralCaution());
        }
        if (work && load == Load.FLUID) {
            cautions.add(fuelBrakeCaution());
        }
        if (work && e.zone().group() == ZoneGroup.UNDER) {
            cautions.add(liftCaution());
        }
        if (work && load != Load.FITTING) {
            cautions.add(paintCaution());
        }
        Optional<RepairNeed> answer = work || e.lookedAt() ? Optional.of(need) : Optional.empty();
        return new RepairAdvice(answer, reasons, cautions);
    }
}
