package quarterlight.ui.kit;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

/** The words of the window, by key, from {@code messages.properties}. Immutable. */
public final class Texts {
    private final ResourceBundle bundle;

    private Texts(ResourceBundle bundle) {
        this.bundle = bundle;
    }

    /** The words that the program carries. */
    public static Texts load() {
        return new Texts(ResourceBundle.getBundle("quarterlight.ui.messages", Locale.ROOT));
    }

    /**
     * The text of a key with its arguments filled in, as {@link MessageFormat} does.
     *
     * @throws MissingResourceException if there is no such key
     */
    public String get(String key, Object... arguments) {
        String pattern = bundle.getString(key);
        return arguments.length == 0 ? pattern : new MessageFormat(pattern, Locale.US).format(arguments);
    }
}
