package quarterlight.page.photo;

import static quarterlight.language.Sentences.say;

import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import quarterlight.rust.plane.MarkedArea;
import quarterlight.rust.plane.MarkedLength;
import quarterlight.units.Numerals;
import quarterlight.visit.annotation.NoteShape;
import quarterlight.visit.annotation.PhotoNote;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PixelPoint;

/**
 * One note as strokes, filled shapes and words, in pixels of the photo. Immutable.
 *
 * @param strokes lines to be drawn
 * @param fills shapes to be filled
 * @param words what stands beside it, if anything does
 * @param anchors where the top left corner, the bottom left corner … of the words may stand, the best first
 */
record NoteDrawing(List<Shape> strokes, List<Shape> fills, Optional<String> words, List<Anchor> anchors) {
    private static final double HEAD_LENGTH = 11;
    private static final double HEAD_HALF_WIDTH = 5;
    private static final double TICK = 6;
    private static final double GAP = 4;
    private static final int FINEST_PLACES = 1;

    /**
     * A place for words.
     *
     * @param alignX share of the words' width that lies left of {@code x}
     * @param alignY share of the words' height that lies above {@code y}
     */
    record Anchor(double x, double y, double alignX, double alignY) {}

    NoteDrawing {
        strokes = List.copyOf(strokes);
        fills = List.copyOf(fills);
        anchors = List.copyOf(anchors);
    }

    /** @param unit pixels of the photo to one unit of drawing */
    static NoteDrawing of(PhotoNote note, double unit) {
        PixelPoint a = note.points().get(0);
        PixelPoint b = note.points().get(note.points().size() - 1);
        return switch (note.shape()) {
            case ARROW -> arrow(note, a, b, unit);
            case BOX -> box(note, a, b, unit);
            case TEXT -> new NoteDrawing(List.of(), List.of(), note.text(), List.of(new Anchor(a.x(), a.y(), 0, 0)));
            case MEASURE -> measure(lengthOf(note), a, b, unit);
        };
    }

    /** What a scale was taken from: the known length with its ends, the known rectangle, the rim of the coin. */
    static NoteDrawing of(PhotoScale scale, double unit) {
        List<PixelPoint> marks = scale.marks();
        if (scale instanceof PhotoScale.KnownLength length) {
            return measure(wordsOf(scale), length.from(), length.to(), unit);
        }
        Path2D ring = new Path2D.Double();
        ring.moveTo(marks.get(0).x(), marks.get(0).y());
        marks.stream().skip(1).forEach(point -> ring.lineTo(point.x(), point.y()));
        ring.closePath();
        return new NoteDrawing(
                List.of(ring), List.of(), Optional.of(wordsOf(scale)), beside(ring.getBounds2D(), GAP * unit));
    }

    /** The known size in words. */
    static String wordsOf(PhotoScale scale) {
        if (scale instanceof PhotoScale.KnownLength length) {
            return say("report.pictures.scale") + mm(length.mm());
        }
        if (scale instanceof PhotoScale.Coin coin) {
            return say("report.pictures.scale") + say("report.pictures.across", mm(coin.diameterMm()));
        }
        PhotoScale.KnownRectangle rectangle = (PhotoScale.KnownRectangle) scale;
        return say("report.pictures.scale") + mm(rectangle.widthMm()) + " \u00d7 " + mm(rectangle.heightMm());
    }

