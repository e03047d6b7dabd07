package quarterlight.ui.photos;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import javax.swing.JPanel;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import quarterlight.ui.kit.look.Hairline;
import quarterlight.ui.kit.look.Look;

/** Two parts below the large view: beside each other where there is room, else one below the other. Event thread only. */
final class PinStrip extends JPanel {
    private static final int ROOM = 660;

    PinStrip(Component first, Component second) {
        add(first);
        add(second);
        setLayout(new ByWidth());
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setBorder(new Hairline(Hairline.Side.TOP));
    }

    /** Beside or below, by the width at hand. */
    private static final class ByWidth implements LayoutManager {
        private static final int STACKED_TABLE = 164;

        @Override
        public void addLayoutComponent(String name, Component comp) {
            // the two parts are known
        }

        @Override
        public void removeLayoutComponent(Component comp) {
            // the two parts stay
        }

        @Override
        public Dimension preferredLayoutSize(Container parent) {
            int first = parent.getComponent(0).getPreferredSize().height;
            int second = parent.getComponent(1).getPreferredSize().height;
            boolean beside = seen(parent) >= Look.px(ROOM);
            return new Dimension(300, 1 + (beside ? Math.max(first, second) : first + Look.px(STACKED_TABLE)));
        }

        @Override
        public Dimension minimumLayoutSize(Container parent) {
            return new Dimension(200, preferredLayoutSize(parent).height);
        }

        /** No wider than what is seen at once where the station scrolls sideways, as it does with large text. */
        private static int seen(Container parent) {
            Container port = SwingUtilities.getAncestorOfClass(JViewport.class, parent);
            return port == null || port.getWidth() == 0
                    ? parent.getWidth()
                    : Math.min(parent.getWidth(), port.getWidth());
        }

        @Override
        public void layoutContainer(Container parent) {
            int width = seen(parent);
            int height = parent.getHeight() - 1;
            if (width >= Look.px(ROOM)) {
                int half = width / 2;
                parent.getComponent(0).setBounds(0, 1, half, height);
                parent.getComponent(1).setBounds(half, 1, width - half, height);
            } else {
                int first = Math.max(0, height - Look.px(STACKED_TABLE));
                parent.getComponent(0).setBounds(0, 1, width, first);
                parent.getComponent(1).setBounds(0, 1 + first, width, height - first);
            }
        }
    }
}
