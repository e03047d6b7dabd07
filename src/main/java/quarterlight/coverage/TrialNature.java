package quarterlight.coverage;

import java.util.List;
import quarterlight.units.Worded;
import quarterlight.visit.trial.TrialResult;

/** How a trial is answered. */
public enum TrialNature implements Worded {
    FUNCTION,
    OBSERVATION,
    MEASURE;

    /** What may be answered, the usual answer first. */
    public List<TrialResult> answers() {
        return switch (this) {
            case FUNCTION ->
                List.of(
                        TrialResult.WORKS,
                        TrialResult.WORKS_WITH_A_FAULT,
                        TrialResult.BYPASSED,
                        TrialResult.DOES_NOT,
                        TrialResult.NOT_TRIED,
                        TrialResult.NOT_FITTED);
            case OBSERVATION ->
                List.of(
                        TrialResult.NONE,
                        TrialResult.SOME,
                        TrialResult.HEAVY,
                        TrialResult.NOT_TRIED,
                        TrialResult.NOT_FITTED);
            case MEASURE -> List.of(TrialResult.MEASURED, TrialResult.NOT_TRIED, TrialResult.NOT_FITTED);
        };
    }
}
