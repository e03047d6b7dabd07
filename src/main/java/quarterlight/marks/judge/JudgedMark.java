package quarterlight.marks.judge;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.marks.code.DateCandidate;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.pin.RecordId;

/**
 * One mark, decoded and judged.
 *
 * @param text the letters of all its views together
 * @param candidates dates it can mean, the likeliest by the car's build first; none is left out
 * @param why the reason in one sentence
 * @param decoded what else is published of it, in sentences
 * @param matches what it must agree with
 * @param witnesses how many views of it there are
 */
public record JudgedMark(
        RecordId row,
        Mark mark,
        String text,
        List<DateCandidate> candidates,
        Verdict verdict,
        String why,
        List<String> decoded,
        List<NumberMatch> matches,
        int witnesses) {
    public JudgedMark {
        Objects.requireNonNull(row, "row");
        Objects.requireNonNull(mark, "mark");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(verdict, "verdict");
        Objects.requireNonNull(why, "why");
        candidates = List.copyOf(candidates);
        decoded = List.copyOf(decoded);
        matches = List.copyOf(matches);
    }

    /** The likeliest date, if it can mean one. */
    public Optional<DateCandidate> likeliest() {
        return candidates.stream().findFirst();
    }

    /** True if it was held against the car: by its date, its rule, or a number that it must agree with. */
    public boolean isJudged() {
        return switch (verdict) {
            case FITS, TOO_LATE, UNUSUALLY_EARLY -> true;
            case MALFORMED -> mark.kind() == MarkKind.VIN || !matches.isEmpty();
            case CANNOT_TELL, NOT_APPLICABLE -> !matches.isEmpty();
        };
    }

    /** The same with more in its reason. */
    public JudgedMark and(String reason) {
        String joined = why.substring(0, why.length() - 1) + "; " + reason + ".";
        return new JudgedMark(row, mark, text, candidates, verdict, joined, decoded, matches, witnesses);
    }
}
