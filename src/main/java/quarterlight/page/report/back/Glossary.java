package quarterlight.page.report.back;

import static quarterlight.language.Sentences.say;

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
    private Glossary() {}

    private static Map<String, String> terms() {
        Map<String, String> terms = new LinkedHashMap<>();
        terms.put(say("report.glossary.term-astm-d610"), say("report.glossary.a-published-standard-that-grades"));
        terms.put(say("report.glossary.term-band"), say("report.glossary.the-range-from-the-5th"));
        terms.put(say("report.glossary.term-basis"), say("report.glossary.how-a-statement-is-known"));
        terms.put(say("report.glossary.term-factory-level"), say("report.glossary.how-thick-the-finish-of"));
        terms.put(say("report.glossary.term-gauge-check"), say("report.glossary.what-the-gauge-showed-on"));
        terms.put(say("report.glossary.term-iso-4628-3"), say("report.glossary.a-published-standard-that-grades-2"));
        terms.put(say("report.glossary.term-mil"), say("report.glossary.a-thousandth-of-an-inch"));
        terms.put(say("report.glossary.term-outlier"), say("report.glossary.a-spot-farther-from-the"));
        terms.put(say("report.glossary.term-refinish-likelihood"), say("report.glossary.how-likely-a-panel-is"));
        terms.put(say("report.glossary.term-repair-likelihood"), say("report.glossary.how-likely-filler-lies-under"));
        terms.put(say("report.glossary.term-ri"), say("report.glossary.degree-of-rusting-by-iso"));
        terms.put(say("report.glossary.term-shim"), say("report.glossary.a-foil-of-known-thickness"));
        terms.put(say("report.glossary.term-spot"), say("report.glossary.readings-at-one-place-of"));
        terms.put(say("report.glossary.term-standard-deviation"), say("report.glossary.how-far-values-scatter-about"));
        terms.put(say("report.glossary.term-structural"), say("report.glossary.of-metal-that-carries-load"));
        terms.put(say("report.glossary.term-substrate"), say("report.glossary.what-a-panel-is-made"));
        terms.put(say("report.glossary.term-zone"), say("report.glossary.a-named-place-on-the"));
        terms.put(say("report.glossary.term-95-interval"), say("report.glossary.a-range-that-holds-the"));
        terms.put(say("report.glossary.term-um"), say("report.glossary.micrometer-a-thousandth-of-a"));
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
        return terms().entrySet().stream()
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
