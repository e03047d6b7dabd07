package quarterlight.ui.kit.look;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.Scrollable;

/** Gives what is in it the room that large text asks for: it scrolls where the window has less, so that no word is cut. Event thread only. */
public final class Roomy extends JPanel implements Scrollable {
    private static final int STEP_PX = 24;

    private final int width;
    private final int height;

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
