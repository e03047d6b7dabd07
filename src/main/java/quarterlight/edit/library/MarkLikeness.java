package quarterlight.edit.library;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * How near one number that was read comes to another: edit distance of letters and digits, case and separators left out; a {@code ?} that stands for an unread
 * letter suits any. Pure functions.
 */
final class MarkLikeness {
    private static final Pattern SEPARATORS = Pattern.compile("[^\\p{L}\\p{N}?]");

    /** Shorter ones are like half of all others. */
    private static final int LEAST_LETTERS = 3;

    private MarkLikeness() {}

    /** What is compared of a text: its letters and digits in upper case. */
    static String bare(String text) {
        return SEPARATORS.matcher(text.toUpperCase(Locale.ROOT)).replaceAll("");
    }

    /** What is compared of the parts of a row's text, each once. */
    static List<String> bareParts(String text) {
        return Arrays.stream(text.split("; "))
                .map(MarkLikeness::bare)
                .filter(part -> !part.isEmpty())
                .distinct()
                .toList();
    }

    /** The fewest letters of one that is like a bare number. */
    static int least(String bare) {
        return bare.length() - Math.max(1, bare.length() / 4);
    }

    /** The most letters of one that is like a bare number: as many more as a quarter of the longer one. */
    static int most(String bare) {
        return bare.length() + Math.max(1, bare.length() / 3);
    }

    /** Whether at most a quarter of the longer one would differ, and one letter at least may; both are bare. */
    static boolean isLike(String a, String b) {
        int length = Math.max(a.length(), b.length());
        return length >= LEAST_LETTERS && apart(a, b) <= Math.max(1, length / 4);
    }

    /** Letters to insert, delete or replace; both are bare. */
    static int apart(String a, String b) {
        int[] before = new int[b.length() + 1];
        int[] now = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            before[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            now[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                char x = a.charAt(i - 1);
                char y = b.charAt(j - 1);
                int replace = before[j - 1] + (x == y || x == '?' || y == '?' ? 0 : 1);
                now[j] = Math.min(replace, Math.min(before[j], now[j - 1]) + 1);
            }
            int[] done = before;
            before = now;
            now = done;
        }
        return before[b.length()];
    }
}
