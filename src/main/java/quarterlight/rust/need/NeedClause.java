package quarterlight.rust.need;

import static quarterlight.language.Sentences.figure;
import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.stream.Stream;
import quarterlight.rust.need.RepairEvidence.Damage;

/**
 * The clauses of the repair rule: in a zone of this load, so much of this asks at least for that. The one home of these
 * limits, of which {@code docs/methods/rust.md} shows a copy that a test compares. All limits are judgement after common
 * practice; {@link #why()} says in one line what each rests on. That local loss through or nearly through the metal, and
 * its nearness to what carries, decide, and not a share of the panel, follows periodic inspections (UK MOT inspection
 * manual, appendix A, structural integrity and corrosion, from memory).
 */
public enum NeedClause {
    MAIN_HOLE(Load.MAIN, Measure.LOST_LARGEST, 0, RepairNeed.STRUCTURAL, "rust.need-clause.around-a-hole-the-metal"),
    MAIN_CRACK(Load.MAIN, Measure.CRACK, 0, RepairNeed.STRUCTURAL, "rust.need-clause.a-crack-in-a-part"),
    MAIN_SCALE(
            Load.MAIN,
            Measure.SCALE_LARGEST,
            2_500,
            RepairNeed.STRUCTURAL,
            "rust.need-clause.scale-takes-up-several-times"),
    MAIN_PITTING(
            Load.MAIN,
            Measure.PITTING_LARGEST,
            10_000,
            RepairNeed.STRUCTURAL,
            "rust.need-clause.pits-over-the-width-of"),
    SHELL_LARGE_HOLE(
            Load.SHELL, Measure.LOST_LARGEST, 500, RepairNeed.STRUCTURAL, "rust.need-clause.a-hole-larger-than-a"),
    SHELL_MUCH_LOST(
            Load.SHELL, Measure.LOST_ALL, 2_500, RepairNeed.STRUCTURAL, "rust.need-clause.many-small-holes-over-half"),
    SHELL_CRACK(Load.SHELL, Measure.CRACK, 0, RepairNeed.STRUCTURAL, "rust.need-clause.welded-sheet-cracks-where-the"),
    SHELL_SCALE(
            Load.SHELL,
            Measure.SCALE_LARGEST,
            10_000,
            RepairNeed.STRUCTURAL,
            "rust.need-clause.sheet-of-a-millimeter-that"),
    SHELL_PITTING(
            Load.SHELL,
            Measure.PITTING_LARGEST,
            60_000,
            RepairNeed.STRUCTURAL,
            "rust.need-clause.pits-over-a-letter-sheet"),
    SHELL_HOLE(Load.SHELL, Measure.LOST_LARGEST, 0, RepairNeed.PATCH, "rust.need-clause.a-small-hole-is-cut"),
    SKIN_MUCH_LOST(Load.SKIN, Measure.LOST_ALL, 20_000, RepairNeed.REPLACE, "rust.need-clause.more-than-two-palms-of"),
    SKIN_SHARE_LOST(Load.SKIN, Measure.LOST_PERCENT, 10, RepairNeed.REPLACE, "rust.need-clause.a-tenth-of-a-small"),
    SKIN_SHARE_EATEN(Load.SKIN, Measure.EATEN_PERCENT, 33, RepairNeed.REPLACE, "rust.need-clause.a-third-of-a-panel"),
    SKIN_HOLE(Load.SKIN, Measure.LOST_LARGEST, 0, RepairNeed.PATCH, "rust.need-clause.a-hole-is-cut-back"),
    SKIN_CRACK(Load.SKIN, Measure.CRACK, 0, RepairNeed.PATCH, "rust.need-clause.a-crack-is-stopped-and"),
    SKIN_SCALE(
            Load.SKIN, Measure.SCALE_LARGEST, 10_000, RepairNeed.PATCH, "rust.need-clause.sheet-that-scales-over-two"),
    FLUID_HOLE(Load.FLUID, Measure.LOST_LARGEST, 0, RepairNeed.REPLACE, "rust.need-clause.a-tank-or-line-that"),
    FLUID_CRACK(Load.FLUID, Measure.CRACK, 0, RepairNeed.REPLACE, "rust.need-clause.a-tank-or-line-that-2"),
    FLUID_SCALE(Load.FLUID, Measure.SCALE_LARGEST, 0, RepairNeed.REPLACE, "rust.need-clause.a-scaled-line-can-burst"),
    FLUID_PITTING(
            Load.FLUID, Measure.PITTING_LARGEST, 0, RepairNeed.REPLACE, "rust.need-clause.a-pitted-line-can-burst"),
    FITTING_HOLE(
            Load.FITTING, Measure.LOST_LARGEST, 0, RepairNeed.REPLACE, "rust.need-clause.a-fitting-rusted-through-is"),
    FITTING_CRACK(Load.FITTING, Measure.CRACK, 0, RepairNeed.REPLACE, "rust.need-clause.cracked-glass-or-trim-is"),
    MAIN_GRAVE_DAMAGE(
            Load.MAIN, Measure.GRAVE_DAMAGE, 0, RepairNeed.STRUCTURAL, "rust.need-clause.a-bent-rail-no-longer"),
    SHELL_GRAVE_DAMAGE(
            Load.SHELL, Measure.GRAVE_DAMAGE, 0, RepairNeed.STRUCTURAL, "rust.need-clause.a-deep-fold-in-the"),
    SKIN_GRAVE_DAMAGE(Load.SKIN, Measure.GRAVE_DAMAGE, 0, RepairNeed.REPLACE, "rust.need-clause.beyond-beating-out"),
    FLUID_GRAVE_DAMAGE(
            Load.FLUID, Measure.GRAVE_DAMAGE, 0, RepairNeed.REPLACE, "rust.need-clause.a-crushed-tank-or-line"),
    FITTING_GRAVE_DAMAGE(Load.FITTING, Measure.GRAVE_DAMAGE, 0, RepairNeed.REPLACE, "rust.need-clause.beyond-use"),
    MAIN_MAJOR_DAMAGE(
            Load.MAIN, Measure.MAJOR_DAMAGE, 0, RepairNeed.PATCH, "rust.need-clause.metal-work-not-only-paint"),
    SHELL_MAJOR_DAMAGE(
            Load.SHELL, Measure.MAJOR_DAMAGE, 0, RepairNeed.PATCH, "rust.need-clause.metal-work-not-only-paint"),
    SKIN_MAJOR_DAMAGE(
            Load.SKIN, Measure.MAJOR_DAMAGE, 0, RepairNeed.PATCH, "rust.need-clause.metal-work-not-only-paint"),
    FLUID_MAJOR_DAMAGE(
            Load.FLUID, Measure.MAJOR_DAMAGE, 0, RepairNeed.REPLACE, "rust.need-clause.a-dented-line-is-exchanged"),
    FITTING_MAJOR_DAMAGE(
            Load.FITTING,
            Measure.MAJOR_DAMAGE,
            0,
            RepairNeed.REPLACE,
            "rust.need-clause.fittings-are-exchanged-not-patched"),
    MAIN_DAMAGE(Load.MAIN, Measure.DAMAGE, 0, RepairNeed.REFINISH, "rust.need-clause.scraped-or-scratched-the-paint"),
    SHELL_DAMAGE(Load.SHELL, Measure.DAMAGE, 0, RepairNeed.REFINISH, "rust.need-clause.scraped-or-scratched-the-paint"),
    SKIN_DAMAGE(Load.SKIN, Measure.DAMAGE, 0, RepairNeed.REFINISH, "rust.need-clause.scraped-or-scratched-the-paint");

