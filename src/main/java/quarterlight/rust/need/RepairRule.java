package quarterlight.rust.need;

import static quarterlight.language.Sentences.figure;
import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quarterlight.car.ZoneGroup;

/**
 * The rule that leads from how far rust goes in a zone, whether it went through, damage, and what the zone carries in this
 * construction, to its repair need: of the {@linkplain NeedClause clauses} that hold the strongest decides, and all that
 * hold are reasons. Any other rust asks to be cleaned and painted. Written out in {@code docs/methods/rust.md}.
 */
public final class RepairRule {
    public static String structuralCaution() {
        return say("rust.repair-rule.this-zone-carries-load-have");
    }

    public static String liftCaution() {
        return say("rust.repair-rule.nobody-goes-under-a-car");
    }

    public static String fuelBrakeCaution() {
        return say("rust.repair-rule.rust-on-fuel-or-brake");
    }

    static String paintCaution() {
        return say("rust.repair-rule.old-paint-may-hold-lead");
    }

    private static final int CLEAN_GRADE = 10;

    private final RepairEvidence e;
    private final Load load;
    private RepairNeed need = RepairNeed.NONE;
    private final List<String> reasons = new ArrayList<>();

    private RepairRule(RepairEvidence evidence) {
        this.e = evidence;
        this.load = evidence.load();
    }

    /** What the zone needs. */
    public static RepairAdvice judge(RepairEvidence evidence) {
        RepairRule rule = new RepairRule(evidence);
        for (NeedClause clause : NeedClause.of(rule.load)) {
            if (clause.holds(evidence)) {
                rule.reason(clause.need(), rule.sentence(clause));
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
            what += ", " + clause.measure().amount(found.known());
        } else if (clause.from() > 0) {
            what += say("rust.repair-rule.size-not-known-measure-it");
        }
        return clause.need() == RepairNeed.STRUCTURAL ? say("rust.repair-rule.in-a-zone-that-carries", what) : what;
    }

    private String lostInWords() {
        String largest = e.lost().unmeasured()
                ? say("rust.repair-rule.of-unknown-size")
                : figure("%,.0f mm2", e.lost().largestMm2());
        if (e.holes() == 0) {
            return say("rust.repair-rule.metal-rotted-through", largest);
        }
        return e.holes() == 1
                ? say("rust.repair-rule.1-hole", largest)
                : say("rust.repair-rule.holes-the-largest", e.holes(), largest);
    }

    private void rust() {
        if (e.rusted() && e.grade().isEmpty()) {
            reason(RepairNeed.REFINISH, say("rust.repair-rule.rust-of-unknown-share"));
        } else if (e.rusted() && e.grade().getAsInt() < CLEAN_GRADE) {
            reason(
                    RepairNeed.REFINISH,
                    say("rust.repair-rule.rust-over-grade", share(), e.grade().getAsInt()));
        } else if (e.rusted()) {
            reason(RepairNeed.NONE, say("rust.repair-rule.rust-over-touch-up", share()));
        } else if (e.lookedAt()) {
            reason(RepairNeed.NONE, say("rust.repair-rule.looked-at-no-rust"));
        } else {
            reason(RepairNeed.NONE, say("rust.repair-rule.not-looked-at"));
        }
    }

    private String share() {
        double percent = e.percent().orElse(0);
        return percent < 0.01
                ? say("rust.repair-rule.less-than-0-01")
                : figure(percent < 1 ? "%.2f %%" : "%.1f %%", percent);
    }

    private void reason(RepairNeed atLeast, String reason) {
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
