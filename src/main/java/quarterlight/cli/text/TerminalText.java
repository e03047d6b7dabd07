package quarterlight.cli.text;

/**
 * Text as a terminal may get it: what could steer the terminal, or turn the direction of what stands after it, is shown as an escape, such as
 * {@code \}{@code u001b}. In a JSON document the escape means the character itself, so nothing is lost there.
 */
final class TerminalText {
    private TerminalText() {}

    /** Line ends and tabs stay; a carriage return stays only before a line feed. */
    static String text(String text) {
        int first = 0;
        while (first < text.length() && isPlain(text, first)) {
            first++;
        }
        if (first == text.length()) {
            return text;
        }
        StringBuilder out = new StringBuilder(text.length() + 16).append(text, 0, first);
        for (int i = first; i < text.length(); i++) {
            if (isPlain(text, i)) {
                out.append(text.charAt(i));
            } else {
                out.append(String.format("\\u%04x", (int) text.charAt(i)));
            }
        }
        return out.toString();
    }

    private static boolean isPlain(String text, int at) {
        char c = text.charAt(at);
        if (c == '\n' || c == '\t') {
            return true;
        }
        if (c == '\r') {
            return at + 1 < text.length() && text.charAt(at + 1) == '\n';
        }
        return !Character.isISOControl(c) && !turnsDirection(c) && c != '\u2028' && c != '\u2029';
    }

    /** Embeddings, overrides and isolates of the Unicode bidirectional algorithm, without the marks that scripts need. */
    private static boolean turnsDirection(char c) {
        return c >= '\u202A' && c <= '\u202E' || c >= '\u2066' && c <= '\u2069';
    }
}
