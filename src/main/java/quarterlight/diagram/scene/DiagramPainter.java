package quarterlight.diagram.scene;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import quarterlight.car.ZoneId;
import quarterlight.diagram.ink.ColorContrast;
import quarterlight.diagram.ink.Highlight;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.place.PlatePlacement;

/**
 * Paints a scene by Java2D, only what the clip touches; the window's renderer. The scene itself does not change, so it is drawn once
 * into a picture in device pixels and put down from there; a hover or selection draws only its own tint and outline. Event thread only.
 */
public final class DiagramPainter {
    private static final double SELECTED_PX = 2;
    private static final double RIM_PX = 1;
    private static final double NAME_SIZE = 12;
    private static final int HOVER_ALPHA = (int) Math.round(0.12 * 255);
    /** From this device scale on hatching is drawn smoothed. */
    private static final double FINE_SCALE = 1.5;

    private static final BasicStroke HAIRLINE = new BasicStroke(0);

    /** Above this many device pixels no picture is kept and the scene is drawn each time. */
    private static final double MAX_KEPT_PX = 40e6;

    private static final int MAX_BANDS = 4;

    private final DiagramScene scene;
    private Optional<Kept> kept = Optional.empty();
    private Named named = new Named(Set.of(), Map.of());

    /** The plates of the selection painted last. */
    private record Named(Set<ZoneId> selected, Map<ZoneId, List<DrawnItem>> plates) {}

    /** The scene as a picture at a device scale. */
    private record Kept(double scaleX, double scaleY, BufferedImage picture) {}

    public DiagramPainter(DiagramScene scene) {
        this.scene = scene;
    }

    /** Paints the scene and the highlight over it; the ground is painted too. */
    public void paint(Graphics2D target, Highlight highlight) {
        Graphics2D g = (Graphics2D) target.create();
        try {
            paintWithin(g, highlight);
        } finally {
            g.dispose();
        }
    }

    private void paintWithin(Graphics2D g, Highlight highlight) {
        Rectangle clip = g.getClipBounds() == null ? sheet() : g.getClipBounds();
        put(g, clip);
        mark(g, highlight, clip);
    }

    private Rectangle sheet() {
        return new Rectangle2D.Double(
                        0, 0, scene.layout().width(), scene.layout().height())
                .getBounds();
    }

    /** Puts the scene down from the kept picture; a target that is turned or very large gets it drawn. */
    private void put(Graphics2D g, Rectangle clip) {
        AffineTransform device = g.getTransform();
        Rectangle sheet = sheet();
        double area = sheet.getWidth() * sheet.getHeight() * device.getScaleX() * device.getScaleY();
        boolean upright = device.getShearX() == 0
                && device.getShearY() == 0
                && device.getScaleX() > 0
                && device.getScaleY() > 0
                && device.getTranslateX() == Math.rint(device.getTranslateX())
                && device.getTranslateY() == Math.rint(device.getTranslateY());
        if (!upright || area > MAX_KEPT_PX) {
            drawScene(g, clip);
            return;
        }
        if (kept.isEmpty()
                || kept.get().scaleX() != device.getScaleX()
                || kept.get().scaleY() != device.getScaleY()) {
            kept = Optional.of(drawnAt(device.getScaleX(), device.getScaleY(), sheet));
        }
        g.setColor(scene.palette().ground());
        if (!sheet.contains(clip)) {
            g.fill(clip);
        }
        Graphics2D plain = (Graphics2D) g.create();
        plain.setTransform(AffineTransform.getTranslateInstance(device.getTranslateX(), device.getTranslateY()));
        plain.drawImage(kept.get().picture(), 0, 0, null);
        plain.dispose();
    }

    private Kept drawnAt(double scaleX, double scaleY, Rectangle sheet) {
        int width = Math.max(1, (int) Math.ceil(sheet.width * scaleX));
        int height = Math.max(1, (int) Math.ceil(sheet.height * scaleY));
        return new Kept(scaleX, scaleY, picture(width, height, scaleX, scaleY));
    }

