package quarterlight.visit.trial;

import java.util.Locale;
import java.util.regex.Pattern;
import quarterlight.language.Sentences;

/** The names of functions as people read them: those of the program's list in the language in hand, others as they were typed. */
public final class TrialNames {
    private static final Pattern BETWEEN_WORDS = Pattern.compile("[^a-z0-9]+");

    private TrialNames() {}

    /** @param item as typed, or as the list has it */
    public static String said(String item) {
        String bare = item.strip();
        String slug = BETWEEN_WORDS.matcher(bare.toLowerCase(Locale.ROOT)).replaceAll("-");
        return Sentences.sayOr("trials." + slug, bare);
    }
}
