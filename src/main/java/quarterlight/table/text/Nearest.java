package quarterlight.table.text;

import static quarterlight.language.Sentences.say;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The known word that a mistyped one most likely meant, by edit distance (insert, delete, replace, each 1: V. Levenshtein,
 * 1966, from memory). Words joined by hyphens are also compared in alphabetical order, so that {@code left-quarter} finds {@code quarter-left}.
 */
public final class Nearest {
    /** So many letters that a word begins with name it, however long it goes on. */
    private static final int BEGINNING = 3;

    private Nearest() {}

    /** The nearest of the known words; of equally near ones the first; empty where none is near: more than two letters, and more than a third, would differ. */
    public static Optional<String> of(String word, Collection<String> known) {
        String wanted = tidy(word);
        return known.stream()
                .filter(candidate -> isNear(wanted, candidate))
                .min(Comparator.comparingInt(candidate -> distance(wanted, candidate)));
    }

    /** "; the nearest is hood", or nothing where no known word is near. */
    public static String hint(String word, Collection<String> known) {
        return of(word, known).map(near -> say("cell.nearest", near)).orElse("");
    }

    private static boolean isNear(String wanted, String candidate) {
        int apart = Math.min(edits(wanted, candidate), edits(inOrder(wanted), inOrder(candidate)));
        boolean begins = wanted.length() >= BEGINNING && candidate.startsWith(wanted);
        int length = Math.max(wanted.length(), candidate.length());
        return begins || apart <= (length <= BEGINNING ? 1 : Math.max(2, (length + 1) / 3));
    }

    /** Two per edit, less one per letter that both begin with: people get the beginning of a word right. */
    private static int distance(String wanted, String candidate) {
        int asWritten = 2 * edits(wanted, candidate) - sharedStart(wanted, candidate);
        return Math.min(asWritten, 2 * edits(inOrder(wanted), inOrder(candidate)));
    }

    private static int sharedStart(String a, String b) {
        int length = 0;
        while (length < Math.min(a.length(), b.length()) && a.charAt(length) == b.charAt(length)) {
            length++;
        }
        return length;
    }

    private static String tidy(String word) {
        return word.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
    }

    private static String inOrder(String word) {
        return Arrays.stream(word.split("-")).sorted().collect(Collectors.joining("-"));
    }

    private static int edits(String a, String b) {
        int[] previous = new int[b.length() + 1];
        Arrays.setAll(previous, i -> i);
        for (int i = 1; i <= a.length(); i++) {
            int[] current = new int[b.length() + 1];
            current[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int replace = previous[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                current[j] = Math.min(replace, Math.min(previous[j], current[j - 1]) + 1);
            }
            previous = current;
        }
        return previous[b.length()];
    }
}
