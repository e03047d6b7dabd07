package quarterlight.ui.kit;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import quarterlight.language.Language;
import quarterlight.language.Sentences;

/** The words of the window, by key, from {@code messages.properties} and its neighbors in other languages. Immutable. */
public final class Texts {
    private static final String BUNDLE = "quarterlight.ui.messages";
    /** Taken apart at its semicolons. */
    private static final String LIST = "marks.parts";
    /** A third more: as much as German may need, so that what has no room shows. */
    private static final int LENGTHENED = 3;

    private static final ResourceBundle.Control NO_OTHER_LANGUAGE =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    private final ResourceBundle bundle;
    private final Language language;

    private Texts(ResourceBundle bundle, Language language) {
        this.bundle = bundle;
        this.language = language;
    }

    /** The words that the program carries, in the language in hand. */
    public static Texts load() {
        return load(Language.inHand());
    }

    public static Texts load(Language language) {
        Locale locale = language == Language.GERMAN ? Locale.GERMAN : Locale.ROOT;
        return new Texts(ResourceBundle.getBundle(BUNDLE, locale, NO_OTHER_LANGUAGE), language);
    }

    /**
     * The text of a key with its arguments filled in, as {@link MessageFormat} does.
     *
     * @throws MissingResourceException if there is no such key
     */
    public String get(String key, Object... arguments) {
        String pattern = bundle.getString(key);
        String text = arguments.length == 0 ? pattern : new MessageFormat(pattern, language.locale()).format(arguments);
        return language == Language.MARKED && !key.equals(LIST) ? marked(text) : text;
    }

    /** Between marks and longer; a letter stays one, and so do the letters in a row. */
    private static String marked(String text) {
        boolean plain = text.length() < 2 || text.startsWith("<html>") || text.matches("[A-Z]+");
        return plain
                ? text
                : Sentences.MARK + text + "\u00b7".repeat(text.length() / LENGTHENED + 1) + Sentences.MARK_END;
    }
}
