package quarterlight.ui.words;

import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.awt.event.KeyListener;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.UnaryOperator;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import quarterlight.ui.WindowParts;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.OpenedVisit;
import quarterlight.words.Draft;

/** Drives the Words station by its keys without a display, at the size that it has in a window of 1280 x 800, and counts them. */
final class WordsKeys implements AutoCloseable {
    private static final int WIDTH = 720;
    private static final int HEIGHT = 700;

    final OpenedVisit opened;
    final WordsScreen screen;
    int taken;
    private int keys;

    WordsKeys(OpenedVisit opened) throws Exception {
        this(opened, last -> last);
    }

    /**
     * The station of a visit.
     *
     * @param model what is answered where the model of a recognizer is asked for
     */
    WordsKeys(OpenedVisit opened, UnaryOperator<Optional<Path>> model) throws Exception {
        this.opened = opened;
        screen = OpenedVisit.asked(() -> new WordsScreen(
                opened.parts(),
                opened.visit(),
                Command.of(opened.parts().texts(), "do.take-words", () -> taken++),
                Optional::empty,
                Optional.of(model)));
        SwingUtilities.invokeAndWait(() -> {
            screen.shown();
            opened.visit().tellAll();
            layOut();
        });
        OpenedVisit.until(() -> screen.model().walk().isPresent());
        SwingUtilities.invokeAndWait(this::layOut);
        settle();
    }

    private void layOut() {
        screen.side().setSize(WIDTH, HEIGHT);
        WindowParts.layOut(screen.side());
    }

    JTable table() {
        return (JTable) screen.first();
    }

    int keys() {
        return keys;
    }

    /** Presses a key of the list. */
    void press(String stroke) throws Exception {
        press(table(), stroke);
        settle();
    }

    private void press(JComponent on, String stroke) throws Exception {
        keys++;
        SwingUtilities.invokeAndWait(() -> {
            KeyStroke key = KeyStroke.getKeyStroke(stroke);
            Object name = on.getInputMap(JComponent.WHEN_FOCUSED).get(key);
            if (name == null) {
                name = on.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                        .get(key);
            }
            Action action = on.getActionMap().get(name);
            action.actionPerformed(new ActionEvent(on, ActionEvent.ACTION_PERFORMED, ""));
        });
    }

    /** Types a letter into the list. */
    void type(char letter) throws Exception {
        keys++;
        SwingUtilities.invokeAndWait(() -> {
            KeyEvent typed = new KeyEvent(table(), KeyEvent.KEY_TYPED, 0, 0, KeyEvent.VK_UNDEFINED, letter);
            for (KeyListener listener : table().getKeyListeners()) {
                listener.keyTyped(typed);
            }
        });
    }

    /** Types letters that find a zone, and takes it; the first goes to the list, so that the field opens. */
    void zone(String letters) throws Exception {
        type(letters.charAt(0));
        JTextField field = WindowParts.named(screen.side(), JTextField.class, "zone-field");
        keys += letters.length() - 1;
        SwingUtilities.invokeAndWait(() -> field.setText(letters));
        press(field, "ENTER");
        settle();
    }

    /** Counts keys that the test presses on its own. */
    void count(int more) {
        keys += more;
    }

    Draft inHand() throws Exception {
        return OpenedVisit.asked(() -> screen.model().inHand().orElseThrow().written());
    }

    /** Waits until the store has done what was asked and the screen knows of it. */
    void settle() throws Exception {
        CountDownLatch done = new CountDownLatch(1);
        SwingUtilities.invokeAndWait(() -> opened.visit().edit(store -> true, yes -> done.countDown()));
        if (!done.await(60, TimeUnit.SECONDS)) {
            throw new AssertionError("the store did not answer");
        }
        SwingUtilities.invokeAndWait(() -> WindowParts.layOut(screen.side()));
        SwingUtilities.invokeAndWait(() -> {});
    }

    @Override
    public void close() {
        SwingUtilities.invokeLater(screen::closed);
        opened.close();
    }
}
