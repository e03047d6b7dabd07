package quarterlight.ui.kit.look;

import java.awt.AWTEvent;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.event.AWTEventListener;
import java.awt.event.FocusEvent;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.Scrollable;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;

/**
 * Gives what is in it the room that large text asks for: it scrolls where the window has less, so that no word is cut, and follows the keyboard to
 * the field or button it comes to. Event thread only.
 */
public final class Roomy extends JPanel implements Scrollable {
    private static final int STEP_PX = 24;

    private final int width;
    private final int height;
    private final transient AWTEventListener follower = this::follow;

    private Roomy(Component inside, int width, int height) {
        super(new BorderLayout());
        this.width = width;
        this.height = height;
        add(inside, BorderLayout.CENTER);
    }

    /**
     * A pane that scrolls only while the text is larger than usual.
     *
     * @param width room that the content needs at the usual size of text, px
     * @param height the same
     */
    public static JScrollPane around(Component inside, int width, int height) {
        return Look.bare(new JScrollPane(new Roomy(inside, width, height)));
    }

    @Override
    public void addNotify() {
        super.addNotify();
        Toolkit.getDefaultToolkit().addAWTEventListener(follower, AWTEvent.FOCUS_EVENT_MASK);
    }

    @Override
    public void removeNotify() {
        Toolkit.getDefaultToolkit().removeAWTEventListener(follower);
        super.removeNotify();
    }

    /** What the mouse clicked stays below it; large panes stay where they are. */
    private void follow(AWTEvent event) {
        if (event instanceof FocusEvent focus
                && focus.getID() == FocusEvent.FOCUS_GAINED
                && focus.getCause() != FocusEvent.Cause.MOUSE_EVENT
                && (focus.getComponent() instanceof JTextComponent
                        || focus.getComponent() instanceof AbstractButton
                        || focus.getComponent() instanceof JComboBox<?>)
                && SwingUtilities.isDescendingFrom(focus.getComponent(), this)) {
            JComponent at = (JComponent) focus.getComponent();
            at.scrollRectToVisible(new Rectangle(at.getSize()));
        }
    }

    private int needed(int usual) {
        int large = Look.px(usual);
        return large > usual ? large : 0;
    }

    private boolean fits(int room, int usual) {
        return room >= needed(usual);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(needed(width), needed(height));
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getComponent(0).getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return STEP_PX;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return Math.max(STEP_PX, visible.height - STEP_PX);
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return fits(getParent().getWidth(), width);
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return fits(getParent().getHeight(), height);
    }
}
