package quarterlight.ui.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quarterlight.language.Language;
import quarterlight.language.Sentences;
import quarterlight.ui.kit.Settings;
import quarterlight.ui.kit.Texts;

/** In which language the window speaks. */
class WindowLanguageTest {
    @Test
    void theSystemsLanguageIsTakenUntilOneIsChosen() {
        assertThat(chosen(Settings.NONE, Locale.GERMANY)).isEqualTo(Language.GERMAN);
        assertThat(chosen(Settings.NONE, Locale.forLanguageTag("de-AT"))).isEqualTo(Language.GERMAN);
        assertThat(chosen(Settings.NONE, Locale.FRANCE)).isEqualTo(Language.ENGLISH);
        Settings english = Settings.NONE.withLanguage(Optional.of(Language.ENGLISH));
        assertThat(chosen(english, Locale.GERMANY)).isEqualTo(Language.ENGLISH);
        assertThat(english.chosenLanguage()).contains(Language.ENGLISH);
        Settings again = english.withLanguage(Optional.empty());
        assertThat(again.chosenLanguage()).isEmpty();
        assertThat(chosen(again, Locale.GERMANY)).isEqualTo(Language.GERMAN);
        assertThat(chosen(Settings.NONE.with("language", "xx"), Locale.US)).isEqualTo(Language.ENGLISH);
    }

    @Test
    void aRunCanHaveAnother() {
        assertThat(WindowLanguage.chosen(Settings.NONE, Locale.US, Optional.of("marked")))
                .isEqualTo(Language.MARKED);
        assertThat(WindowLanguage.chosen(Settings.NONE, Locale.US, Optional.of("de")))
                .isEqualTo(Language.GERMAN);
        assertThat(WindowLanguage.chosen(Settings.NONE, Locale.US, Optional.of("xx")))
                .isEqualTo(Language.ENGLISH);
    }

    @Test
    void textsAreOfTheLanguageAskedForWhateverTheSystemSpeaks() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(Texts.load(Language.ENGLISH).get("menu.view")).isEqualTo("View");
            Locale.setDefault(Locale.US);
            Texts german = Texts.load(Language.GERMAN);
            assertThat(german.get("menu.view")).isEqualTo("Ansicht");
            assertThat(german.get("rust.count", 1234, 2)).contains("1.234");
        } finally {
            Locale.setDefault(before);
        }
    }

    /** What the marked language leaves alone are letters that are typed and lists that are taken apart. */
    @Test
    void markedSentencesAreLongerAndBracketed() {
        Texts marked = Texts.load(Language.MARKED);
        String cancel = marked.get("choice.cancel");
        assertThat(cancel).startsWith(Sentences.MARK + "Cancel").endsWith(Sentences.MARK_END);
        assertThat(cancel.length()).isGreaterThanOrEqualTo("Cancel".length() * 4 / 3 + 2);
        assertThat(marked.get("notes.letter.sound")).hasSize(1);
        assertThat(marked.get("signs.letters"))
                .isEqualTo(Texts.load(Language.ENGLISH).get("signs.letters"));
    }

    private static Language chosen(Settings settings, Locale system) {
        return WindowLanguage.chosen(settings, system, Optional.empty());
    }
}