    private static String mm(double size) {
        BigDecimal number = BigDecimal.valueOf(size)
                .setScale(FINEST_PLACES, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return Numerals.typed(number) + "\u2009mm";
    }

    private static NoteDrawing arrow(PhotoNote note, PixelPoint tail, PixelPoint head, double unit) {
        double length = Math.hypot(head.x() - tail.x(), head.y() - tail.y());
        double ux = length == 0 ? 1 : (head.x() - tail.x()) / length;
        double uy = length == 0 ? 0 : (head.y() - tail.y()) / length;
        double back = Math.min(HEAD_LENGTH * unit, Math.max(length, unit));
        double half = back * HEAD_HALF_WIDTH / HEAD_LENGTH;
        double baseX = head.x() - ux * back;
        double baseY = head.y() - uy * back;
        Path2D tip = new Path2D.Double();
        tip.moveTo(head.x(), head.y());
        tip.lineTo(baseX - uy * half, baseY + ux * half);
        tip.lineTo(baseX + uy * half, baseY - ux * half);
        tip.closePath();
        double gap = GAP * unit;
        double away = ux > 0 ? 1 : 0;
        return new NoteDrawing(
                List.of(new Line2D.Double(tail.x(), tail.y(), baseX, baseY)),
                List.of(tip),
                note.text(),
                List.of(
                        new Anchor(tail.x() - ux * gap, tail.y() - uy * gap, away, uy > 0 ? 1 : 0),
                        new Anchor(tail.x(), tail.y() - gap, 0.5, 1),
                        new Anchor(tail.x(), tail.y() + gap, 0.5, 0),
                        new Anchor(tail.x() - gap, tail.y(), 1, 0.5),
                        new Anchor(tail.x() + gap, tail.y(), 0, 0.5)));
    }

    private static NoteDrawing box(PhotoNote note, PixelPoint a, PixelPoint b, double unit) {
        Rectangle2D box = new Rectangle2D.Double();
        box.setFrameFromDiagonal(a.x(), a.y(), b.x(), b.y());
        return new NoteDrawing(List.of(box), List.of(), note.text(), beside(box, GAP * unit));
    }

    private static List<Anchor> beside(Rectangle2D box, double gap) {
        return List.of(
                new Anchor(box.getMinX(), box.getMinY() - gap, 0, 1),
                new Anchor(box.getMinX(), box.getMaxY() + gap, 0, 0),
                new Anchor(box.getMaxX() + gap, box.getMinY(), 0, 0),
                new Anchor(box.getMinX() - gap, box.getMinY(), 1, 0),
                new Anchor(box.getMinX() + gap, box.getMinY() + gap, 0, 0));
    }

    private static NoteDrawing measure(String words, PixelPoint a, PixelPoint b, double unit) {
        double length = Math.hypot(b.x() - a.x(), b.y() - a.y());
        double nx = length == 0 ? 0 : -(b.y() - a.y()) / length * TICK * unit;
        double ny = length == 0 ? TICK * unit : (b.x() - a.x()) / length * TICK * unit;
        double mx = (a.x() + b.x()) / 2;
        double my = (a.y() + b.y()) / 2;
        double gap = (GAP + TICK / 2) * unit;
        return new NoteDrawing(
                List.of(
                        new Line2D.Double(a.x(), a.y(), b.x(), b.y()),
                        new Line2D.Double(a.x() - nx, a.y() - ny, a.x() + nx, a.y() + ny),
                        new Line2D.Double(b.x() - nx, b.y() - ny, b.x() + nx, b.y() + ny)),
                List.of(),
                Optional.of(words),
                List.of(
                        new Anchor(mx, my - gap, 0.5, 1),
                        new Anchor(mx, my + gap, 0.5, 0),
                        new Anchor(mx + gap, my, 0, 0.5),
                        new Anchor(mx - gap, my, 1, 0.5)));
    }

    /** The length of a measuring line in words, after its text if it has one. */
    static String lengthOf(PhotoNote note) {
        if (note.shape() != NoteShape.MEASURE) {
            throw new IllegalArgumentException("only a measuring line has a length");
        }
        String length = note.scale()
                .flatMap(scale ->
                        MarkedLength.of(note.points().get(0), note.points().get(1), scale, MarkedArea.USUAL_MARK_PX))
                .map(LengthText::of)
                .orElseGet(() -> say("report.pictures.length-not-known"));
        return note.text().map(text -> text + ": " + length).orElse(length);
    }
}
