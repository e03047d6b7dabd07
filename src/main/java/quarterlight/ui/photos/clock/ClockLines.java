package quarterlight.ui.photos.clock;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.swing.JPanel;
import javax.swing.UIManager;
import quarterlight.capture.CameraClock;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Palette;
import quarterlight.ui.photos.list.PhotoItem;
import quarterlight.ui.photos.list.PhotosModel;
import quarterlight.visit.photo.PhotoId;

/**
 * Every camera's line on one time axis: a tick above the line where its clock recorded a photo, one below where the photo was taken by
 * the corrected time. Event thread only.
 */
final class ClockLines extends JPanel {
    private static final int ROW = 64;
    private static final int LEFT = 12;
    private static final int AXIS = 28;

    private final transient Texts texts;
    private final transient PhotosModel model;

    ClockLines(Texts texts, PhotosModel model) {
        this.texts = texts;
        this.model = model;
        Look.named(this, texts.get("clock.lines"));
    }

    private List<CameraClock> cameras() {
        return model.visit().times().cameras();
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(640, AXIS + 8 + ROW * Math.max(1, cameras().size()));
    }

    /** What the camera's clock showed. */
    private static long recorded(PhotoItem item) {
        return item.photo().file().captured().orElseThrow().time().toEpochSecond(ZoneOffset.UTC);
    }

    private static long corrected(PhotoItem item) {
        return item.local().orElseThrow().toEpochSecond(ZoneOffset.UTC);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            Palette p = Look.palette();
            g.setColor(p.sheet());
            g.fillRect(0, 0, getWidth(), getHeight());
            List<PhotoItem> timed = model.all().items().stream()
                    .filter(item -> item.local().isPresent()
                            && item.photo().file().camera().isPresent())
                    .toList();
            if (!timed.isEmpty()) {
                paint(g, p, timed);
            }
        } finally {
            g.dispose();
        }
    }

    private void paint(Graphics2D g, Palette p, List<PhotoItem> timed) {
        List<Long> all = new ArrayList<>();
        timed.forEach(item -> {
            all.add(recorded(item));
            all.add(corrected(item));
        });
        TimeAxis axis = TimeAxis.of(all, getWidth() - 2 * LEFT);
        ticks(g, p, axis);
        Set<PhotoId> hand = Set.copyOf(model.visit().selection().photos());
        int y = AXIS;
        for (CameraClock clock : cameras()) {
            List<PhotoItem> own = timed.stream()
                    .filter(item -> item.photo().file().camera().orElseThrow().equals(clock.camera()))
                    .toList();
            words(g, p, clock, y + 16);
            line(g, p, axis, own, hand, y + 38);
            y += ROW;
        }
    }

    private void ticks(Graphics2D g, Palette p, TimeAxis axis) {
        g.setFont(small());
        for (long at : axis.ticks()) {
            int x = LEFT + axis.x(at);
            g.setColor(p.line());
            g.drawLine(x, AXIS - 6, x, getHeight());
            g.setColor(p.secondInk());
            g.drawString(Format.clock(LocalDateTime.ofEpochSecond(at, 0, ZoneOffset.UTC)), x + 3, AXIS - 10);
        }
    }

    private void words(Graphics2D g, Palette p, CameraClock clock, int base) {
        String camera = clock.camera().value();
        g.setFont(UIManager.getFont("defaultFont"));
        g.setColor(p.ink());
        g.drawString(camera, LEFT, base);
        int after = LEFT + g.getFontMetrics().stringWidth(camera) + 12;
        g.setFont(small());
        g.setColor(p.secondInk());
        String offset = texts.get("photos.offset." + clock.source().word());
        g.drawString(texts.get("clock.line", clock.photos(), ClockWords.shift(clock.shift()), offset), after, base);
    }

    private void line(Graphics2D g, Palette p, TimeAxis axis, List<PhotoItem> own, Set<PhotoId> hand, int y) {
        g.setColor(p.line());
        g.drawLine(LEFT, y, getWidth() - LEFT, y);
        for (PhotoItem item : own) {
            boolean marked = hand.contains(item.id());
            g.setColor(marked ? p.accent() : p.secondInk());
            int was = LEFT + axis.x(recorded(item));
            g.drawLine(was, y - 8, was, y - 1);
            g.setColor(marked ? p.accent() : p.ink());
            int is = LEFT + axis.x(corrected(item));
            g.drawLine(is, y + 1, is, y + 12);
            if (marked) {
                g.fillOval(is - 3, y + 12, 7, 7);
            }
        }
    }

    private static Font small() {
        Font font = UIManager.getFont("defaultFont");
        return font.deriveFont(font.getSize2D() - 2);
    }
}
