package quarterlight.rust;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import quarterlight.car.ZoneGroup;
import quarterlight.rust.RepairEvidence.Damage;
import quarterlight.visit.TraceKind;

/**
 * The rule that leads from rust grade, perforation and damage to the repair need of a zone; the strongest clause that
 * holds decides, and every clause that holds is a reason. Common practice without a published source; the numbers are
 * judgement. Written out in {@code docs/methods/rust.md}.
 */
final class RepairRule {
    static final String STRUCTURAL_CAUTION =
            "This zone carries load. Have it judged by a licensed person before the car is driven, lifted or jacked "
                    + "there; local rules say what may be repaired and by whom.";
    static final String LIFT_CAUTION =
            "Nobody goes under a car that only a jack holds up: it stands on stands or a lift, on firm ground.";
    static final String FUEL_BRAKE_CAUTION =
            "Rust on fuel or brake parts can let go without warning: no driving and no open flame or spark until a "
                    + "licensed person has judged them.";
    static final String PAINT_CAUTION =
            "Old paint may hold lead, chromium or cadmium: no dry sanding or blowing; follow local rules for the dust.";

    /** Share of a zone that is hole or rot from which a bolt-on panel is exchanged rather than patched. */
    private static final double REPLACE_LOST_PERCENT = 10;

    /** This many holes, too. */
    private static final int REPLACE_HOLES = 4;

    /** Grades at or below which scale or pitting counts as loss of metal: above 10 % (load), above 33 % (other). */
    private static final int LOAD_LOSS_GRADE = 3;

    private static final int PANEL_LOSS_GRADE = 1;
    private static final int CLEAN_GRADE = 10;

    private RepairNeed need = RepairNeed.NONE;
    private final List<String> reasons = new ArrayList<>();

    private RepairRule() {}

    static RepairAdvice judge(RepairEvidence evidence) {
        RepairRule rule = new RepairRule();
        rule.holes(evidence);
        rule.lostMetal(evidence);
        rule.damage(evidence);
        rule.rust(evidence);
        return rule.advice(evidence);
    }

    private void holes(RepairEvidence e) {
        if (e.holes() == 0 && !e.has(TraceKind.ROT)) {
            return;
        }
        String found = e.holes() == 0 ? "metal rotted through" : holesInWords(e);
        if (e.zone().structural()) {
            say(RepairNeed.STRUCTURAL, found + " in a zone that carries load");
        } else if (e.holes() >= REPLACE_HOLES) {
            say(RepairNeed.REPLACE, found + ": " + REPLACE_HOLES + " or more are past patching");
        } else if (e.lostPercent().orElse(0) >= REPLACE_LOST_PERCENT) {
            say(
                    RepairNeed.REPLACE,
                    String.format(
                            Locale.ROOT,
                            "%s, %.0f %% of the zone lost",
                            found,
                            e.lostPercent().getAsDouble()));
        } else {
            say(RepairNeed.PATCH, found);
        }
    }

    private static String holesInWords(RepairEvidence e) {
        String largest = e.largestHoleMm2().isPresent()
                ? String.format(Locale.ROOT, "%,.0f mm2", e.largestHoleMm2().getAsDouble())
                : "of unknown size";
        return e.holes() == 1 ? "1 hole, " + largest : e.holes() + " holes, the largest " + largest;
    }

    private void lostMetal(RepairEvidence e) {
        boolean eaten = e.has(TraceKind.SCALE) || e.has(TraceKind.PITTING);
        if (!eaten || e.grade().isEmpty()) {
            return;
        }
        int grade = e.grade().getAsInt();
        if (e.zone().structural() && grade <= LOAD_LOSS_GRADE) {
            say(RepairNeed.STRUCTURAL, "scale or pitting over " + share(e) + " of a zone that carries load");
        } else if (grade <= PANEL_LOSS_GRADE) {
            say(RepairNeed.REPLACE, "scale or pitting over " + share(e) + " of the zone");
        }
    }

    private void damage(RepairEvidence e) {
        if (e.has(TraceKind.CRACK)) {
            say(
                    e.zone().structural() ? RepairNeed.STRUCTURAL : RepairNeed.PATCH,
                    e.zone().structural() ? "a crack in a zone that carries load" : "a crack");
        }
        if (e.damage() == Damage.GRAVE) {
            say(
                    e.zone().structural() ? RepairNeed.STRUCTURAL : RepairNeed.REPLACE,
                    e.zone().structural() ? "grave damage to a zone that carries load" : "grave damage");
        } else if (e.damage() == Damage.MAJOR) {
            say(RepairNeed.PATCH, "major damage");
        } else if (e.damage() == Damage.SLIGHT) {
            say(RepairNeed.REFINISH, "damage");
        }
    }

    private void rust(RepairEvidence e) {
        boolean rusted = e.kinds().stream().anyMatch(RustReport::isRust);
        if (rusted && e.grade().isEmpty()) {
            say(RepairNeed.REFINISH, "rust of unknown share");
        } else if (rusted && e.grade().getAsInt() < CLEAN_GRADE) {
            say(
                    RepairNeed.REFINISH,
                    "rust over " + share(e) + " of the zone, ASTM D610 grade "
                            + e.grade().getAsInt());
        } else if (rusted) {
            say(RepairNeed.NONE, "rust over " + share(e) + " of the zone, ASTM D610 grade 10: touch up");
        } else if (e.lookedAt()) {
            say(RepairNeed.NONE, "looked at, no rust found");
        } else {
            say(RepairNeed.NONE, "not looked at for rust");
        }
    }

    private static String share(RepairEvidence e) {
        double percent = e.percent().orElse(0);
        return percent < 0.01
                ? "less than 0.01 %"
                : String.format(Locale.ROOT, percent < 1 ? "%.2f %%" : "%.1f %%", percent);
    }

    private void say(RepairNeed atLeast, String reason) {
        if (atLeast.compareTo(need) > 0) {
            need = atLeast;
            reasons.add(0, reason);
        } else {
            reasons.add(reason);
        }
    }

    private RepairAdvice advice(RepairEvidence e) {
        List<String> cautions = new ArrayList<>();
        boolean work = need != RepairNeed.NONE;
        if (need == RepairNeed.STRUCTURAL) {
            cautions.add(STRUCTURAL_CAUTION);
        }
        if (work && e.zone().id().value().startsWith("fuel-")) {
            cautions.add(FUEL_BRAKE_CAUTION);
        }
        if (work && e.zone().group() == ZoneGroup.UNDER) {
            cautions.add(LIFT_CAUTION);
        }
        if (work) {
            cautions.add(PAINT_CAUTION);
        }
        Optional<RepairNeed> answer = work || e.lookedAt() ? Optional.of(need) : Optional.empty();
        return new RepairAdvice(answer, reasons, cautions);
    }
}
