package quarterlight.page.script;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.Locale;
import java.util.Set;

/**
 * Where a line may end: as the Java library says, but never between a number and its unit, behind a sign or an opening bracket, or within a number,
 * date or grade such as {@code 8-S}.
 */
public final class LineBreaks implements FSTextBreaker {
    private static final Set<String> UNITS = Set.of(
            "mil",
            "\u00b5m",
            "um",
            "mm",
            "mm\u00b2",
            "cm",
            "cm\u00b2",
            "m",
            "%",
            "s",
            "min",
            "h",
            "V",
            "psi",
            "rpm",
            "mi",
            "km",
            "in",
            "lb",
            "spot",
            "spots");
    private static final String BINDING = "(\u2009\u202f\u2007\u2212\u00b1+";

    private final BreakIterator breaks = BreakIterator.getLineInstance(Locale.US);
    private String text = "";

    @Override
    public void setText(String newText) {
        text = newText;
        breaks.setText(newText);
    }

    /** The next place, or -1 if there is none, as the PDF library asks for it. */
    @Override
    public int next() {
        int at = breaks.next();
        while (at != BreakIterator.DONE && !isAllowed(text, at)) {
            at = breaks.next();
        }
        return at;
    }

    /** @param at number of letters before the place */
    static boolean isAllowed(String text, int at) {
        if (at <= 0 || at >= text.length()) {
            return true;
        }
        char before = text.charAt(at - 1);
        if (BINDING.indexOf(before) >= 0) {
            return false;
        }
        if ((before == '.' || before == ',') && at > 1) {
            return !Character.isDigit(text.charAt(at - 2)) || !Character.isDigit(text.charAt(at));
        }
        if (before == '-' && at > 1) {
            return !Character.isDigit(text.charAt(at - 2)) || !Character.isLetterOrDigit(text.charAt(at));
        }
        return before != ' ' || at < 2 || !isBound(text, at);
    }

    /** Whether the word from here on belongs to what stands before the space: a unit to its number, a number to its sign. */
    private static boolean isBound(String text, int at) {
        char last = text.charAt(at - 2);
        if (last == '\u00b1' || last == '\u2212') {
            return true;
        }
        int end = at;
        while (end < text.length()
                && !Character.isWhitespace(text.charAt(end))
                && ",.;:)".indexOf(text.charAt(end)) < 0) {
            end++;
        }
        return Character.isDigit(last) && UNITS.contains(text.substring(at, end));
    }
}
