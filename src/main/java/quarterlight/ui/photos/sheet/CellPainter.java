package quarterlight.ui.photos.sheet;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Palette;
import quarterlight.ui.kit.view.MediaIcon;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.photos.list.PhotoHints;
import quarterlight.ui.photos.list.PhotoItem;
import quarterlight.visit.WithheldFiles;

/** Paints one photo of the contact sheet: picture, time, where it is pinned, and what to look at twice. Event thread only. */
final class CellPainter {
    private static final Stroke THIN = new BasicStroke(1);
    private static final Stroke THICK = new BasicStroke(2);

    /** How a cell stands out. */
    record State(boolean selected, boolean inHand, boolean hovered, boolean focused) {}

    private final Texts texts;
    private final OpenVisit visit;
    private final CellPictures pictures;

    CellPainter(Texts texts, OpenVisit visit, CellPictures pictures) {
        this.texts = texts;
        this.visit = visit;
        this.pictures = pictures;
    }

    void paint(Graphics2D g, PhotoItem item, PhotoHints hints, Rectangle cell, int pictureHeight, State state) {
        Palette p = Look.palette();
        Rectangle box = new Rectangle(cell.x, cell.y, cell.width, pictureHeight);
        if (state.selected() || state.hovered()) {
            g.setColor(Palette.mix(p.paper(), p.accent(), state.selected() ? 0.22 : 0.12));
            g.fillRect(cell.x - 4, cell.y - 4, cell.width + 8, cell.height + 8);
        }
        g.setColor(p.sheet());
        g.fill(box);
        if (item.photo().file().kind().isShown()) {
            picture(g, item, box);
        } else {
            MediaIcon.paint(g, p, texts, item.photo().file(), box);
        }
        if (item.isAside()) {
            aside(g, box, p);
        }
        if (state.inHand()) {
            g.setColor(p.accent());
            g.setStroke(THICK);
            g.drawRect(cell.x - 3, cell.y - 3, cell.width + 6, cell.height + 6);
            if (state.focused()) {
                g.setColor(p.paper());
                g.setStroke(THIN);
                g.drawRect(cell.x - 1, cell.y - 1, cell.width + 2, cell.height + 2);
            }
        }
        words(g, item, hints, cell, pictureHeight, p);
    }

    private void picture(Graphics2D g, PhotoItem item, Rectangle box) {
        double scale = g.getTransform().getScaleX();
        Optional<BufferedImage> image = pictures.fitting(
                item.photo().file(), (int) Math.round(box.width * scale), (int) Math.round(box.height * scale));
        if (image.isPresent()) {
            AffineTransform before = g.getTransform();
            double w = image.get().getWidth() / scale;
            double h = image.get().getHeight() / scale;
            g.translate(Math.floor(box.x + (box.width - w) / 2), Math.floor(box.y + (box.height - h) / 2));
            g.scale(1 / scale, 1 / scale);
            g.drawImage(image.get(), 0, 0, null);
            g.setTransform(before);
        } else if (!item.isComing() && visit.images().cannotShow(item.photo().file())) {
            g.setColor(Look.palette().secondInk());
            g.setFont(small(g));
            String text =
                    texts.get("photos.cell.no-picture", item.photo().file().type());
            g.drawString(shortened(text, g.getFontMetrics(), box.width - 8), box.x + 4, box.y + box.height / 2);
        }
    }

    private static void aside(Graphics2D g, Rectangle box, Palette p) {
        g.setColor(InkPalette.faint(p.paper(), 170));
        g.fill(box);
        g.setColor(p.secondInk());
        g.setStroke(THIN);
        g.drawLine(box.x, box.y + box.height, box.x + box.width, box.y);
    }

    private void words(Graphics2D g, PhotoItem item, PhotoHints hints, Rectangle cell, int pictureHeight, Palette p) {
        g.setFont(small(g));
        FontMetrics metrics = g.getFontMetrics();
        int first = cell.y + pictureHeight + Look.px(14);
        String time = item.local().map(Format::clock).orElse(texts.get("photos.cell.no-time"));
        g.setColor(p.secondInk());
        g.drawString(shortened(time, metrics, cell.width), cell.x, first);
        String marks = String.join(" \u00b7 ", marks(item, hints));
        int left = cell.x + metrics.stringWidth(time) + 6;
        if (!marks.isEmpty() && left < cell.x + cell.width - 12) {
            String shown = shortened(marks, metrics, cell.x + cell.width - left);
            g.drawString(shown, cell.x + cell.width - metrics.stringWidth(shown), first);
        }
        boolean open = item.isOpen() || item.isComing();
        g.setColor(open ? p.secondInk() : p.ink());
        String where = item.photo()
                .setAside()
                .map(why -> texts.get("photos.cell.aside", why))
                .orElseGet(
                        () -> open ? texts.get(item.isComing() ? "coming.cell" : "photos.cell.unpinned") : zones(item));
        if (!open && !item.isAside() && !item.isPinned()) {
            g.drawString(shortened(item.name(), metrics, cell.width), cell.x, first + Look.px(15));
        } else if (!open && !item.isAside()) {
            g.setColor(p.accent());
            dot(g, cell.x, first + Look.px(8), item.isStoring());
            g.setColor(p.ink());
            g.drawString(shortened(where, metrics, cell.width - 10), cell.x + 10, first + Look.px(15));
        } else {
            g.drawString(shortened(where, metrics, cell.width), cell.x, first + Look.px(15));
        }
    }

    /** Full for a pin that the visit holds, a ring while one is being stored. */
    private static void dot(Graphics2D g, int x, int y, boolean storing) {
        if (storing) {
            g.setStroke(THIN);
            g.drawOval(x, y, 5, 5);
        } else {
            g.fillOval(x, y, 6, 6);
        }
    }

    private String zones(PhotoItem item) {
        return item.allPins().map(pin -> visit.label(pin.zone())).distinct().collect(Collectors.joining(", "));
    }

    private List<String> marks(PhotoItem item, PhotoHints hints) {
        List<String> marks = new ArrayList<>();
        if (item.isFilm()) {
            marks.add(texts.get("photos.mark.film"));
        }
        if (item.isPaper()) {
            marks.add(texts.get(
                    "photos.mark.paper", item.photo().file().more().pages().orElse(0)));
        }
        if (item.isHeldBack()) {
            boolean held = WithheldFiles.of(visit.visit()).holds(item.id());
            marks.add(texts.get(held ? "photos.mark.held" : "photos.mark.released"));
        }
        if (item.noted()) {
            marks.add(texts.get("photos.mark.noted"));
        }
        if (hints.isSoft(item.id())) {
            marks.add(texts.get("photos.mark.soft"));
        }
        if (hints.alike(item.id()).isPresent()) {
            marks.add(texts.get("photos.mark.alike"));
        }
        if (hints.isDark(item.id())) {
            marks.add(texts.get("photos.mark.dark"));
        }
        if (hints.isBright(item.id())) {
            marks.add(texts.get("photos.mark.bright"));
        }
        return marks;
    }

    private static Font small(Graphics2D g) {
        Font font = g.getFont();
        Font base = javax.swing.UIManager.getFont("defaultFont");
        Font wanted = base == null ? font : base;
        return wanted.deriveFont(wanted.getSize2D() - 2);
    }

    private static String shortened(String text, FontMetrics metrics, int width) {
        if (metrics.stringWidth(text) <= width) {
            return text;
        }
        int low = 0;
        int high = text.length();
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (metrics.stringWidth(text.substring(0, middle) + "\u2026") <= width) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return text.substring(0, low) + "\u2026";
    }
}
