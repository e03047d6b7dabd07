package quarterlight.diagram.file;

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

    private static final String HTML = "http://www.w3.org/1999/xhtml";

    private SafeSvg() {}

    /** Why an element is refused, or empty if it may stand. */
    static Optional<String> faultOfElement(String namespace, String localName) {
        if (HTML.equals(namespace)) {
            return Optional.of("an element of a web page, <" + localName + ">, is not allowed");
        }
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
        return CssText.fault(css);
    }
}
