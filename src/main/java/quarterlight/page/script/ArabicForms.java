package quarterlight.page.script;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Arabic letters in the forms in which they join, for a setter that knows no joining.
 * <p>Source: The Unicode Standard, chapter 9.2 (joining) and the blocks Arabic Presentation Forms A and B, whose letters stand in the order
 * isolated, final, initial, medial; which letter each belongs to is read from its compatibility decomposition.
 */
public final class ArabicForms {
    private static final int ISOLATED = 0;
    private static final int FINAL = 1;
    private static final int INITIAL = 2;
    private static final int MEDIAL = 3;
    private static final char TATWEEL = '\u0640';
    private static final char JOINER = '\u200D';
    private static final String LAM = "\u0644";

    private static final Map<String, char[]> FORMS = forms();

    private ArabicForms() {}

    private static Map<String, char[]> forms() {
        Map<String, char[]> forms = new HashMap<>();
        collect('\uFB50', '\uFBFF', forms);
        collect('\uFE80', '\uFEFC', forms);
        return forms;
    }

    /** Runs of forms of one letter, or of lam with alef. */
    private static void collect(char from, char to, Map<String, char[]> forms) {
        StringBuilder run = new StringBuilder();
        String letter = "";
        for (char c = from; c <= to + 1; c++) {
            String base = c <= to && Character.isDefined(c)
                    ? Normalizer.normalize(String.valueOf(c), Normalizer.Form.NFKC)
                    : "";
            if (!base.equals(letter)) {
                boolean known =
                        !letter.isEmpty() && (letter.length() == 1 || letter.startsWith(LAM) && letter.length() == 2);
                if (known && (run.length() == 2 || run.length() == 4)) {
                    forms.putIfAbsent(letter, run.toString().toCharArray());
                }
                run.setLength(0);
                letter = base;
            }
            run.append(c);
        }
    }

    /** The text with joined letters; other text as it is. */
    public static String shaped(String text) {
        return text.chars().anyMatch(c -> c >= 0x0600 && c <= 0x06FF) ? joined(text) : text;
    }

    private static String joined(String text) {
        StringBuilder out = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            String ligature = i + 1 < text.length() ? text.substring(i, i + 2) : "";
            boolean two = FORMS.containsKey(ligature);
            Optional<char[]> forms = Optional.ofNullable(FORMS.get(two ? ligature : text.substring(i, i + 1)));
            if (forms.isEmpty()) {
                out.append(text.charAt(i));
                continue;
            }
            boolean before = joinsForward(neighbor(text, i, -1));
            boolean after = !two && forms.get().length == 4 && joinsBack(neighbor(text, i, 1));
            int form = before ? after ? MEDIAL : FINAL : after ? INITIAL : ISOLATED;
            out.append(forms.get()[form]);
            i += two ? 1 : 0;
        }
        return out.toString();
    }

    /** The next letter that is no mark above or below; 0 at the end of the text. */
    private static char neighbor(String text, int from, int step) {
        int i = from + step;
        while (i >= 0 && i < text.length() && Character.getType(text.charAt(i)) == Character.NON_SPACING_MARK) {
            i += step;
        }
        return i >= 0 && i < text.length() ? text.charAt(i) : 0;
    }

    private static boolean joinsForward(char c) {
        char[] forms = FORMS.get(String.valueOf(c));
        return c == TATWEEL || c == JOINER || forms != null && forms.length == 4;
    }

    private static boolean joinsBack(char c) {
        return c == TATWEEL || c == JOINER || FORMS.containsKey(String.valueOf(c));
    }
}
