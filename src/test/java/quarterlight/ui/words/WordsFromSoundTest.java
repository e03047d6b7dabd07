package quarterlight.ui.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.ui.SpokenSample;
import quarterlight.ui.WindowParts;
import quarterlight.ui.kit.OpenedVisit;
import quarterlight.visit.VisitRecord;

/** The button that makes words from the sound: there while a recording has none; what is no model is told in a sentence and costs nothing. */
@Timeout(120)
class WordsFromSoundTest {
    @TempDir
    Path folder;

    private final List<Optional<Path>> proposed = new ArrayList<>();
    private Optional<Path> chosen = Optional.empty();

    private WordsKeys keys(OpenedVisit.Filling filling) throws Exception {
        return new WordsKeys(OpenedVisit.coupe(folder, filling), last -> {
            proposed.add(last);
            return chosen;
        });
    }

    private static JButton button(WordsKeys keys, String name) {
        return WindowParts.named(keys.screen.side(), JButton.class, name);
    }

    private static void press(WordsKeys keys) throws Exception {
        SwingUtilities.invokeAndWait(() -> button(keys, "words-recognize").doClick());
        keys.settle();
    }

    @Test
    void whatIsNoModelIsToldAndChangesNothing() throws Exception {
        try (WordsKeys keys = keys(store -> SpokenSample.addMemo(store, 3, "memo.wav", new byte[] {1}))) {
            assertThat(OpenedVisit.asked(() -> button(keys, "words-recognize").isVisible()))
                    .isTrue();
            assertThat(OpenedVisit.asked(() -> keys.screen.first()))
                    .as("the keyboard begins at what can be done")
                    .isSameAs(button(keys, "words-take"));
            assertThat(OpenedVisit.asked(() -> keys.screen.hint()))
                    .as("no keys are named for drafts that are not there")
                    .isEmpty();
            SwingUtilities.invokeAndWait(() -> button(keys, "words-take").doClick());
            assertThat(keys.taken).as("words are taken in by the button").isOne();
            VisitRecord before = keys.opened.visit().visit();
            press(keys);
            assertThat(keys.opened.told()).as("who leaves is told nothing").isEmpty();

            chosen = Optional.of(folder.resolve("none.bin"));
            press(keys);
            assertThat(keys.opened.told()).singleElement().satisfies(told -> assertThat(told)
                    .contains("none.bin", "cannot be read"));

            chosen = Optional.of(
                    Files.writeString(folder.resolve("text.bin"), "no model at all", StandardCharsets.US_ASCII));
            press(keys);
            assertThat(keys.opened.told()).last().satisfies(told -> assertThat(told)
                    .contains("text.bin", "not a model", "name a whole ggml model file"));
            assertThat(proposed)
                    .containsExactly(Optional.empty(), Optional.empty(), Optional.of(folder.resolve("none.bin")));
            assertThat(keys.opened.visit().visit()).isEqualTo(before);
            assertThat(OpenedVisit.asked(() -> button(keys, "words-recognize").isEnabled()))
                    .as("it can be tried again")
                    .isTrue();
        }
    }

    @Test
    void whereEveryRecordingHasWordsThereIsNoButton() throws Exception {
        try (WordsKeys keys = keys(store -> {
            SpokenSample.add(store, 9, "walk.txt", SpokenSample.WALK);
        })) {
            assertThat(OpenedVisit.asked(
                            () -> button(keys, "words-recognize-more").isVisible()))
                    .isFalse();
            assertThat(OpenedVisit.asked(() -> keys.screen.first())).isNotSameAs(button(keys, "words-take"));
            assertThat(OpenedVisit.asked(() -> keys.screen.hint())).isPresent();
        }
    }

    @Test
    void oneRecordingWithoutWordsIsOfferedBesideTheDrafts() throws Exception {
        try (WordsKeys keys = keys(store -> {
            SpokenSample.add(store, 9, "walk.txt", SpokenSample.WALK);
            SpokenSample.addMemo(store, 3, "memo.wav", new byte[] {1});
        })) {
            assertThat(OpenedVisit.asked(
                            () -> button(keys, "words-recognize-more").isVisible()))
                    .isTrue();
        }
    }
}
