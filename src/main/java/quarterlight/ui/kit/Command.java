package quarterlight.ui.kit;

import java.awt.Toolkit;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** A command of the window: made once, shared by menu, button, right click and key. Event thread only. */
public final class Command extends AbstractAction {
    private static final int OTHER_COMMAND = ActionEvent.ALT_MASK | ActionEvent.CTRL_MASK | ActionEvent.META_MASK;

    private final transient Runnable work;
    private boolean begins;

    private Command(String name, Runnable work) {
        super(name);
        this.work = work;
    }

    /** A command named by a text key; its tool tip is the text {@code key.tip} if the caller sets one. */
    public static Command of(Texts texts, String key, Runnable work) {
        return new Command(texts.get(key), work);
    }

    /** With the menu key (Ctrl, or Cmd on a Mac) and a key such as {@code Z} or {@code shift Z}. */
    public Command menuKey(String key) {
        KeyStroke plain = KeyStroke.getKeyStroke(key);
        int menu = java.awt.GraphicsEnvironment.isHeadless()
                ? java.awt.event.InputEvent.CTRL_DOWN_MASK
                : Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
        putValue(ACCELERATOR_KEY, KeyStroke.getKeyStroke(plain.getKeyCode(), plain.getModifiers() | menu));
        return this;
    }

    /** With a key of its own such as {@code F1}. */
    public Command key(String key) {
        putValue(ACCELERATOR_KEY, KeyStroke.getKeyStroke(key));
        return this;
    }

    /** The first of a section: a line stands above it in menus. */
    public Command begins() {
        begins = true;
        return this;
    }

    public boolean isFirstOfSection() {
        return begins;
    }

    public Command tip(String tip) {
        putValue(SHORT_DESCRIPTION, tip);
        return this;
    }

    /** Binds the command's key within a component and everything in it. */
    public Command bindTo(JComponent component) {
        Object name = getValue(NAME);
        component
                .getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                .put((KeyStroke) getValue(ACCELERATOR_KEY), name);
        component.getActionMap().put(name, this);
        return this;
    }

    public void rename(String name) {
        putValue(Action.NAME, name);
    }

    /** A typed letter comes with Alt and Ctrl too, which mean another command. */
    @Override
    public void actionPerformed(ActionEvent e) {
        boolean typed =
                getValue(ACCELERATOR_KEY) instanceof KeyStroke stroke && stroke.getKeyEventType() == KeyEvent.KEY_TYPED;
        if (!typed || (e.getModifiers() & OTHER_COMMAND) == 0) {
            work.run();
        }
    }

    /** The keys of the commands hold everywhere in the window of a pane, also where no menu is open. */
    public static void bindEverywhere(JComponent root, List<Command> commands) {
        for (Command command : commands) {
            if (command.getValue(ACCELERATOR_KEY) instanceof KeyStroke stroke) {
                String name = "desk " + stroke;
                root.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).put(stroke, name);
                root.getActionMap().put(name, command);
            }
        }
    }
}
