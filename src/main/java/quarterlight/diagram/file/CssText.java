package quarterlight.diagram.file;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Reads style text by the tokens of CSS, with its escapes and comments, as far as is needed to say whether it loads or runs something.
 * <p>Source: W3C, CSS Syntax Module Level 3, section 4 (tokenization): comments, strings, escapes, at-keywords, functions and url tokens.
 */
final class CssText {
    private static final String LOADS = "a style that loads or runs something is not allowed";
    private static final String OUTSIDE = "a reference to something outside the file is not allowed";

    /** Functions whose argument, a string or an address, is loaded, or that are run. */
    private static final Set<String> LOADING = Set.of(
            "src",
            "image",
            "image-set",
            "-webkit-image-set",
            "cross-fade",
            "-webkit-cross-fade",
            "expression",
            "domain",
            "url-prefix",
            "document");

    private final String css;
    private int at;

    private CssText(String css) {
        this.css = css;
    }

    /** Why the text is refused, or empty if it may stand. */
    static Optional<String> fault(String css) {
        return new CssText(css).run();
    }

    private Optional<String> run() {
        while (at < css.length()) {
            char c = css.charAt(at);
            Optional<String> fault = Optional.empty();
            if (css.startsWith("/*", at)) {
                skipComment();
            } else if (c == '"' || c == '\'') {
                fault = faultOfAddress(string(c));
            } else if (c == '@') {
                at++;
                fault = beginsName() && name().equals("import") ? Optional.of(LOADS) : Optional.empty();
            } else if (beginsName()) {
                fault = faultOfName();
            } else {
                at++;
            }
            if (fault.isPresent()) {
                return fault;
            }
        }
        return Optional.empty();
    }

    private void skipComment() {
        int end = css.indexOf("*/", at + 2);
        at = end < 0 ? css.length() : end + 2;
    }

    /** A name, or a function if a parenthesis follows at once. */
    private Optional<String> faultOfName() {
        String name = name();
        boolean function = at < css.length() && css.charAt(at) == '(';
        if (!function) {
            return runs(name) && at < css.length() && css.charAt(at) == ':' ? Optional.of(LOADS) : Optional.empty();
        }
        at++;
        if (name.equals("url")) {
            return address().startsWith("#") ? Optional.empty() : Optional.of(OUTSIDE);
        }
        return LOADING.contains(name) ? Optional.of(LOADS) : Optional.empty();
    }

    private static boolean runs(String scheme) {
        return scheme.equals("javascript") || scheme.equals("vbscript");
    }

    private static Optional<String> faultOfAddress(String text) {
        String address = text.replaceAll("\\s", "").toLowerCase(Locale.ROOT);
        return address.startsWith("javascript:") || address.startsWith("vbscript:")
                ? Optional.of(LOADS)
                : Optional.empty();
    }

    /** What stands between the parentheses of {@code url}: a string, or bare letters up to the end. */
    private String address() {
        skipBlanks();
        if (at < css.length() && (css.charAt(at) == '"' || css.charAt(at) == '\'')) {
            return string(css.charAt(at)).strip();
        }
        StringBuilder bare = new StringBuilder();
        while (at < css.length() && css.charAt(at) != ')') {
            bare.append(letter());
        }
        return bare.toString().strip();
    }

    private void skipBlanks() {
        while (at < css.length() && Character.isWhitespace(css.charAt(at))) {
            at++;
        }
    }

    /** A string; it ends with its quotation mark, an unescaped line end, or the text. */
    private String string(char quote) {
        at++;
        StringBuilder found = new StringBuilder();
        while (at < css.length() && css.charAt(at) != quote && css.charAt(at) != '\n') {
            found.append(letter());
        }
        at++;
        return found.toString();
    }

    private boolean beginsName() {
        if (at >= css.length()) {
            return false;
        }
        char c = css.charAt(at);
        return isOfName(c) || c == '\\' && at + 1 < css.length() && css.charAt(at + 1) != '\n';
    }

    private static boolean isOfName(char c) {
        return Character.isLetterOrDigit(c) || c == '-' || c == '_' || c >= '\u0080';
    }

    /** Letters, digits, hyphens and escapes; small letters. */
    private String name() {
        StringBuilder name = new StringBuilder();
        while (beginsName()) {
            name.append(letter());
        }
        return name.toString().toLowerCase(Locale.ROOT);
    }

    /** The next letter, an escape resolved: up to six hexadecimal digits and one blank, or the letter itself; an escaped line end is nothing. */
    private String letter() {
        char c = css.charAt(at++);
        if (c != '\\' || at >= css.length()) {
            return String.valueOf(c);
        }
        int start = at;
        while (at < css.length() && at - start < 6 && Character.digit(css.charAt(at), 16) >= 0) {
            at++;
        }
        if (at == start) {
            char escaped = css.charAt(at++);
            return escaped == '\n' ? "" : String.valueOf(escaped);
        }
        int code = Integer.parseInt(css.substring(start, at), 16);
        if (at < css.length() && Character.isWhitespace(css.charAt(at))) {
            at += css.startsWith("\r\n", at) ? 2 : 1;
        }
        return code == 0 || !Character.isValidCodePoint(code) ? "\uFFFD" : Character.toString(code);
    }
}
