package quarterlight.page.photo;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import quarterlight.visit.annotation.PhotoNote;
import quarterlight.visit.annotation.PhotoScale;

/**
 * Paints notes onto a photo, in the window and on pages alike: strokes with a halo, words on a plate, upright and within the
 * photo. One user unit of the graphics is one pixel of the upright photo, whatever the scale beneath it. Immutable; any thread.
 */
public final class PhotoNotePainter {
    private static final double STROKE = 2.2;
    private static final double HALO = 1.6;
    private static final double WIDEST_PLATE = 0.45;

    /** On a photo of this many pixels along its longer side one unit of drawing is one pixel. */
    private static final double USUAL_SIDE = 900;

    private final NoteInk ink;

    public PhotoNotePainter(NoteInk ink) {
        this.ink = Objects.requireNonNull(ink, "ink");
    }

    /** The unit of drawing that suits a photo shown whole: notes then grow and shrink with the photo. */
    public static double usualUnit(double photoWidth, double photoHeight) {
        return Math.max(photoWidth, photoHeight) / USUAL_SIDE;
    }

    /** The length of a measuring line as it is painted, {@code 243 mm ± 2}, after the note's text if it has one. */
    public static String lengthOf(PhotoNote note) {
        return NoteDrawing.lengthOf(note);
    }

    /** What a scale was taken from, in words: {@code scale: 100 mm}. */
    public static String wordsOf(PhotoScale scale) {
        return NoteDrawing.wordsOf(scale);
    }

    /**
     * Paints notes of one photo in their order, all strokes below all words.
     *
     * @param g as the caller gave it, back in the state in which it came
     * @param unit pixels of the photo to one unit of drawing: a stroke has 2.2 units, words 13
     */
    public void paint(Graphics2D g, List<PhotoNote> notes, double photoWidth, double photoHeight, double unit) {
        paint(g, notes, List.of(), new Rectangle2D.Double(0, 0, photoWidth, photoHeight), unit);
    }

    /**
     * The same for a part of a photo, with what its scales were taken from.
     *
     * @param scales drawn with their known sizes, below the notes
     * @param shown the part: no word leaves it
     */
    public void paint(Graphics2D g, List<PhotoNote> notes, List<PhotoScale> scales, Rectangle2D shown, double unit) {
        List<NoteDrawing> drawings = Stream.concat(
                        notes.stream().map(note -> NoteDrawing.of(note, unit)),
                        scales.stream().map(scale -> NoteDrawing.of(scale, unit)))
                .toList();
        Graphics2D own = (Graphics2D) g.create();
        try {
            own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            own.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            own.clip(shown);
            drawings.forEach(drawing -> paintShapes(own, drawing, unit));
            paintWords(own, drawings, shown, unit);
        } finally {
            own.dispose();
        }
    }

    private void paintShapes(Graphics2D g, NoteDrawing drawing, double unit) {
        g.setColor(ink.halo());
        g.setStroke(stroke((STROKE + 2 * HALO) * unit));
        drawing.strokes().forEach(g::draw);
        g.setStroke(stroke(2 * HALO * unit));
        drawing.fills().forEach(g::draw);
        g.setColor(ink.line());
        g.setStroke(stroke(STROKE * unit));
        drawing.strokes().forEach(g::draw);
        for (Shape fill : drawing.fills()) {
            g.fill(fill);
        }
    }

    private static BasicStroke stroke(double width) {
        return new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }

    private void paintWords(Graphics2D g, List<NoteDrawing> drawings, Rectangle2D shown, double unit) {
        List<Rectangle2D> taken = new ArrayList<>();
        for (NoteDrawing drawing : drawings) {
            Optional<String> words = drawing.words().filter(text -> !text.isBlank());
            if (words.isPresent()) {
                Plate plate =
                        Plate.of(words.get(), ink.font(), unit, WIDEST_PLATE * shown.getWidth(), shown.getHeight());
                Rectangle2D place = place(drawing, plate, taken, shown);
                plate.paint(g, place, ink);
                taken.add(place);
            }
        }
    }

    /** The place nearest to the wish that covers the least of the words painted before. */
    private static Rectangle2D place(NoteDrawing drawing, Plate plate, List<Rectangle2D> taken, Rectangle2D shown) {
        List<NoteDrawing.Anchor> anchors = drawing.anchors();
        return IntStream.range(0, anchors.size())
                .mapToObj(i -> choice(i, anchors.get(i), plate, taken, shown))
                .min(Comparator.comparingDouble(Choice::cost))
                .orElseThrow()
                .place();
    }

    private record Choice(Rectangle2D place, double cost) {}

    private static Choice choice(
            int rank, NoteDrawing.Anchor anchor, Plate plate, List<Rectangle2D> taken, Rectangle2D shown) {
        double x = anchor.x() - anchor.alignX() * plate.width();
        double y = anchor.y() - anchor.alignY() * plate.height();
        Rectangle2D place = plate.at(x, y, shown);
        double moved = (Math.abs(place.getX() - x) + Math.abs(place.getY() - y)) / plate.height();
        double covered = taken.stream()
                .mapToDouble(other -> overlap(place, other) / (plate.width() * plate.height()))
                .sum();
        return new Choice(place, 10 * covered + moved + 0.1 * rank);
    }

    private static double overlap(Rectangle2D a, Rectangle2D b) {
        Rectangle2D both = a.createIntersection(b);
        return both.isEmpty() ? 0 : both.getWidth() * both.getHeight();
    }
}
