package quarterlight.ui.kit;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.Window;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.RootPaneContainer;
import quarterlight.ui.kit.look.Look;

/** What all dialogs have in common: how they are answered and left. Event thread only. */
public final class Dialogs {
    private static final int BAR_PX = 24;

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
        JScrollPane scroll = new JScrollPane(form);
        Look.bare(scroll);
        dialog.add(scroll);
        pack(dialog, owner);
        dialog.setVisible(true);
    }

    /** As large as its content, but never larger than the screen: what scrolls then scrolls. */
    public static void pack(Window window, Component owner) {
        window.pack();
        Dimension wanted = window.getSize();
        // a bar that scrolls one way takes room from the other
        Rectangle room = room();
        boolean high = wanted.height > room.height;
        size(window, owner, new Dimension(wanted.width + (high ? BAR_PX : 0), wanted.height));
    }

    /** Of a size that grows with the text, but never larger than the screen. */
    public static void open(Window window, Component owner, int usualWidth, int usualHeight) {
        size(window, owner, new Dimension(Look.px(usualWidth), Look.px(usualHeight)));
    }

    private static void size(Window window, Component owner, Dimension wanted) {
        Rectangle room = room();
        window.setSize(Math.min(wanted.width, room.width), Math.min(wanted.height, room.height));
        window.setLocationRelativeTo(owner);
    }

    private static Rectangle room() {
        return GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
    }
}
