package quarterlight.language;

import java.util.Locale;

/**
 * Texts of the lists and tables that come with the program, in the language in hand. Such a text is looked up by its English; what an inspector
 * wrote into a list instead is said as it was written.
 */
public final class ListedText {
    private ListedText() {}

    /** @param beginning of the keys of its list: {@code list.trial.} */
    public static String said(String beginning, String english) {
        return Sentences.sayOr(beginning + key(english), english);
    }

    /** By what a text is looked up: its letters and digits. */
    public static String key(String english) {
        return english.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    }
}
