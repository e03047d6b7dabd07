package quarterlight.page.report.picture;

import static quarterlight.language.Sentences.say;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.page.photo.HiddenPixels;
import quarterlight.page.photo.NoteInk;
import quarterlight.page.photo.PhotoNotePainter;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.annotation.HiddenRegion;
import quarterlight.visit.annotation.NoteShape;
import quarterlight.visit.annotation.PhotoNote;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Recorded;

/**
 * Pictures as the buyer may see them: hidden regions are taken out first, then the inspector's outlines and notes are drawn. A
 * picture with hidden regions whose photo's size is not known is not shown at all. Safe for several threads.
 */
public final class BuyerPictures {
    private static final int THUMBNAIL_PX = 320;
    /** Long side of a picture that a part is taken from: a third of it is still sharp at half the width of a page. */
    private static final int CLOSE_PX = 2400;

    private static final int MAX_PART_PX = 720;
    /** Units of drawing along the longer side, of which words have 13: on a screen; at half the width of A4, where 13 make 6.7 pt; and of a part, 56 mm wide. */
    private static final double SCREEN_UNITS = 900;

    private static final double PRINT_UNITS = 500;
    private static final double CLOSE_UNITS = 300;
    private static final double SAME_MOMENT_S = 0.05;
    private static final Color LINE = InkPalette.LIGHT.accent();

    private final VisitRecord visit;
    private final PhotoPixels pixels;
    private final PictureWriting writing;
    private final PhotoNotePainter painter = new PhotoNotePainter(NoteInk.ofPages());

    public BuyerPictures(VisitRecord visit, PhotoPixels pixels, PictureWriting writing) {
        this.visit = Objects.requireNonNull(visit, "visit");
        this.pixels = Objects.requireNonNull(pixels, "pixels");
        this.writing = Objects.requireNonNull(writing, "writing");
    }

    /** Small pictures from a store, save those with hidden regions: they are made anew without them. */
    public Function<PhotoId, Optional<byte[]>> thumbnails(Function<PhotoId, Optional<byte[]>> stored) {
        return photo -> visit.hiddenOn(photo).isEmpty()
                ? stored.apply(photo)
                : shown(photo, OptionalDouble.empty(), THUMBNAIL_PX)
                        .map(this::printed)
                        .map(PrintedPicture::jpeg);
    }

    /** A photo with what is drawn on it; empty for one that cannot be shown. */
    public Optional<BufferedImage> picture(PhotoId photo, int longSidePx) {
        Frame frame = new Frame(photo, OptionalDouble.empty());
        return shown(photo, frame.at(), longSidePx).map(picture -> annotated(frame, picture, SCREEN_UNITS));
    }

    /** A photo without what is drawn on it, and without what is hidden; empty for one that cannot be shown. */
    public Optional<BufferedImage> bare(PhotoId photo, int longSidePx) {
        return shown(photo, OptionalDouble.empty(), longSidePx);
    }

    /** The same as {@link #picture}, as a JPEG file. */
    public Optional<byte[]> jpeg(PhotoId photo, int longSidePx) {
        return picture(photo, longSidePx).map(this::printed).map(PrintedPicture::jpeg);
    }

    public Optional<PrintedPicture> print(Frame frame) {
        return shown(frame.photo(), frame.at(), PrintedPicture.LONG_SIDE_PX)
                .map(picture -> annotated(frame, picture, PRINT_UNITS))
                .map(this::printed);
    }

    /**
     * A part of a picture, closely: what is drawn on it is drawn, and nothing hidden is shown.
     *
     * @param x left of the part, and y its top, pixels of the upright photo
     */
    public Optional<PrintedPicture> close(Frame frame, double x, double y, double width, double height) {
        return shown(frame.photo(), frame.at(), closeSide(frame.photo(), width))
                .map(picture -> annotated(
                        frame, picture, Optional.of(new Rectangle2D.Double(x, y, width, height)), width / CLOSE_UNITS))
                .flatMap(picture ->
                        scale(frame.photo(), picture).map(scale -> part(picture, scale, x, y, width, height)))
                .map(this::printed);
    }

    /** As many pixels as the part can use: a picture of the whole photo need not be decoded large. */
    private int closeSide(PhotoId photo, double width) {
        return visit.photo(photo)
                .map(Photo::file)
                .filter(file -> file.width().isPresent() && file.height().isPresent())
                .map(file -> MAX_PART_PX
                        * Math.max(file.width().getAsInt(), file.height().getAsInt())
                        / Math.max(1, width))
                .map(side -> (int) Math.min(CLOSE_PX, Math.ceil(side)))
                .orElse(CLOSE_PX);
    }

