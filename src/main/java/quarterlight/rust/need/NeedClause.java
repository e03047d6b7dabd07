package quarterlight.rust.need;

import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import quarterlight.language.Sentences;
import quarterlight.rust.need.RepairEvidence.Damage;
import quarterlight.units.Worded;

/**
 * The clauses of the repair rule: in a zone of this load, so much of this asks at least for that. The one home of these
 * limits, of which {@code docs/methods/rust.md} shows a copy that a test compares. All limits are judgement after common
 * practice; {@link #why()} says in one line what each rests on. That local loss through or nearly through the metal, and
 * its nearness to what carries, decide, and not a share of the panel, follows periodic inspections (UK MOT inspection
 * manual, appendix A, structural integrity and corrosion, from memory).
 */
public enum NeedClause {
    MAIN_HOLE(
            Load.MAIN,
            Measure.LOST_LARGEST,
            0,
            RepairNeed.STRUCTURAL,
            "around a hole the metal is thin farther than one sees"),
    MAIN_CRACK(Load.MAIN, Measure.CRACK, 0, RepairNeed.STRUCTURAL, "a crack in a part under load grows"),
    MAIN_SCALE(
            Load.MAIN,
            Measure.SCALE_LARGEST,
            2_500,
            RepairNeed.STRUCTURAL,
            "scale takes up several times the metal it came from; over half a card the section is weakened"),
    MAIN_PITTING(
            Load.MAIN,
            Measure.PITTING_LARGEST,
            10_000,
            RepairNeed.STRUCTURAL,
            "pits over the width of a rail (two cards) leave a thinner rail"),
    SHELL_LARGE_HOLE(
            Load.SHELL,
            Measure.LOST_LARGEST,
            500,
            RepairNeed.STRUCTURAL,
            "a hole larger than a coin cuts the sheet's load path"),
    SHELL_MUCH_LOST(
            Load.SHELL,
            Measure.LOST_ALL,
            2_500,
            RepairNeed.STRUCTURAL,
            "many small holes over half a card in all weaken like a large one"),
    SHELL_CRACK(Load.SHELL, Measure.CRACK, 0, RepairNeed.STRUCTURAL, "welded sheet cracks where the body works"),
    SHELL_SCALE(
            Load.SHELL,
            Measure.SCALE_LARGEST,
            10_000,
            RepairNeed.STRUCTURAL,
            "sheet of a millimeter that scales over two cards is nearly through"),
    SHELL_PITTING(
            Load.SHELL,
            Measure.PITTING_LARGEST,
            60_000,
            RepairNeed.STRUCTURAL,
            "pits over a letter sheet: most of a small floor is thin"),
    SHELL_HOLE(Load.SHELL, Measure.LOST_LARGEST, 0, RepairNeed.PATCH, "a small hole is cut back and metal let in"),
    SKIN_MUCH_LOST(
            Load.SKIN,
            Measure.LOST_ALL,
            20_000,
            RepairNeed.REPLACE,
            "more than two palms of lost metal: letting in costs more than a panel"),
    SKIN_SHARE_LOST(
            Load.SKIN,
            Measure.LOST_PERCENT,
            10,
            RepairNeed.REPLACE,
            "a tenth of a small part lost leaves nothing to weld to"),
    SKIN_SHARE_EATEN(
            Load.SKIN,
            Measure.EATEN_PERCENT,
            33,
            RepairNeed.REPLACE,
            "a third of a panel scaled or pitted: the rest follows"),
    SKIN_HOLE(Load.SKIN, Measure.LOST_LARGEST, 0, RepairNeed.PATCH, "a hole is cut back and metal let in"),
    SKIN_CRACK(Load.SKIN, Measure.CRACK, 0, RepairNeed.PATCH, "a crack is stopped and welded"),
    SKIN_SCALE(
            Load.SKIN,
            Measure.SCALE_LARGEST,
            10_000,
            RepairNeed.PATCH,
            "sheet that scales over two cards has pinholes under the scale"),
    FLUID_HOLE(Load.FLUID, Measure.LOST_LARGEST, 0, RepairNeed.REPLACE, "a tank or line that leaks is exchanged"),
    FLUID_CRACK(Load.FLUID, Measure.CRACK, 0, RepairNeed.REPLACE, "a tank or line that cracks is exchanged"),
    FLUID_SCALE(Load.FLUID, Measure.SCALE_LARGEST, 0, RepairNeed.REPLACE, "a scaled line can burst under pressure"),
    FLUID_PITTING(Load.FLUID, Measure.PITTING_LARGEST, 0, RepairNeed.REPLACE, "a pitted line can burst under pressure"),
    FITTING_HOLE(Load.FITTING, Measure.LOST_LARGEST, 0, RepairNeed.REPLACE, "a fitting rusted through is exchanged"),
    FITTING_CRACK(Load.FITTING, Measure.CRACK, 0, RepairNeed.REPLACE, "cracked glass or trim is exchanged"),
    MAIN_GRAVE_DAMAGE(
            Load.MAIN, Measure.GRAVE_DAMAGE, 0, RepairNeed.STRUCTURAL, "a bent rail no longer carries as built"),
    SHELL_GRAVE_DAMAGE(
            Load.SHELL,
            Measure.GRAVE_DAMAGE,
            0,
            RepairNeed.STRUCTURAL,
            "a deep fold in the body's box may have moved it"),
    SKIN_GRAVE_DAMAGE(Load.SKIN, Measure.GRAVE_DAMAGE, 0, RepairNeed.REPLACE, "beyond beating out"),
    FLUID_GRAVE_DAMAGE(Load.FLUID, Measure.GRAVE_DAMAGE, 0, RepairNeed.REPLACE, "a crushed tank or line is exchanged"),
    FITTING_GRAVE_DAMAGE(Load.FITTING, Measure.GRAVE_DAMAGE, 0, RepairNeed.REPLACE, "beyond use"),
    MAIN_MAJOR_DAMAGE(Load.MAIN, Measure.MAJOR_DAMAGE, 0, RepairNeed.PATCH, "metal work, not only paint"),
    SHELL_MAJOR_DAMAGE(Load.SHELL, Measure.MAJOR_DAMAGE, 0, RepairNeed.PATCH, "metal work, not only paint"),
    SKIN_MAJOR_DAMAGE(Load.SKIN, Measure.MAJOR_DAMAGE, 0, RepairNeed.PATCH, "metal work, not only paint"),
    FLUID_MAJOR_DAMAGE(Load.FLUID, Measure.MAJOR_DAMAGE, 0, RepairNeed.REPLACE, "a dented line is exchanged"),
    FITTING_MAJOR_DAMAGE(
            Load.FITTING, Measure.MAJOR_DAMAGE, 0, RepairNeed.REPLACE, "fittings are exchanged, not patched"),
    MAIN_DAMAGE(Load.MAIN, Measure.DAMAGE, 0, RepairNeed.REFINISH, "scraped or scratched: the paint is open"),
    SHELL_DAMAGE(Load.SHELL, Measure.DAMAGE, 0, RepairNeed.REFINISH, "scraped or scratched: the paint is open"),
    SKIN_DAMAGE(Load.SKIN, Measure.DAMAGE, 0, RepairNeed.REFINISH, "scraped or scratched: the paint is open");

    /** What a clause measures. The unit is mm2 but for the two shares. */
    public enum Measure implements Worded {
        LOST_LARGEST,
        LOST_ALL,
        LOST_PERCENT,
        SCALE_LARGEST,
        PITTING_LARGEST,
        EATEN_PERCENT,
        CRACK,
        GRAVE_DAMAGE,
        MAJOR_DAMAGE,
        DAMAGE;

        /** What is measured, in the language in hand: {@code the largest patch of scale}. */
        public String words() {
            return say("rust.measure." + word());
        }

        private boolean isShare() {
            return this == LOST_PERCENT || this == EATEN_PERCENT;
        }

        /** An amount of it: {@code 2,500 mm2}. */
        String figure(double amount) {
            return isShare()
                    ? say("rust.reason.of-zone", Sentences.figure("%.1f", amount))
                    : Sentences.figure("%,.0f mm2", amount);
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
        return why;
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
                ? "any"
                : String.format(Locale.ROOT, "from %,.0f %s on", from, measure.isShare() ? "% of the zone" : "mm2");
    }

    boolean holds(RepairEvidence e) {
        Extent found = measure.in(e);
        return found.known() > 0 && found.known() >= from || found.unknown() && holdsWhenUnknown();
    }
}
