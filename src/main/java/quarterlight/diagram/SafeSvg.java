package quarterlight.diagram;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What a diagram file may not hold, because it could run, load or hide something. */
final class SafeSvg {
    private static final Set<String> FORBIDDEN = Set.of(
            "script",
            "foreignobject",
            "image",
            "use",
            "a",
            "iframe",
            "handler",
            "animate",
            "animatemotion",
            "animatetransform",
            "animatecolor",
            "set",
            "feimage",
            "audio",
            "video",
            "embed",
            "object",
            "link");

    private SafeSvg() {}

    /** Why an element is refused, or empty if it may stand. */
    static Optional<String> faultOfElement(String localName) {
        return FORBIDDEN.contains(localName.toLowerCase(Locale.ROOT))
                ? Optional.of("a <" + localName + "> element is not allowed")
                : Optional.empty();
    }

    /** Why an attribute is refused, or empty if it may stand. */
    static Optional<String> faultOfAttribute(String localName, String value) {
        String name = localName.toLowerCase(Locale.ROOT);
        if (name.startsWith("on") && name.length() > 2) {
            return Optional.of("the script attribute " + localName + " is not allowed");
        }
        if ((name.equals("href") || name.equals("src")) && !value.strip().startsWith("#")) {
            return Optional.of("a reference to something outside the file is not allowed");
        }
        if (name.equals("base")) {
            return Optional.of("a base address is not allowed");
        }
        return faultOfStyle(value);
    }

    /** Why style text is refused, or empty if it may stand. */
    static Optional<String> faultOfStyle(String css) {
        if (css.indexOf('@') < 0 && css.indexOf('(') < 0 && css.indexOf(':') < 0) {
            return Optional.empty();
        }
        String text = css.toLowerCase(Locale.ROOT).replaceAll("/\\*.*?\\*/", "");
        if (text.contains("@import") || text.contains("expression(") || text.contains("javascript:")) {
            return Optional.of("a style that loads or runs something is not allowed");
        }
        for (int at = text.indexOf("url("); at >= 0; at = text.indexOf("url(", at + 4)) {
            String target = text.substring(at + 4).stripLeading();
            if (!target.startsWith("#") && !target.startsWith("\"#") && !target.startsWith("'#")) {
                return Optional.of("a reference to something outside the file is not allowed");
            }
        }
        return text.contains("\\") && text.contains("(")
                ? Optional.of("an escaped style is not allowed")
                : Optional.empty();
    }
}
