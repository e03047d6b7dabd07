package quarterlight.finish.number;

import quarterlight.units.Worded;

/**
 * A number of the finish model that is held fixed: it gives the model its shape, and its range would move findings less
 * than those of {@link JudgedNumber}. Judgement throughout; docs/methods/finish-history.md prints the table.
 */
public enum FixedNumber implements Worded {
    TRUST(.6, "power on what the other panels say of the car (coarsening: panels share causes the model lacks)"),
    CAP_MIL(40, "above this a spot says no more: it counts as this thick"),
    FLOOR_MIL(.4, "below this likewise"),
    STRAY(.008, "share of spots that read far off by a fault"),
    STRAY_SHIFT(.4, "logarithm by which a stray reading is off, median"),
    STRAY_SPREAD(.61, "log-sd of that"),
    WIDE_TAIL(.1, "share of spots that scatter 2.5 times as far as the rest"),
    DEPTH_MIL(15, "mil of filler under a spot on a patch, median"),
    DEPTH_SPREAD(1.0, "log-sd of that"),
    TOGETHER(.5, "share of patches of filler whose spots lie together, where places are known"),
    SKIM_SPREAD(.5, "log-sd of the level of a skimmed panel from panel to panel"),
    SKIM_TOUCHED(.85, "share of the spots of a skimmed panel that stand on filler"),
    NO_METAL_PATCH(.12, "share of spots on the filler of a patch that find no metal, besides those anywhere"),
    NO_METAL_SKIM(.1, "share of spots on a skim that find no metal, besides those anywhere"),
    OTHER_LEVEL_MIL(4.2, "mil: level of a factory finish whose profile was told wrong or that was polished thin"),
    OTHER_LEVEL_SPREAD(.42, "log-sd of that"),
    OTHER_LEVEL_SHARE(.18, "share of such cars"),
    HIGHEST_LEVEL_MIL(13, "mil: no car left a factory thicker all round"),
    THINNED(.015, "share of factory panels polished or rubbed thin, to about six tenths"),
    REWORK_MIL(4, "mil that rework in the plant, or a guard against chips, adds"),
    WASHED_OFF(.4, "mil that is sanded off before a coat goes over"),
    STRIPPED_SHARE(.08, "share of touched panels, on a car with some, that were stripped"),
    TOUCHED_AS_BUILT(.02, "share of touched panels on a car called as built"),
    LEFT_OUT(.01, "share of panels left out of a job on the whole car"),
    SKIM_SHARE(.22, "share of repairs with filler that cover most of the panel"),
    SKIM_SHARE_WHOLE(.28, "the same on a car refinished whole"),
    PRONE_LESS(.4, "factor on the odds of being touched for roof, pillars, cowl, sail panels and cab back"),
    FILLER_LESS(.4, "factor on the odds that one of those holds filler, if it was touched"),
    GUARD_LOW(.15, "chance of a factory guard against chips on a rocker or valance"),
    GUARD_SIDE(.04, "the same on a fender, quarter or bed side"),
    SOLDER(.10, "chance that spots of a sail panel stand on factory solder"),
    LESS_CONTRAST_TEXTURE(.45, "factor on a differing texture where the whole car was refinished"),
    LESS_CONTRAST_COLOR(.35, "factor on a differing color there"),
    BUILT_PRIOR(.34, "prior of a car as built"),
    SOME_PRIOR(.45, "prior of a car with some panels refinished"),
    OVER_PRIOR(.1, "prior of a whole car refinished over"),
    STRIPPED_PRIOR(.08, "prior of a whole car stripped");

    private final double value;
    private final String meaning;

    FixedNumber(double value, String meaning) {
        this.value = value;
        this.meaning = meaning;
    }

    public double value() {
        return value;
    }

    public String meaning() {
        return meaning;
    }
}
