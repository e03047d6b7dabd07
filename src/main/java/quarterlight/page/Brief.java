package quarterlight.page;

import java.util.List;
import java.util.Map;
import quarterlight.matters.Matter;
import quarterlight.matters.Matters;
import quarterlight.visit.statement.Severity;

/** What the one page has room for: the matters of the first page, a few sentences, none of them cut. */
final class Brief {
    /** With more matters than these only the sentence of each has room. */
    private static final int FEW = 4;

    private static final int SENTENCES = 5;
    private static final int HEADLINE = 110;
    private static final int EVIDENCE = 120;
    private static final int PLACE = 90;

    private Brief() {}

    /** Keys letter, grave, headline, place and evidence; the evidence is empty where it would repeat the headline. */
    static List<Map<String, String>> matters(Matters matters) {
        return matters.lettered().stream()
                .map(matter -> matter(matter, matters.lettered().size() <= FEW))
                .toList();
    }

    private static Map<String, String> matter(Matter matter, boolean few) {
        String more = few ? matter.further().stream().findFirst().orElse("") : "";
        return Map.of(
                "letter", String.valueOf(matter.letter().orElseThrow()),
                "grave", matter.severity() == Severity.GRAVE ? "grave" : "",
                "headline", WholeSentences.of(matter.sentence(), HEADLINE),
                "place", place(matter),
                "evidence", WholeSentences.of(more, EVIDENCE));
    }

    private static String place(Matter matter) {
        return matter.zones().size() > 1
                ? WholeSentences.list(List.of(matter.place().split("; ")), PLACE)
                : Shortened.to(matter.place(), PLACE);
    }

    static List<String> sentences(List<String> sentences) {
        return sentences.stream()
                .limit(SENTENCES)
                .map(text -> WholeSentences.of(text, EVIDENCE))
                .toList();
    }
}
