package quarterlight.ui.library;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import javax.swing.BorderFactory;
import javax.swing.Icon;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import net.miginfocom.swing.MigLayout;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Hairline;
import quarterlight.ui.kit.look.Look;

/** Draws a line of the list: a small picture, what it says, and where. Event thread only. */
final class LibraryCell extends JPanel implements ListCellRenderer<LibraryItem> {
    private static final long serialVersionUID = 1;
    private static final int WIDTH = 72;
    private static final int HEIGHT = 54;
    private static final int ROW_INDENT = 24;

    /** Large enough for a screen that draws two dots for one. */
    static final int PIXELS = 2 * WIDTH;

    private final transient LibraryWords words;
    private final transient LibraryPictures pictures;
    private final JLabel picture = new JLabel();
    private final JLabel first = new JLabel();
    private final JLabel second = new JLabel();
    private final JLabel right = new JLabel();

    LibraryCell(Texts texts, LibraryPictures pictures) {
        super(new MigLayout("insets 6 12 6 12, gapx 12, gapy 2", "[][grow,0::][]", "[][]"));
        this.words = new LibraryWords(texts);
        this.pictures = pictures;
        add(picture, "spany 2, w " + WIDTH + "!, h " + HEIGHT + "!");
        add(first, "growx, wmin 0, aligny bottom");
        add(right, "spany 2, aligny center, wrap");
        add(second, "growx, wmin 0, aligny top");
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends LibraryItem> list, LibraryItem item, int index, boolean selected, boolean focused) {
        boolean head = item.isHead();
        Font plain = list.getFont();
        first.setFont(head ? plain.deriveFont(Font.BOLD, plain.getSize2D() + 1) : plain);
        second.setFont(plain.deriveFont(plain.getSize2D() - 2));
        right.setFont(second.getFont());
        first.setText(words.title(item));
        second.setText(words.below(item));
        right.setText(words.atRight(item));
        picture.setIcon(item.picture()
                .flatMap(one -> pictures.of(item.visit().folder(), one, PIXELS))
                .<Icon>map(Small::new)
                .orElse(null));
        first.setForeground(selected ? list.getSelectionForeground() : list.getForeground());
        second.setForeground(Look.palette().secondInk());
        right.setForeground(Look.palette().secondInk());
        setBackground(selected ? list.getSelectionBackground() : list.getBackground());
        setBorder(BorderFactory.createCompoundBorder(
                head ? new Hairline(Hairline.Side.TOP) : BorderFactory.createEmptyBorder(),
                BorderFactory.createEmptyBorder(0, head ? 0 : ROW_INDENT, 0, 0)));
        getAccessibleContext().setAccessibleName(words.spoken(item));
        return this;
    }

    @Override
    public Dimension getPreferredSize() {
        Dimension size = super.getPreferredSize();
        return new Dimension(Math.min(size.width, 200), size.height);
    }

    /** A picture fitted into its frame. */
    private record Small(BufferedImage image) implements Icon {
        @Override
        public void paintIcon(Component c, Graphics graphics, int x, int y) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
            double scale = Math.min((double) WIDTH / image.getWidth(), (double) HEIGHT / image.getHeight());
            int width = (int) Math.round(image.getWidth() * scale);
            int height = (int) Math.round(image.getHeight() * scale);
            g.drawImage(image, x + (WIDTH - width) / 2, y + (HEIGHT - height) / 2, width, height, null);
            g.dispose();
        }

        @Override
        public int getIconWidth() {
            return WIDTH;
        }

        @Override
        public int getIconHeight() {
            return HEIGHT;
        }
    }
}
