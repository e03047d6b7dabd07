package quarterlight.ui.kit.field;

import java.awt.Component;
import java.awt.KeyEventDispatcher;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.beans.PropertyChangeListener;
import java.util.Objects;
import java.util.Optional;
import javax.swing.JFormattedTextField;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;

/**
 * What becomes of typed text in every field of every window: a field that belongs to something kept keeps its text when the keyboard leaves
 * it, in any other field the text stays standing, and Escape takes back what was typed since the keyboard came. One for the whole program,
 * so that no field can be forgotten. Event thread only.
 */
public final class TypedText implements AutoCloseable {
    /** Text that stood in a field when the keyboard came, or when it was last kept. */
    private static final String STOOD = "quarterlight.stood";

    private static final String KEEP = "quarterlight.keep";
    private static final String OWN_ESCAPE = "quarterlight.own-escape";
    private static final String OWNER = "permanentFocusOwner";

    private final KeyboardFocusManager keyboard = KeyboardFocusManager.getCurrentKeyboardFocusManager();
    private final PropertyChangeListener moved = e -> moved(e.getOldValue(), e.getNewValue());
    private final KeyEventDispatcher keys = this::pressed;

    private TypedText() {}

    /** Begins to watch the keyboard of this program. */
    public static TypedText watch() {
        TypedText typing = new TypedText();
        typing.keyboard.addPropertyChangeListener(OWNER, typing.moved);
        typing.keyboard.addKeyEventDispatcher(typing.keys);
        return typing;
    }

    /** Says how a field keeps what was typed; it is asked when the keyboard leaves the field with another text than it came to. */
    public static <T extends JTextComponent> T keeping(T field, Runnable keep) {
        field.putClientProperty(KEEP, Objects.requireNonNull(keep, "keep"));
        return field;
    }

    /** Leaves Escape to a field that takes back more than its text. */
    public static <T extends JTextComponent> T ownEscape(T field) {
        field.putClientProperty(OWN_ESCAPE, true);
        return field;
    }

    /** Keeps what stands in the field in hand, such as before the visit is closed. */
    public void leave() {
        left(keyboard.getPermanentFocusOwner());
    }

    private void moved(Object from, Object to) {
        left(from);
        if (to instanceof JTextComponent field) {
            field.putClientProperty(STOOD, field.getText());
        }
    }

    private static void left(Object from) {
        if (from instanceof JTextComponent field && changed(field).isPresent()) {
            field.putClientProperty(STOOD, field.getText());
            if (field.getClientProperty(KEEP) instanceof Runnable keep) {
                keep.run();
            }
        }
    }

    /** What stood in the field before something else was typed into it. */
    private static Optional<String> changed(JTextComponent field) {
        return field.isEditable()
                        && field.getClientProperty(STOOD) instanceof String stood
                        && !stood.equals(field.getText())
                ? Optional.of(stood)
                : Optional.empty();
    }

    private boolean pressed(KeyEvent e) {
        Component focus = keyboard.getPermanentFocusOwner();
        if (e.getID() != KeyEvent.KEY_PRESSED
                || e.isConsumed()
                || !(focus instanceof JTextComponent field)
                || focus != e.getComponent()) {
            return false;
        }
        if (e.getKeyCode() == KeyEvent.VK_ENTER) {
            SwingUtilities.invokeLater(() -> field.putClientProperty(STOOD, field.getText()));
            return false;
        }
        if (e.getKeyCode() != KeyEvent.VK_ESCAPE
                || e.getModifiersEx() != 0
                || field instanceof JFormattedTextField
                || field.getClientProperty(OWN_ESCAPE) != null) {
            return false;
        }
        Optional<String> stood = changed(field);
        stood.ifPresent(field::setText);
        return stood.isPresent();
    }

    @Override
    public void close() {
        keyboard.removePropertyChangeListener(OWNER, moved);
        keyboard.removeKeyEventDispatcher(keys);
    }
}
