package quarterlight.page.brief;

import java.util.List;
import java.util.Objects;

/**
 * What stands on the first page, as texts ready for the template; an empty text is not shown. Immutable.
 *
 * @param numbers that tell which car it is: part and number
 * @param portrait address of a picture of the car; empty if there is none
 * @param drawing the views with the letters, each an SVG element; none if no letter has a place
 * @param notDrawn the letters that stand on none of them, in a sentence
 * @param edited true if the paragraph is the inspector's
 * @param more how many more matters there are and where, in a sentence
 * @param anchor number and hash that anchor it
 * @param whole what was made shorter here and stands nowhere else in the report, in full
 */
public record BriefContent(
        String title,
        String subtitle,
        String portrait,
        List<String> drawing,
        String notDrawn,
        List<Fact> facts,
        List<Fact> numbers,
        List<Fact> signed,
        String terms,
        String paragraph,
        boolean edited,
        List<SafetyLine> safety,
        List<MatterLine> matters,
        String more,
        List<ClaimLine> claims,
        String moreClaims,
        String checked,
        String gauge,
        List<String> leftOut,
        List<LookLine> looks,
        String moreLooks,
        String anchor,
        String caution,
        List<Fact> whole) {
    public BriefContent {
        Objects.requireNonNull(title, "title");
        drawing = List.copyOf(drawing);
        facts = List.copyOf(facts);
        numbers = List.copyOf(numbers);
        signed = List.copyOf(signed);
        safety = List.copyOf(safety);
        matters = List.copyOf(matters);
        claims = List.copyOf(claims);
        leftOut = List.copyOf(leftOut);
        looks = List.copyOf(looks);
        whole = List.copyOf(whole);
    }

    /** A label and its text. */
    public record Fact(String label, String text) {}

    /**
     * One danger.
     *
     * @param letters of its matters, {@code A, C}; empty if they have none
     * @param places where
     */
    public record SafetyLine(String subject, String letters, String places, String caution) {}

    /**
     * One matter.
     *
     * @param grave true for the grave color
     * @param set what is said of the inspector's own severity; empty if none
     * @param picture address of its close crop
     */
    public record MatterLine(
            String letter,
            String severity,
            boolean grave,
            String sentence,
            String place,
            String set,
            String picture,
            String alt) {}

    /** A claim and how it stands. */
    public record ClaimLine(String claim, String by, String verdict, String found) {}

    /** What to look at next. */
    public record LookLine(String what, String why) {}
}
