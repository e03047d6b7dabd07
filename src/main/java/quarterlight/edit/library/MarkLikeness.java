package quarterlight.edit.library;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * How near one number that was read comes to another: edit distance of letters and digits, case and separators left out; a {@code ?} that stands for an unread
 * letter suits any. Pure functions.
 */
final class MarkLikeness {
    private static final Pattern SEPARATORS = Pattern.compile("[^\\p{L}\\p{N}?]");

    private MarkLikeness() {}

    /** Whether at most a quarter of the longer one would differ, and one letter at least may. */
    static boolean isLike(String a, String b) {
        int length = Math.max(bare(a).length(), bare(b).length());
        return length > 2 && apart(a, b) <= Math.max(1, length / 4);
    }

    /** Letters to insert, delete or replace. */
    static int apart(String one, String other) {
        String a = bare(one);
        String b = bare(other);
        int[] before = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            before[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] now = new int[b.length() + 1];
            now[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                char x = a.charAt(i - 1);
                char y = b.charAt(j - 1);
                int replace = before[j - 1] + (x == y || x == '?' || y == '?' ? 0 : 1);
                now[j] = Math.min(replace, Math.min(before[j], now[j - 1]) + 1);
            }
            before = now;
        }
        return before[b.length()];
    }

    private static String bare(String text) {
        return SEPARATORS.matcher(text.toUpperCase(Locale.ROOT)).replaceAll("");
    }
}
