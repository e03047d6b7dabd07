package quarterlight.page;

import java.util.List;
import java.util.Map;
import quarterlight.matters.Matter;
import quarterlight.matters.Matters;

/** What the one page has room for: five matters with their first evidence, a few sentences, each cut where it runs on. */
final class Brief {
    private static final int MATTERS = 5;
    private static final int SENTENCES = 5;
    private static final int HEADLINE = 110;
    private static final int EVIDENCE = 120;
    private static final int PLACE = 90;

    private Brief() {}

    /** Keys headline, place and evidence; the evidence is empty where it would repeat the headline. */
    static List<Map<String, String>> matters(Matters matters) {
        return matters.lettered().stream().limit(MATTERS).map(Brief::matter).toList();
    }

    private static Map<String, String> matter(Matter matter) {
        String more = matter.further().stream().findFirst().orElse("");
        return Map.of(
                "headline", cut(matter.sentence(), HEADLINE),
                "place", cut(matter.place(), PLACE),
                "evidence", cut(more, EVIDENCE));
    }

    static List<String> sentences(List<String> sentences) {
        return sentences.stream()
                .limit(SENTENCES)
                .map(text -> cut(text, EVIDENCE))
                .toList();
    }

    /** The text up to a length, at the end of a word if one is near. */
    static String cut(String text, int most) {
        if (text.codePointCount(0, text.length()) <= most) {
            return text;
        }
        int end = text.offsetByCodePoints(0, most - 1);
        int word = text.lastIndexOf(' ', end);
        return text.substring(0, word > end - 20 ? word : end).stripTrailing() + "\u2026";
    }
}
