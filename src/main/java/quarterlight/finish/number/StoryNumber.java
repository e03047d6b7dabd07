package quarterlight.finish.number;

import quarterlight.units.Worded;

/**
 * A number by which a story shapes what the gauge reads on a panel: how thick, how even, in which shares. Judgement from common practice
 * throughout, without a published source; docs/methods/finish-history.md prints the table, and a test holds both together.
 */
public enum StoryNumber implements Worded {
    LEVELLED_LEFT(.35, "share of the earlier finish that stays where a panel is sanded to equal thickness"),
    LEVELLED_COAT(.9, "share of a coat that stays on it"),
    BLEND_MIL(1.8, "mil that a blend adds all over the panel"),
    PARTLY_SPOTS(.6, "share of panels refinished in part that have a part of new finish"),
    PARTLY_BLENDED(.25, "share of those blended all over"),
    PARTLY_BOTH(.15, "share of those with both"),
    PATCH_OVER(.6, "share of patches of filler with a coat over the earlier finish"),
    PATCH_AS_WAS(.2, "share of those in the earlier finish"),
    PATCH_LEVELLED(.2, "share of those on a panel sanded to equal thickness"),
    PANEL_IN_COAT(.6, "share of the spread between panels that shows through a coat"),
    JOB_IN_COAT(.5, "share of the spread of coats between panels that shows in their sum"),
    LOOSE_JOB(.22, "log-sd that a levelled or blended panel adds to that of panels"),
    USUAL_JOB(.3, "log-sd of the level of a new panel"),
    BROAD_JOB(.34, "log-sd of the level of a used, stripped or thinned panel"),
    REWORKED(.17, "log-sd of the level of a panel reworked in the plant"),
    UPRIGHT_LESS(.3, "of what horizontal panels have more, the part by which the others have less"),
    THINNED_BY(.5, "logarithm by which a panel polished or rubbed thin is thinner"),
    GUARD_ALL_OVER(.6, "share of guards against chips of a low panel that cover all of it"),
    NEW_PANELS(.75, "share of replaced panels that came new, in primer"),
    PRIMER_MIL(1, "mil of that primer"),
    USED_MIL(5, "mil that a panel off another car bears before its coat"),
    OVER_EVEN(.9, "share of panels of a car refinished over on which the finish of the job is even"),
    STRIPPED_EVEN(.92, "the same on a car stripped"),
    STRIPPED_JOB(.3, "log-sd of the finish of jobs on stripped cars"),
    REPLACED_APART(.5, "share of panels replaced on a car refinished whole that bear a finish of their own"),
    ONE_COAT(.66, "share of whole-car jobs that added one coat"),
    ONE_COAT_SPREAD(.42, "log-sd of that"),
    SANDED_FIRST(.12, "share of those that added about 1 mil, sanded first"),
    SANDED_FIRST_SPREAD(.7, "log-sd of that"),
    TWO_COATS(.18, "share of those that added two coats"),
    TWO_COATS_SPREAD(.45, "log-sd of that"),
    MANY_COATS(.04, "share of those that added many coats"),
    MANY_COATS_MIL(20, "mil of that, median"),
    MANY_COATS_SPREAD(.6, "log-sd of that"),
    WIDE_TIMES(2.5, "how many times as far the spots of the wide tail scatter"),
    SKIM_UNEVEN(.75, "share of skims that are uneven and leave some spots beside the filler"),
    SKIM_UNEVEN_SPREAD(.3, "log-sd of the spots of those"),
    SKIM_BESIDE_MIL(6, "mil of a spot beside the filler, median"),
    SKIM_BESIDE_SPREAD(.6, "log-sd of that"),
    SKIM_STRAY_SPREAD(1.2, "log-sd of a stray reading there"),
    NEXT_COAT(4, "mil of a coat, where only the worth of more spots is judged"),
    NEXT_BARE(5.8, "mil on a stripped panel there"),
    NEXT_REPLACED(5, "mil on a replaced panel there"),
    NEXT_SKIM(20, "mil on a skimmed panel there"),
    NEXT_FACTORY_SPREAD(.13, "log-sd of the level of a panel in its factory finish there"),
    NEXT_JOB_SPREAD(.33, "log-sd of the level of a refinished panel there"),
    NEXT_SKIM_SPREAD(.5, "log-sd of the level of a skimmed panel there"),
    NEXT_WITHIN(.12, "log-sd of spots within a panel there"),
    NEXT_ON_PATCH(.3, "share of spots on the filler of a patch there"),
    NEXT_ON_PART(.25, "share of spots on the part refinished there"),
    NEXT_STEP(.45, "logarithm by which that part is thicker there");

    private final double value;
    private final String meaning;

    StoryNumber(double value, String meaning) {
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
