package quarterlight.page;

import static quarterlight.language.Sentences.say;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import quarterlight.language.Language;

/**
 * Typed text made shorter without cutting a thought: as many whole sentences as there is room for, else the clauses before a semicolon, else only that it
 * is told in the report. What is left out is said to be there. The rules stand in docs/methods/brief.md. Pure functions.
 */
public final class WholeSentences {
    /** After what stands, where there is more. */
    public static String more() {
        return say("diagram.whole-sentences.more-in-the-report");
    }

    /** In place of what cannot be made shorter. */
    public static String all() {
        return say("diagram.whole-sentences.told-at-length-in-the");
    }

    /** A sentence of up to so many times the letters asked for is set whole. */
    private static final double STRETCH = 1.5;

    private static final int LEAST_CLAUSE = 12;
    private static final String CLAUSE = "; ";
    /** A point after these does not end a sentence. */
    private static final Pattern ABBREVIATED = Pattern.compile(
            "(?i)(?:^|[\\s(])(?:no|approx|ca|st|vs|dr|mr|mrs|ms|e\\.g|i\\.e|fig|incl|est|max|min|oz|in|ft|lb)\\.\\s*$");

    /** German writes a point after the number of a day. */
    private static final Pattern ORDINAL = Pattern.compile("(?:^|\\s)\\d{1,2}\\.\\s*$");

    private WholeSentences() {}

    /** @param max letters there is room for */
    public static String of(String text, int max) {
        String bare = text.strip();
        if (letters(bare) <= max) {
            return bare;
        }
        List<String> heads = heads(bare);
        String fits = "";
        for (String head : heads) {
            fits = letters(head) <= max ? head : fits;
        }
        String first = heads.get(0);
        if (fits.isEmpty() && letters(first) <= STRETCH * max) {
            fits = first;
        }
        if (fits.isEmpty()) {
            fits = clauses(first, max);
        }
        return fits.equals(bare) ? bare : fits.isEmpty() ? all() : fits + " " + more();
    }

    /** As many names of a list as there is room for, the first at least; the others are counted. */
    public static String list(List<String> names, int max) {
        String all = String.join(CLAUSE, names);
        for (int named = names.size(); named > 1 && letters(all) > max; named--) {
            all = say(
                    "diagram.whole-sentences.and-more",
                    String.join(CLAUSE, names.subList(0, named - 1)),
                    names.size() - named + 1);
        }
        return all;
    }

    /** The text up to the end of each of its sentences. */
    private static List<String> heads(String text) {
        BreakIterator sentences =
                BreakIterator.getSentenceInstance(Language.inHand().locale());
        sentences.setText(text);
        List<String> heads = new ArrayList<>();
        sentences.first();
        for (int end = sentences.next(); end != BreakIterator.DONE; end = sentences.next()) {
            String head = text.substring(0, end);
            boolean ordinal = Language.inHand() == Language.GERMAN
                    && ORDINAL.matcher(head).find();
            if (end == text.length() || !ordinal && !ABBREVIATED.matcher(head).find()) {
                heads.add(head.strip());
            }
        }
        return heads;
    }

    private static String clauses(String sentence, int max) {
        int end = sentence.lastIndexOf(CLAUSE, sentence.offsetByCodePoints(0, Math.min(max, letters(sentence)) - 1));
        return end < LEAST_CLAUSE ? "" : sentence.substring(0, end).stripTrailing() + ".";
    }

    private static int letters(String text) {
        return text.codePointCount(0, text.length());
    }
}
