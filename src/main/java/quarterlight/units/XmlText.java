package quarterlight.units;

import java.util.function.IntPredicate;

/** Text as typed, made safe to stand in XML and HTML: a character that neither may hold is written as its code, {@code [U+0001]}. */
public final class XmlText {
    private XmlText() {}

    public static String clean(String typed) {
        return coded(typed, XmlText::isAllowed);
    }

    /** The text with every character that is not wanted written as its code. */
    public static String coded(String text, IntPredicate wanted) {
        StringBuilder out = new StringBuilder();
        int kept = 0;
        int at = 0;
        while (at < text.length()) {
            int c = text.codePointAt(at);
            int next = at + Character.charCount(c);
            if (!wanted.test(c)) {
                out.append(text, kept, at).append(String.format("[U+%04X]", c));
                kept = next;
            }
            at = next;
        }
        return kept == 0 ? text : out.append(text, kept, text.length()).toString();
    }

    /**
     * XML 1.0 (fifth edition), production 2, less what an HTML document may not hold: control characters and noncharacters
     * (HTML Living Standard, "Writing HTML documents", text).
     */
    private static boolean isAllowed(int c) {
        if (c >= ' ' && c <= '~') {
            return true;
        }
        boolean control = Character.getType(c) == Character.CONTROL && c != '\t' && c != '\n' && c != '\r';
        boolean noncharacter = (c >= 0xFDD0 && c <= 0xFDEF) || (c & 0xFFFE) == 0xFFFE;
        boolean surrogate = c >= 0xD800 && c <= 0xDFFF;
        return !control && !noncharacter && !surrogate;
    }

    /** The text with its markup characters escaped. */
    public static String escaped(String typed) {
        return clean(typed)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
