package quarterlight.page.report.back;

import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import quarterlight.page.report.text.ReportContent;

/** The terms of the trade and of this program that a report uses, explained for a buyer. */
public final class Glossary {
    private static final Map<String, String> TERMS = terms();

    private Glossary() {}

    private static Map<String, String> terms() {
        Map<String, String> terms = new LinkedHashMap<>();
        terms.put(
                "ASTM D610",
                "a published standard that grades rusted area: 10 is none or next to none, 0 more than half");
        terms.put(
                "band",
                "the range from the 5th to the 95th percentile of a likelihood when the judged numbers of the model"
                        + " vary");
        terms.put(
                "basis",
                "how a statement is known: seen, measured, tested, heard or smelled, from papers, told, not"
                        + " established");
        terms.put(
                "factory level",
                "how thick the finish of this car was when new, as estimated from all panels together");
        terms.put("gauge check", "what the gauge showed on bare metal and on shims of known thickness on the day");
        terms.put("ISO 4628-3", "a published standard that grades rusted area as Ri 0 (none) to Ri 5");
        terms.put("mil", "a thousandth of an inch, 25.4 micrometers");
        terms.put("outlier", "a spot farther from the others of its panel than chance explains");
        terms.put(
                "refinish likelihood",
                "how likely a panel is no longer in its factory finish, 0 to 100; an aid, not proof");
        terms.put("repair likelihood", "how likely filler lies under the finish, 0 to 100; an aid, not proof");
        terms.put("Ri", "degree of rusting by ISO 4628-3");
        terms.put("shim", "a foil of known thickness to check a gauge on");
        terms.put("spot", "readings at one place of a panel, counted by their mean");
        terms.put("standard deviation", "how far values scatter about their mean");
        terms.put("structural", "of metal that carries load: rails, sills, floors, pillars, mounts");
        terms.put("substrate", "what a panel is made of under its finish");
        terms.put("zone", "a named place on the car; every statement is about one");
        terms.put("95\u202f% interval", "a range that holds the true mean of a panel in 95 of 100 cases");
        terms.put("\u00b5m", "micrometer, a thousandth of a millimeter; 25.4 are one mil");
        return terms;
    }

    /** The terms that stand in the words of a report, in alphabetical order. */
    public static List<ReportContent.Fact> of(ReportContent content) {
        StringBuilder words = new StringBuilder();
        write(content, words);
        return of(words.toString());
    }

    /**
     * A record as it writes itself, its parts named. The Java machine would make that out of hundreds of pieces for each kind of record,
     * which takes longer than all that is written here.
     */
    private static void write(Object value, StringBuilder words) {
        if (value instanceof Record) {
            for (RecordComponent part : value.getClass().getRecordComponents()) {
                words.append(' ').append(part.getName()).append('=');
                write(part(value, part), words);
            }
        } else if (value instanceof Optional<?> held) {
            held.ifPresent(there -> write(there, words));
        } else if (value instanceof List<?> list) {
            for (Object each : list) {
                words.append(' ');
                write(each, words);
            }
        } else {
            words.append(value).append(' ');
        }
    }

    private static Object part(Object of, RecordComponent part) {
        try {
            return part.getAccessor().invoke(of);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("a part of the report cannot be read: " + part, e);
        }
    }

    /** The terms that stand in a text, in alphabetical order. */
    public static List<ReportContent.Fact> of(String text) {
        String words = text.replace('\u2009', '\u202f').toLowerCase(Locale.US);
        return TERMS.entrySet().stream()
                .filter(term -> stands(term.getKey().toLowerCase(Locale.US), words))
                .map(term -> new ReportContent.Fact(term.getKey(), term.getValue()))
                .toList();
    }

    /** Whether a term stands there as a word, be it several; mil does not stand in similar. */
    private static boolean stands(String term, String words) {
        return Pattern.compile("(?<!\\p{L})" + Pattern.quote(term) + "s?(?!\\p{L})")
                .matcher(words)
                .find();
    }
}
