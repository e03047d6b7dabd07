package quarterlight.page;

/** Text as typed, made safe to stand in XML: characters that no XML may hold become the replacement character. */
public final class XmlText {
    private static final char REPLACEMENT = '\uFFFD';

    private XmlText() {}

    /** The text with every character replaced that no XML may hold. */
    public static String clean(String typed) {
        StringBuilder out = new StringBuilder(typed.length());
        typed.codePoints().forEach(c -> out.appendCodePoint(isAllowed(c) ? c : REPLACEMENT));
        return out.toString();
    }

    /** XML 1.0 (fifth edition), production 2. */
    private static boolean isAllowed(int c) {
        return c == '\t'
                || c == '\n'
                || c == '\r'
                || (c >= 0x20 && c <= 0xD7FF)
                || (c >= 0xE000 && c <= 0xFFFD)
                || c >= 0x10000;
    }

    /** The text with its markup characters escaped. */
    static String escaped(String typed) {
        return clean(typed)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
