package quarterlight.ui.kit;

import java.awt.Component;
import java.awt.Window;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.RootPaneContainer;

/** What all dialogs have in common: how they are answered and left. Event thread only. */
public final class Dialogs {
    private Dialogs() {}

    /** Lets Escape close a window. */
    public static <W extends Window & RootPaneContainer> void leaveByEscape(W window) {
        window.getRootPane()
                .registerKeyboardAction(
                        e -> window.dispose(), KeyStroke.getKeyStroke("ESCAPE"), JComponent.WHEN_IN_FOCUSED_WINDOW);
    }

    /**
     * Ends a form with a button that answers and one that leaves, and shows it until it is closed.
     *
     * @param form laid out by MigLayout
     * @param go answered by Enter; closes the dialog by itself
     */
    public static void ask(JDialog dialog, JPanel form, JButton go, Texts texts, Component owner) {
        JButton cancel = new JButton(texts.get("choice.cancel"));
        cancel.addActionListener(e -> dialog.dispose());
        form.add(cancel, "span, split 2, right, gaptop 8");
        form.add(go);
        dialog.getRootPane().setDefaultButton(go);
        leaveByEscape(dialog);
        dialog.add(form);
        dialog.pack();
        dialog.setLocationRelativeTo(owner);
        dialog.setVisible(true);
    }
}