    /**
     * The whole scene as a picture on its ground, drawn in bands by as many threads as there are processors. On any thread.
     *
     * @param width of the picture in device pixels; the scene is drawn from the upper left corner
     */
    public BufferedImage picture(int width, int height, double scaleX, double scaleY) {
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        int bands = Math.min(Math.min(MAX_BANDS, Runtime.getRuntime().availableProcessors()), height);
        IntStream.range(0, bands).parallel().forEach(band -> {
            int top = height * band / bands;
            int bottom = height * (band + 1) / bands;
            Graphics2D g = picture.getSubimage(0, top, width, bottom - top).createGraphics();
            g.translate(0, -top);
            g.scale(scaleX, scaleY);
            drawScene(g, new Rectangle2D.Double(0, top / scaleY, width / scaleX, (bottom - top) / scaleY).getBounds());
            g.dispose();
        });
        return picture;
    }

    /** Draws the whole scene anew, without the kept picture. */
    public void drawScene(Graphics2D g, Rectangle clip) {
        smooth(g);
        g.setColor(scene.palette().ground());
        g.fill(clip);
        for (ViewScene view : scene.views()) {
            if (view.cell().intersects(clip)) {
                view.drawn().forEach(thing -> draw(g, thing, clip));
            }
        }
        scene.legend().forEach(thing -> draw(g, thing, clip));
        scene.key().forEach(thing -> draw(g, thing, clip));
    }

    /** Paints the highlight alone, over a picture of the scene that was painted before. */
    public void paintHighlight(Graphics2D target, Highlight highlight) {
        Graphics2D g = (Graphics2D) target.create();
        try {
            mark(g, highlight, g.getClipBounds() == null ? sheet() : g.getClipBounds());
        } finally {
            g.dispose();
        }
    }

    private void mark(Graphics2D g, Highlight highlight, Rectangle clip) {
        smooth(g);
        highlight.hovered().ifPresent(zone -> hover(g, zone));
        Set<ZoneId> selected = new TreeSet<>(highlight.selected());
        selected.forEach(zone -> select(g, zone));
        plates(selected).values().forEach(plate -> plate.forEach(thing -> draw(g, thing, clip)));
    }

    private static void smooth(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    }

    private void draw(Graphics2D g, DrawnItem thing, Rectangle clip) {
        if (!thing.bounds().intersects(clip)) {
            return;
        }
        if (thing instanceof DrawnItem.Filled filled) {
            g.setColor(filled.color());
            g.fill(filled.shape());
        } else if (thing instanceof DrawnItem.Stroked stroked) {
            g.setColor(stroked.color());
            if (stroked.plain() && stroked.width() < 1 && g.getTransform().getScaleX() < FINE_SCALE) {
                // lines at 45 degrees step by whole pixels: unsmoothed they are even, and many times faster
                g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
                g.setStroke(HAIRLINE);
                g.draw(stroked.shape());
                g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            } else {
                g.setStroke(stroked.plain() ? plain(stroked.width()) : stroke(stroked.width()));
                g.draw(stroked.shape());
            }
        } else if (thing instanceof DrawnItem.Dots dots) {
            // whole pixels: a rectangle at them is many times faster than a smoothed dot, and no less a dot at this
            // size
            g.setColor(dots.color());
            for (int i = 0; i < dots.count(); i++) {
                g.fillRect((int) Math.round(dots.x(i)) - 1, (int) Math.round(dots.y(i)) - 1, 2, 2);
            }
        } else if (thing instanceof DrawnItem.Words words) {
            g.setColor(words.color());
            g.setFont(scene.measure().font(words.size(), words.bold()));
            g.drawString(words.text(), (float) words.left(), (float) words.baseline());
        }
    }

