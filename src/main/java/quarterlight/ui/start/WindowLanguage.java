package quarterlight.ui.start;

import java.util.Locale;
import java.util.Optional;
import quarterlight.language.Language;
import quarterlight.ui.kit.Settings;

/** In which language the window speaks, and the toolkit's own dialogs and names of keys with it. */
public final class WindowLanguage {
    /** A language for this run, whatever the settings say; {@code marked} lengthens and brackets every sentence, for looking at layouts. */
    static final String PROPERTY = "quarterlight.language";

    private WindowLanguage() {}

    /**
     * Takes the language of the settings for the whole program, before anything of the toolkit is loaded. Numbers that no language is asked for
     * stay as the system has them; the country stays the system's, by which paper is chosen.
     */
    public static Language take(Settings settings) {
        Locale system = Locale.getDefault();
        Language language = chosen(settings, system, Optional.ofNullable(System.getProperty(PROPERTY)));
        Locale numbers = Locale.getDefault(Locale.Category.FORMAT);
        Locale.setDefault(new Locale.Builder()
                .setLanguage(language.code())
                .setRegion(system.getCountry())
                .build());
        Locale.setDefault(Locale.Category.FORMAT, numbers);
        return language;
    }

    static Language chosen(Settings settings, Locale system, Optional<String> forThisRun) {
        return forThisRun
                .flatMap(name -> name.equals("marked") ? Optional.of(Language.MARKED) : Language.coded(name))
                .orElseGet(() -> settings.language(system));
    }
}
