package quarterlight.store.rows;

import java.time.LocalDateTime;

/** Reads local times as they are kept, {@code YYYY-MM-DDTHH:MM:SS} and what else ISO 8601 allows; thousands are read when a visit is opened. */
final class IsoTime {
    private static final String FORM = "0000-00-00T00:00:00";

    private IsoTime() {}

    /** @throws java.time.DateTimeException if the text is no time, or one that cannot be */
    static LocalDateTime read(String text) {
        return isPlain(text)
                ? LocalDateTime.of(
                        number(text, 0, 4),
                        number(text, 5, 7),
                        number(text, 8, 10),
                        number(text, 11, 13),
                        number(text, 14, 16),
                        number(text, 17, 19))
                : LocalDateTime.parse(text);
    }

    private static boolean isPlain(String text) {
        if (text.length() != FORM.length()) {
            return false;
        }
        for (int i = 0; i < FORM.length(); i++) {
            char wanted = FORM.charAt(i);
            char found = text.charAt(i);
            if (wanted == '0' ? found < '0' || found > '9' : found != wanted) {
                return false;
            }
        }
        return true;
    }

    private static int number(String text, int from, int to) {
        return Integer.parseInt(text, from, to, 10);
    }
}
