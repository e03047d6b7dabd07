package quarterlight.ui.kit;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import quarterlight.language.Language;
import quarterlight.ui.kit.look.Sight;
import quarterlight.units.ThicknessUnit;

/**
 * What the window remembers from one day to the next. Unknown keys are kept as they are. Immutable.
 *
 * @param values by key, as they stand in the file
 */
public record Settings(Map<String, String> values) {
    /** Nothing remembered. */
    public static final Settings NONE = new Settings(Map.of());

    private static final String RECENT = "recent.";
    private static final String TEXT = "text.percent";
    private static final String CONTRAST = "contrast";
    private static final String STILL = "still";
    private static final String LANGUAGE = "language";
    private static final int MAX_RECENT = 12;

    public Settings {
        values = Map.copyOf(values);
    }

    public Optional<String> text(String key) {
        return Optional.ofNullable(values.get(Objects.requireNonNull(key, "key")));
    }

    /** The number of a key; the usual one if there is none or it is no number. */
    public int number(String key, int usual) {
        try {
            return text(key).map(Integer::parseInt).orElse(usual);
        } catch (NumberFormatException e) {
            return usual;
        }
    }

    public boolean yes(String key, boolean usual) {
        return text(key).map("yes"::equals).orElse(usual);
    }

    public Settings with(String key, String value) {
        Map<String, String> changed = new TreeMap<>(values);
        changed.put(key, value);
        return new Settings(changed);
    }

    public Settings with(String key, int value) {
        return with(key, Integer.toString(value));
    }

    public Settings with(String key, boolean value) {
        return with(key, value ? "yes" : "no");
    }

    /** The unit of thickness shown; mil unless set. */
    public ThicknessUnit unit() {
        return text("unit").map("um"::equals).orElse(false) ? ThicknessUnit.UM : ThicknessUnit.MIL;
    }

    public Settings withUnit(ThicknessUnit unit) {
        return with("unit", unit == ThicknessUnit.UM ? "um" : "mil");
    }

    /** The language of the window that was chosen; empty for the system's. */
    public Optional<Language> chosenLanguage() {
        return text(LANGUAGE).flatMap(Language::coded);
    }

    /** The language of the window: the one chosen, else the system's if the window speaks it, else English. */
    public Language language(Locale system) {
        return chosenLanguage().or(() -> Language.coded(system.getLanguage())).orElse(Language.ENGLISH);
    }

    /** With another language of the window; an empty one follows the system. */
    public Settings withLanguage(Optional<Language> language) {
        return with(LANGUAGE, language.map(Language::code).orElse("system"));
    }

    public boolean dark() {
        return yes("dark", false);
    }

    /** How the window is to be seen; what the user left open follows the system. */
    public Sight sight() {
        return new Sight(
                dark(), yes(CONTRAST, Sight.systemContrast()), number(TEXT, Sight.systemPercent()), yes(STILL, false));
    }

    public Settings withTextPercent(int percent) {
        return with(TEXT, percent);
    }

    public Settings withContrast(boolean strong) {
        return with(CONTRAST, strong);
    }

    public Settings withStill(boolean still) {
        return with(STILL, still);
    }

    /** Visits opened of late, the last one first. */
    public List<Path> recent() {
        List<Path> recent = new ArrayList<>();
        for (int i = 1; i <= MAX_RECENT; i++) {
            text(RECENT + i).map(Path::of).ifPresent(recent::add);
        }
        return recent;
    }

    public Settings withRecent(Path visit) {
        List<Path> recent = new ArrayList<>(recent());
        Path whole = visit.toAbsolutePath().normalize();
        recent.remove(whole);
        recent.add(0, whole);
        Map<String, String> changed = new TreeMap<>(values);
        changed.keySet().removeIf(key -> key.startsWith(RECENT));
        for (int i = 0; i < Math.min(recent.size(), MAX_RECENT); i++) {
            changed.put(RECENT + (i + 1), recent.get(i).toString());
        }
        return new Settings(changed);
    }
}