    /** What a clause measures. The unit is mm2 but for the two shares. */
    public enum Measure {
        LOST_LARGEST("rust.need-clause.the-largest-hole-or-place", "mm2"),
        LOST_ALL("rust.need-clause.all-holes-and-places-rotted", "mm2"),
        LOST_PERCENT("rust.need-clause.holes-and-places-rotted-through", "rust.need-clause.of-the-zone"),
        SCALE_LARGEST("rust.need-clause.the-largest-patch-of-scale", "mm2"),
        PITTING_LARGEST("rust.need-clause.the-largest-patch-of-pitting", "mm2"),
        EATEN_PERCENT("rust.need-clause.scale-and-pitting", "rust.need-clause.of-the-zone"),
        CRACK("rust.need-clause.a-crack", ""),
        GRAVE_DAMAGE("rust.need-clause.grave-damage", ""),
        MAJOR_DAMAGE("rust.need-clause.major-damage", ""),
        DAMAGE("rust.need-clause.damage", "");

        private final String words;
        private final String unit;

        Measure(String words, String unit) {
            this.words = words;
            this.unit = unit;
        }

        public String words() {
            return say(words);
        }

        private boolean isShare() {
            return this == LOST_PERCENT || this == EATEN_PERCENT;
        }

        /** An amount of it: {@code 2,500 mm2}. */
        String amount(double amount) {
            return isShare() ? figure("%.1f ", amount) + say(unit) : figure("%,.0f ", amount) + unit;
        }

        /** How much of it was found. */
        Extent in(RepairEvidence e) {
            return switch (this) {
                case LOST_LARGEST -> e.lost().largest();
                case LOST_ALL -> e.lost().all();
                case LOST_PERCENT -> e.share(e.lost());
                case SCALE_LARGEST -> e.scale().largest();
                case PITTING_LARGEST -> e.pitting().largest();
                case EATEN_PERCENT -> e.share(e.scale(), e.pitting());
                case CRACK -> e.crack();
                case GRAVE_DAMAGE -> e.damage(Damage.GRAVE);
                case MAJOR_DAMAGE -> e.damage(Damage.MAJOR);
                case DAMAGE -> e.damage(Damage.SLIGHT);
            };
        }
    }

    private final Load load;
    private final Measure measure;
    private final double from;
    private final RepairNeed need;
    private final String why;

    NeedClause(Load load, Measure measure, double from, RepairNeed need, String why) {
        this.load = load;
        this.measure = measure;
        this.from = from;
        this.need = need;
        this.why = why;
    }

    /** The clauses for zones of a load, gravest first. */
    static List<NeedClause> of(Load load) {
        return Stream.of(values()).filter(clause -> clause.load == load).toList();
    }

    public Load load() {
        return load;
    }

    public Measure measure() {
        return measure;
    }

    /** From this much on, limit included; 0: any of it. */
    public double from() {
        return from;
    }

    public RepairNeed need() {
        return need;
    }

    public String why() {
        return say(why);
    }

    /**
     * True if it also holds for what was found without a size: where any of it is enough, and where a hole or scale of
     * unknown size on what carries load cannot be ruled out until it is measured.
     */
    public boolean holdsWhenUnknown() {
        return from == 0 || this == MAIN_SCALE || this == SHELL_LARGE_HOLE;
    }

    /** The limit as the docs write it: {@code from 2,500 mm2}, {@code any}. */
    public String limitInWords() {
        return from == 0
                ? say("rust.need-clause.any")
                : say(
                        "rust.need-clause.from-on",
                        figure("%,.0f", from),
                        measure.isShare() ? say(measure.unit) : measure.unit);
    }

    boolean holds(RepairEvidence e) {
        Extent found = measure.in(e);
        return found.known() > 0 && found.known() >= from || found.unknown() && holdsWhenUnknown();
    }
}
