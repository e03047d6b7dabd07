package quarterlight.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.concurrent.TimeUnit;
import javax.swing.AbstractButton;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import org.assertj.swing.finder.JFileChooserFinder;
import org.assertj.swing.fixture.JFileChooserFixture;
import org.junit.jupiter.api.Test;
import quarterlight.photo.MediaSamples;
import quarterlight.photo.speech.RecognizerModel;
import quarterlight.store.VisitStore;
import quarterlight.ui.kit.visit.Station;
import quarterlight.visit.photo.MediaKind;

/**
 * Words made from the sound of a memo through the window: the model is chosen in the file dialog, cancelling leaves nothing behind, and what came of it is told.
 * The model of the tests was never trained, so it hears no words.
 */
class RecognizerRobotTest extends DeskRobot {
    private static final int MEMO = 3;

    @Override
    protected void make(Path path) throws Exception {
        Path wav = folder.resolve("memo.wav");
        MediaSamples.wav(wav, 4);
        try (VisitStore store = VisitStore.create(path, coupe(), CLOCK)) {
            SpokenSample.addMemo(store, MEMO, "memo.wav", Files.readAllBytes(wav));
        }
    }

    private Component shown(String name) {
        Collection<Component> found = robot.finder().findAll(c -> name.equals(c.getName()) && c.isShowing());
        return found.isEmpty() ? null : found.iterator().next();
    }

    private void press(String name) throws Exception {
        until(name + " is there", () -> shown(name) != null && shown(name).isEnabled());
        AbstractButton button = (AbstractButton) shown(name);
        SwingUtilities.invokeLater(button::doClick);
    }

    private void choose(Path model) throws Exception {
        press("words-recognize");
        JFileChooserFixture dialog = JFileChooserFinder.findFileChooser()
                .withTimeout(20, TimeUnit.SECONDS)
                .using(robot);
        dialog.selectFile(model.toFile());
        dialog.approve();
    }

    private boolean told(String words) {
        return !robot.finder()
                .findAll(c -> c instanceof JTextArea text
                        && c.isShowing()
                        && text.getText().contains(words))
                .isEmpty();
    }

    @Test
    void aMemoIsListenedToWithProgressAndCancel() throws Exception {
        Path model = RecognizerModel.file();
        press("station-" + Station.WORDS.digit());
        choose(model);
        press("progress-cancel");
        until("it is over", () -> shown("progress-cancel") == null && shown("words-recognize") != null);
        assertThat(held().photos()).as("nothing is left behind").hasSize(1);

        choose(model);
        until("what came of it is told", () -> told("No words were heard in: memo.wav"));
        assertThat(held().photos()).noneMatch(photo -> photo.file().kind() == MediaKind.WORDS);
        robot.pressAndReleaseKeys(java.awt.event.KeyEvent.VK_ESCAPE);
    }
}
