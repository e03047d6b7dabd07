package quarterlight.ui.library;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.function.Consumer;
import javax.accessibility.AccessibleRole;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import quarterlight.store.library.LibraryPicture;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.DrawnComponent;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Prose;

/** The line in hand at full length, its picture large, and the way to its visit. Event thread only. */
final class FoundPane extends JPanel {
    private static final long serialVersionUID = 1;
    private static final int LONG_SIDE = 1200;

    private final transient Texts texts;
    private final transient LibraryWords words;
    private final transient LibraryPictures pictures;
    private final Large large = new Large();
    private final JTextArea title = Prose.area();
    private final JTextArea about = Prose.area();
    private final JButton open;
    private transient Optional<LibraryItem> item = Optional.empty();

    FoundPane(Texts texts, LibraryPictures pictures, Consumer<LibraryItem> opened) {
        super(new MigLayout("insets 16, wrap 1, gapy 8, hidemode 3", "[grow,fill,0::]", "[grow,fill,60::][][][]"));
        this.texts = texts;
        this.words = new LibraryWords(texts);
        this.pictures = pictures;
        title.setName("library-title");
        Look.named(title, texts.get("library.title"));
        Look.named(about, texts.get("library.about"));
        open = new JButton(texts.get("library.open"));
        open.setName("library-open");
        open.addActionListener(e -> item.ifPresent(opened));
        add(large, "grow, wmin 0, hmin 60");
        add(title, "growx, wmin 0");
        add(Look.secondary(about), "growx, wmin 0");
        add(open, "left, growx 0, h 28!");
        setBorder(BorderFactory.createEmptyBorder());
        show(Optional.empty());
    }

    /** Shows a line, or what to do while none is in hand. */
    void show(Optional<LibraryItem> shown) {
        item = shown;
        title.setText(shown.map(words::title).orElse(texts.get("library.nothing.in.hand")));
        title.setCaretPosition(0);
        about.setText(shown.map(this::told).orElse(""));
        about.setVisible(shown.isPresent());
        large.setVisible(shown.isPresent());
        open.setText(texts.get(shown.flatMap(LibraryItem::place).isPresent() ? "library.open.row" : "library.open"));
        open.setVisible(shown.isPresent());
        refresh();
    }

    private String told(LibraryItem one) {
        String where = one.row()
                .map(row -> words.place(row) + "\n" + one.visit().car() + "\n")
                .orElse("");
        return where + words.about(one.visit()) + "\n" + one.visit().folder();
    }

    /** A picture came. */
    void refresh() {
        Optional<LibraryPicture> picture = item.flatMap(LibraryItem::picture);
        Optional<BufferedImage> image =
                picture.flatMap(one -> pictures.of(item.orElseThrow().visit().folder(), one, LONG_SIDE));
        boolean gone = picture.filter(
                        one -> pictures.cannotShow(item.orElseThrow().visit().folder(), one, LONG_SIDE))
                .isPresent();
        large.show(image, gone ? texts.get("library.picture.gone") : "");
    }

    /** A picture fitted into its frame, or the word on why there is none. */
    private static final class Large extends DrawnComponent {
        private static final long serialVersionUID = 1;
        private transient Optional<BufferedImage> picture = Optional.empty();
        private String word = "";

        @Override
        protected AccessibleRole role() {
            return AccessibleRole.ICON;
        }

        void show(Optional<BufferedImage> fresh, String instead) {
            picture = fresh;
            word = instead;
            repaint();
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            if (picture.isPresent()) {
                BufferedImage image = picture.get();
                double scale = Math.min(
                        1, Math.min((double) getWidth() / image.getWidth(), (double) getHeight() / image.getHeight()));
                int width = (int) Math.round(image.getWidth() * scale);
                int height = (int) Math.round(image.getHeight() * scale);
                g.drawImage(image, 0, (getHeight() - height) / 2, width, height, null);
            } else if (!word.isEmpty()) {
                g.setColor(Look.palette().secondInk());
                g.drawString(word, 0, getHeight() / 2);
            }
            g.dispose();
        }
    }
}
