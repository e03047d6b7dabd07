package quarterlight.marks.judge;

import java.util.List;
import java.util.Objects;
import quarterlight.marks.code.DateCandidate;

/**
 * What one text says.
 *
 * @param candidates dates it can mean, the likeliest first
 * @param why reason without a full stop
 * @param decoded what else is published of it, in sentences without a full stop
 */
public record MarkJudgment(Verdict verdict, String why, List<DateCandidate> candidates, List<String> decoded) {
    public MarkJudgment {
        Objects.requireNonNull(verdict, "verdict");
        Objects.requireNonNull(why, "why");
        candidates = List.copyOf(candidates);
        decoded = List.copyOf(decoded);
    }

    /** The same for another reason. */
    MarkJudgment because(String reason) {
        return new MarkJudgment(verdict, reason, candidates, decoded);
    }

    public static MarkJudgment bare(Verdict verdict, String why) {
        return new MarkJudgment(verdict, why, List.of(), List.of());
    }
}
