package quarterlight.coverage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import quarterlight.visit.statement.Statement;

/** Sentences that the inspector wrote before, offered while typing. */
public final class Phrases {
    private static final int MAX_PHRASES = 8;

    private Phrases() {}

    /**
     * Earlier sentences that go on from what was typed.
     *
     * @param earlier statements of this and earlier visits, the oldest first
     * @param typed the first letters, or the first letters of any word; case, and more than one blank, do not matter; empty for the
     *     commonest
     * @return at most 8, each once as last written: those that begin so before those in which a later word does, then the most often
     *     written, then the latest
     */
    public static List<String> phrases(List<Statement> earlier, String typed) {
        return offered(earlier.stream().map(Statement::text).toList(), typed);
    }

    /** The same of the bare sentences, the oldest first. */
    public static List<String> offered(List<String> earlier, String typed) {
        String wanted = key(typed);
        Map<String, Phrase> found = new LinkedHashMap<>();
        for (int i = 0; i < earlier.size(); i++) {
            String text = earlier.get(i).strip();
            String key = key(text);
            boolean begins = key.startsWith(wanted);
            if (!text.isEmpty() && !key.equals(wanted) && (begins || key.contains(" " + wanted))) {
                Phrase before = found.getOrDefault(key, new Phrase(text, begins, 0, i));
                found.put(key, new Phrase(text, begins, before.times() + 1, i));
            }
        }
        List<Phrase> sorted = new ArrayList<>(found.values());
        sorted.sort(Comparator.comparing((Phrase phrase) -> !phrase.begins())
                .thenComparing(Comparator.comparingInt(Phrase::times).reversed())
                .thenComparing(Comparator.comparingInt(Phrase::latest).reversed()));
        return sorted.stream().limit(MAX_PHRASES).map(Phrase::text).toList();
    }

    private static String key(String text) {
        return text.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    private record Phrase(String text, boolean begins, int times, int latest) {}
}
