package quarterlight.findings;

import java.util.Map;
import quarterlight.marks.Contradiction;
import quarterlight.rust.need.RepairNeed;
import quarterlight.visit.statement.Severity;

/**
 * How much each kind of evidence weighs when the things that matter most are put in order. Judgement from common practice,
 * without a source; docs/methods/what-matters.md.
 *
 * @param severities of a statement
 * @param needs of a repair
 * @param contradictions of a date or number
 * @param conflict of two statements of the same part that cannot both hold
 * @param filler a repair likelihood of {@code likelyScore} or more
 * @param refinished of the refinished panels together, before {@code perPanel}
 * @param perPanel more for each of them
 * @param refinishedMost of the refinished panels together at most
 * @param likelyScore least refinish or repair likelihood, 0 to 100, that counts
 * @param further more for each further piece of evidence of one zone
 * @param furtherMost more at most
 */
public record MatterWeights(
        Map<Severity, Integer> severities,
        Map<RepairNeed, Integer> needs,
        Map<Contradiction.Kind, Integer> contradictions,
        int conflict,
        int filler,
        int refinished,
        int perPanel,
        int refinishedMost,
        int likelyScore,
        int further,
        int furtherMost) {
    /** The first version. */
    public static final MatterWeights V1 = new MatterWeights(
            Map.of(Severity.GRAVE, 90, Severity.MAJOR, 60, Severity.MINOR, 30, Severity.NOTE, 0),
            Map.of(
                    RepairNeed.STRUCTURAL, 95,
                    RepairNeed.REPLACE, 70,
                    RepairNeed.PATCH, 55,
                    RepairNeed.REFINISH, 20,
                    RepairNeed.NONE, 0),
            Map.of(
                    Contradiction.Kind.NUMBER, 85,
                    Contradiction.Kind.ORDER, 45,
                    Contradiction.Kind.DATE, 45,
                    Contradiction.Kind.FEATURE, 40),
            35,
            65,
            40,
            2,
            58,
            60,
            3,
            9);

    public MatterWeights {
        severities = Map.copyOf(severities);
        needs = Map.copyOf(needs);
        contradictions = Map.copyOf(contradictions);
    }
}
