package quarterlight.coverage;

import java.util.List;
import quarterlight.units.Worded;
import quarterlight.visit.TrialResult;

/** How a trial is answered. */
public enum TrialNature implements Worded {
    FUNCTION(
            TrialResult.WORKS,
            TrialResult.WORKS_WITH_A_FAULT,
            TrialResult.BYPASSED,
            TrialResult.DOES_NOT,
            TrialResult.NOT_TRIED,
            TrialResult.NOT_FITTED),
    OBSERVATION(TrialResult.NONE, TrialResult.SOME, TrialResult.HEAVY, TrialResult.NOT_TRIED, TrialResult.NOT_FITTED),
    MEASURE(TrialResult.MEASURED, TrialResult.NOT_TRIED, TrialResult.NOT_FITTED);

    @SuppressWarnings("ImmutableEnumChecker")
    private final List<TrialResult> answers;

    TrialNature(TrialResult... answers) {
        this.answers = List.of(answers);
    }

    /** What may be answered, the usual answer first. */
    public List<TrialResult> answers() {
        return answers;
    }
}