    private static BasicStroke plain(double width) {
        return new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_BEVEL);
    }

    private static BasicStroke stroke(double width) {
        return new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }

    private void hover(Graphics2D g, ZoneId zone) {
        g.setColor(InkPalette.faint(scene.palette().accent(), HOVER_ALPHA));
        scene.outlinesOf(zone).forEach(g::fill);
    }

    private void select(Graphics2D g, ZoneId zone) {
        // a rim of the ground keeps the accent apart from a fill of like darkness
        g.setColor(scene.palette().ground());
        g.setStroke(stroke(SELECTED_PX + 2 * RIM_PX));
        scene.outlinesOf(zone).forEach(g::draw);
        g.setColor(scene.palette().accent());
        g.setStroke(stroke(SELECTED_PX));
        scene.outlinesOf(zone).forEach(g::draw);
    }

    /** The name plates of selected zones, off whatever else is written on the sheet. */
    private Map<ZoneId, List<DrawnItem>> plates(Set<ZoneId> selected) {
        if (!named.selected().equals(selected)) {
            List<PlatePlacement.Wish> wishes = new ArrayList<>();
            for (ZoneId zone : new TreeSet<>(selected)) {
                List<Rectangle2D> boxes =
                        scene.outlinesOf(zone).stream().map(Shape::getBounds2D).toList();
                if (!boxes.isEmpty()) {
                    wishes.add(new PlatePlacement.Wish(zone, boxes, nameWidth(zone) + 10, NAME_SIZE + 6));
                }
            }
            Map<ZoneId, List<DrawnItem>> drawn = new HashMap<>();
            PlatePlacement.place(wishes, scene.taken(), sheet())
                    .forEach((zone, box) -> drawn.put(zone, plate(zone, box)));
            named = new Named(Set.copyOf(selected), drawn);
        }
        return named.plates();
    }

    private String nameOf(ZoneId zone) {
        return scene.ink().names().getOrDefault(zone, zone.value());
    }

    private double nameWidth(ZoneId zone) {
        return scene.measure().width(nameOf(zone), NAME_SIZE, true);
    }

    private List<DrawnItem> plate(ZoneId zone, Rectangle2D box) {
        Color accent = scene.palette().accent();
        return List.of(
                DrawnItem.Filled.of(
                        new RoundRectangle2D.Double(box.getX(), box.getY(), box.getWidth(), box.getHeight(), 4, 4),
                        accent),
                new DrawnItem.Words(
                        nameOf(zone),
                        box.getX() + 5,
                        box.getCenterY() + 0.35 * NAME_SIZE,
                        NAME_SIZE,
                        true,
                        ColorContrast.readable(
                                accent,
                                scene.palette().ground(),
                                scene.palette().ink()),
                        nameWidth(zone)));
    }

    /**
     * The rectangles that must be painted again when the highlight changes, px; none if it did not.
     */
    public List<Rectangle> dirty(Highlight before, Highlight after) {
        List<Rectangle> regions = new ArrayList<>();
        Set<ZoneId> changed = new TreeSet<>();
        if (!before.hovered().equals(after.hovered())) {
            before.hovered().ifPresent(changed::add);
            after.hovered().ifPresent(changed::add);
        }
        for (ZoneId zone : changed) {
            scene.outlinesOf(zone).forEach(shape -> regions.add(outer(shape.getBounds2D(), 1)));
        }
        Set<ZoneId> selection = new TreeSet<>(before.selected());
        selection.addAll(after.selected());
        selection.removeIf(
                zone -> before.selected().contains(zone) && after.selected().contains(zone));
        for (ZoneId zone : selection) {
            scene.outlinesOf(zone).forEach(shape -> regions.add(outer(shape.getBounds2D(), SELECTED_PX + RIM_PX)));
        }
        if (!selection.isEmpty()) {
            // plates give way to each other, so others may move too
            List<List<DrawnItem>> both =
                    new ArrayList<>(plates(before.selected()).values());
            both.addAll(plates(after.selected()).values());
            both.forEach(plate -> plate.forEach(thing -> regions.add(outer(thing.bounds(), 1))));
        }
        return regions;
    }

    private static Rectangle outer(Rectangle2D r, double by) {
        return DrawnItem.grown(r, by).getBounds();
    }
}