    private static BufferedImage part(
            BufferedImage picture, double scale, double x, double y, double width, double height) {
        int left = (int) Math.max(0, Math.min(picture.getWidth() - 1, Math.round(x * scale)));
        int top = (int) Math.max(0, Math.min(picture.getHeight() - 1, Math.round(y * scale)));
        int across = (int) Math.max(1, Math.min(picture.getWidth() - left, Math.round(width * scale)));
        int high = (int) Math.max(1, Math.min(picture.getHeight() - top, Math.round(height * scale)));
        int wide = Math.min(across, MAX_PART_PX);
        int tall = Math.max(1, Math.round((float) high * wide / across));
        BufferedImage part = new BufferedImage(wide, tall, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = part.createGraphics();
        try {
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
            g.drawImage(picture.getSubimage(left, top, across, high), 0, 0, wide, tall, null);
        } finally {
            g.dispose();
        }
        return part;
    }

    private PrintedPicture printed(BufferedImage picture) {
        return PrintedPicture.of(picture, writing);
    }

    private Optional<BufferedImage> shown(PhotoId photo, OptionalDouble at, int longSidePx) {
        List<HiddenRegion> regions = visit.hiddenOn(photo);
        Optional<BufferedImage> picture = pixels.picture(photo, at, longSidePx);
        if (regions.isEmpty() || picture.isEmpty()) {
            return picture;
        }
        return scale(photo, picture.get()).map(scale -> HiddenPixels.of(picture.get(), regions, scale));
    }

    /** Pixels of the picture to one of the upright photo. */
    private Optional<Double> scale(PhotoId photo, BufferedImage picture) {
        return visit.photo(photo)
                .map(Photo::file)
                .filter(file -> file.width().isPresent() && file.width().getAsInt() > 0)
                .map(file -> (double) picture.getWidth() / file.width().getAsInt());
    }

    /** @param units of drawing along the longer side of the photo */
    private BufferedImage annotated(Frame frame, BufferedImage picture, double units) {
        double side = Math.max(picture.getWidth(), picture.getHeight());
        return scale(frame.photo(), picture)
                .map(scale -> annotated(frame, picture, Optional.empty(), side / scale / units))
                .orElse(picture);
    }

    /**
     * A picture with what is drawn on it.
     *
     * @param part of the upright photo that will be shown; empty for all of it
     * @param unit pixels of the upright photo to one unit of drawing
     */
    private BufferedImage annotated(Frame frame, BufferedImage picture, Optional<Rectangle2D> part, double unit) {
        List<Trace> traces = traces(frame);
        List<PhotoNote> notes = notes(frame).stream()
                .filter(note -> part.isEmpty() || note.points().stream().anyMatch(within(part.get())))
                .toList();
        List<PhotoScale> scales = scales(frame).stream()
                .filter(scale -> part.isEmpty() || scale.marks().stream().allMatch(within(part.get())))
                .toList();
        Optional<Double> scale = scale(frame.photo(), picture);
        if (scale.isEmpty() || (notes.isEmpty() && traces.isEmpty() && scales.isEmpty())) {
            return picture;
        }
        Rectangle2D shown = part.orElseGet(() ->
                new Rectangle2D.Double(0, 0, picture.getWidth() / scale.get(), picture.getHeight() / scale.get()));
        BufferedImage copy = new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = copy.createGraphics();
        try {
            g.drawImage(picture, 0, 0, null);
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.scale(scale.get(), scale.get());
            traces.forEach(trace -> outline(g, trace, unit));
            painter.paint(g, notes, scales, shown, unit);
        } finally {
            g.dispose();
        }
        return copy;
    }

    private static Predicate<PixelPoint> within(Rectangle2D part) {
        return point -> part.contains(point.x(), point.y());
    }

    private static void outline(Graphics2D g, Trace trace, double unit) {
        Path2D path = new Path2D.Double();
        ring(path, trace.outline().shell());
        trace.outline().holes().forEach(hole -> ring(path, hole));
        g.setColor(Color.WHITE);
        g.setStroke(new BasicStroke((float) (4.4 * unit), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(path);
        g.setColor(LINE);
        g.setStroke(new BasicStroke((float) (2.2 * unit), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(path);
    }

    private static void ring(Path2D path, List<PixelPoint> points) {
        path.moveTo(points.get(0).x(), points.get(0).y());
        points.stream().skip(1).forEach(point -> path.lineTo(point.x(), point.y()));
        path.closePath();
    }

    private List<PhotoNote> notes(Frame frame) {
        return visit.photoNotes().stream()
                .map(Recorded::value)
                .filter(note -> note.photo().equals(frame.photo()) && sameMoment(note, frame))
                .toList();
    }

    private static boolean sameMoment(PhotoNote note, Frame frame) {
        return note.atSeconds().isEmpty() == frame.at().isEmpty()
                && note.atSeconds()
                        .map(at -> Math.abs(at - frame.at().getAsDouble()) <= SAME_MOMENT_S)
                        .orElse(true);
    }

    private List<Trace> traces(Frame frame) {
        return visit.traces().stream()
                .map(Recorded::value)
                .filter(trace ->
                        trace.photo().equals(frame.photo()) && frame.at().isEmpty())
                .toList();
    }

    /** What the outlines and measuring lines take their sizes from, each once. */
    private List<PhotoScale> scales(Frame frame) {
        return Stream.concat(
                        traces(frame).stream().map(Trace::scale),
                        notes(frame).stream().flatMap(note -> note.scale().stream()))
                .distinct()
                .toList();
    }

    /** What is drawn on a picture, in words. */
    public List<String> words(Frame frame) {
        List<String> words = new ArrayList<>();
        List<Trace> traces = traces(frame);
        if (!traces.isEmpty()) {
            words.add(say("report.pictures.outlined")
                    + String.join(
                            ", ",
                            traces.stream()
                                    .map(trace -> trace.kind().said())
                                    .distinct()
                                    .toList()));
        }
        for (PhotoNote note : notes(frame)) {
            Stream<String> text = note.shape() == NoteShape.MEASURE
                    ? Stream.of(PhotoNotePainter.lengthOf(note))
                    : note.text().stream();
            text.filter(word -> !word.isBlank()).forEach(words::add);
        }
        scales(frame).stream().map(PhotoNotePainter::wordsOf).distinct().forEach(words::add);
        if (!visit.hiddenOn(frame.photo()).isEmpty()) {
            words.add(say("report.pictures.hidden"));
        }
        return words;
    }
}
