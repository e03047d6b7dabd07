package quarterlight.ui.photos.view;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.SwingUtilities;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.edit.row.RowEdits;
import quarterlight.page.photo.NoteInk;
import quarterlight.page.photo.PhotoNotePainter;
import quarterlight.task.LatestWork;
import quarterlight.ui.kit.Listeners;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.DrawnPart;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Palette;
import quarterlight.ui.kit.view.PhotoCanvas;
import quarterlight.ui.kit.view.PhotoShapes;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.visit.annotation.HiddenRegion;
import quarterlight.visit.annotation.NoteShape;
import quarterlight.visit.annotation.PhotoNote;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;

/**
 * Draws notes and hidden regions above the photo in hand: the tools, what is being drawn, and moving or removing what was drawn. The
 * photo's file is never touched. Event thread only.
 */
public final class NoteOverlay implements PhotoCanvas.Overlay {
    private static final System.Logger LOG = System.getLogger(NoteOverlay.class.getName());
    private static final double NEAR_PX = 7;

    private final Texts texts;
    private final OpenVisit visit;
    private final PhotoCanvas canvas;
    private final Function<String, Optional<String>> ask;
    private final Listeners changed = new Listeners();
    private Optional<PhotoNotePainter> painter = Optional.empty();
    private Optional<PhotoCanvas> beside = Optional.empty();
    private List<Object> painted = List.of();
    private boolean drawing;
    private Optional<NoteTool> tool = Optional.empty();
    private Optional<Point2D> start = Optional.empty();
    private Optional<Point2D> end = Optional.empty();
    private Optional<Recorded<PhotoNote>> note = Optional.empty();
    private Optional<Recorded<HiddenRegion>> region = Optional.empty();

    /** @param ask asks the user for one line; empty if none was given */
    public NoteOverlay(Texts texts, OpenVisit visit, PhotoCanvas canvas, Function<String, Optional<String>> ask) {
        this.texts = texts;
        this.visit = visit;
        this.canvas = canvas;
        this.ask = ask;
        Mouse mouse = new Mouse();
        canvas.addMouseListener(mouse);
        canvas.addMouseMotionListener(mouse);
        LatestWork.once(
                "quarterlight-note-ink",
                SwingUtilities::invokeLater,
                progress -> new PhotoNotePainter(NoteInk.ofPages()),
                this::ready,
                failure -> LOG.log(System.Logger.Level.WARNING, "notes cannot be painted", failure));
        canvas.overlay(this);
        visit.onVisit(this::visitChanged);
    }

    private void visitChanged() {
        List<Object> now = List.of(visit.visit().photoNotes(), visit.visit().hidden());
        if (!now.equals(painted)) {
            painted = now;
            canvas.repaint();
            beside.ifPresent(PhotoCanvas::repaint);
        }
    }

    private void ready(PhotoNotePainter loaded) {
        painter = Optional.of(loaded);
        canvas.repaint();
    }

    /** True while letters are tools and dragging draws. */
    public boolean isDrawing() {
        return drawing;
    }

    public Optional<NoteTool> tool() {
        return tool;
    }

    /** Begins drawing with a tool, or only to choose what was drawn. */
    public void begin(Optional<NoteTool> first) {
        drawing = visit.isEditable();
        tool = first.filter(t -> drawing);
        canvas.requestFocusInWindow();
        changed.tell();
    }

    public void end() {
        drawing = false;
        tool = Optional.empty();
        note = Optional.empty();
        region = Optional.empty();
        start = Optional.empty();
        canvas.repaint();
        changed.tell();
    }

    /** Takes the tool of a letter; false if there is none. */
    public boolean type(char letter) {
        Optional<NoteTool> chosen = NoteTool.of(letter);
        chosen.ifPresent(t -> begin(chosen));
        return chosen.isPresent();
    }

    /** Told when the tool changed. */
    public Listeners.Registration onChanged(Runnable listener) {
        return changed.add(listener);
    }

    /** Shows the same notes on another frame, to be looked at only. */
    void showOn(PhotoCanvas other) {
        beside = Optional.of(other);
        other.overlay(new PhotoCanvas.Overlay() {
            @Override
            public void paint(Graphics2D g, Photo photo, double scale) {
                NoteOverlay.this.paint(g, photo, scale);
            }

            @Override
            public boolean takesMouse() {
                return false;
            }
        });
    }

    @Override
    public List<DrawnPart> parts(Photo photo) {
        return NoteShapes.notes(visit.visit(), photo.id()).stream()
                .map(row -> NoteShapes.part(texts, row.value(), note.equals(Optional.of(row)), () -> choose(row)))
                .toList();
    }

    private void choose(Recorded<PhotoNote> row) {
        begin(Optional.empty());
        note = Optional.of(row);
        canvas.repaint();
    }

    @Override
    public boolean takesMouse() {
        return drawing;
    }

    @Override
    public void paint(Graphics2D g, Photo photo, double scale) {
        double width = photo.file().width().orElse(1);
        double height = photo.file().height().orElse(1);
        double unit = 1 / scale;
        NoteShapes.hidden(visit.visit(), photo.id()).forEach(row -> cover(g, row.value(), unit));
        List<PhotoNote> notes = NoteShapes.notes(visit.visit(), photo.id()).stream()
                .map(Recorded::value)
                .toList();
        painter.ifPresent(p -> p.paint(g, notes, width, height, unit));
        if (canvas.photo().map(Photo::id).equals(Optional.of(photo.id()))) {
            chosen(g, unit);
            preview(g, photo, width, height, unit);
        }
    }

    private void cover(Graphics2D g, HiddenRegion hidden, double unit) {
        Path2D path = PhotoShapes.path(hidden.outline());
        Palette p = Look.palette();
        g.setColor(InkPalette.faint(p.secondInk(), 150));
        g.fill(path);
        g.setColor(p.sheet());
        g.setStroke(new BasicStroke((float) (1.5 * unit)));
        g.draw(path);
    }

    private void chosen(Graphics2D g, double unit) {
        g.setColor(Look.palette().accent());
        g.setStroke(new BasicStroke(
                (float) (1.5 * unit),
                BasicStroke.CAP_BUTT,
                BasicStroke.JOIN_MITER,
                10,
                new float[] {(float) (5 * unit), (float) (4 * unit)},
                0));
        double r = 5 * unit;
        note.ifPresent(row -> row.value()
                .points()
                .forEach(p -> g.draw(new java.awt.geom.Rectangle2D.Double(p.x() - r, p.y() - r, 2 * r, 2 * r))));
        region.ifPresent(row -> g.draw(PhotoShapes.path(row.value().outline())));
    }

    private void preview(Graphics2D g, Photo photo, double width, double height, double unit) {
        if (tool.isEmpty() || start.isEmpty() || end.isEmpty()) {
            return;
        }
        switch (tool.get()) {
            case ARROW, BOX ->
                painter.ifPresent(p -> p.paint(
                        g,
                        List.of(NoteShapes.note(
                                photo.id(),
                                tool.get() == NoteTool.ARROW ? NoteShape.ARROW : NoteShape.BOX,
                                start.get(),
                                end.get(),
                                Optional.empty(),
                                Optional.empty())),
                        width,
                        height,
                        unit));
            case HIDE -> cover(g, NoteShapes.region(photo.id(), start.get(), end.get()), unit);
            case MEASURE, TEXT -> {
                g.setColor(Look.palette().accent());
                g.setStroke(new BasicStroke((float) (2 * unit)));
                g.draw(new Line2D.Double(start.get(), end.get()));
            }
        }
    }

    /** Removes the note or region that is chosen; false if none is. */
    public boolean removeChosen() {
        if (note.isEmpty() && region.isEmpty()) {
            return false;
        }
        Optional<Recorded<PhotoNote>> oldNote = note;
        Optional<Recorded<HiddenRegion>> oldRegion = region;
        note = Optional.empty();
        region = Optional.empty();
        oldNote.ifPresent(row -> remove(RecordKind.PHOTO_NOTES, row));
        oldRegion.ifPresent(row -> remove(RecordKind.HIDDEN, row));
        return true;
    }

    private <T> void remove(RecordKind<T> kind, Recorded<T> row) {
        visit.edit(
                store -> {
                    new RowEdits(store).remove(kind, List.of(row.id()));
                    return row.id();
                },
                done -> {});
    }

    private <T> void add(RecordKind<T> kind, T value) {
        visit.edit(store -> new RowEdits(store).add(kind, List.of(value)), done -> {});
    }

    private <T> void update(RecordKind<T> kind, Recorded<T> row, T value) {
        visit.edit(
                store -> {
                    new RowEdits(store).update(kind, row.id(), value);
                    return row.id();
                },
                done -> {});
    }

    private void drawn(PhotoId photo, Point2D a, Point2D b) {
        switch (tool.orElseThrow()) {
            case ARROW ->
                add(
                        RecordKind.PHOTO_NOTES,
                        NoteShapes.note(photo, NoteShape.ARROW, a, b, Optional.empty(), Optional.empty()));
            case BOX ->
                add(
                        RecordKind.PHOTO_NOTES,
                        NoteShapes.note(photo, NoteShape.BOX, a, b, Optional.empty(), Optional.empty()));
            case TEXT ->
                ask.apply(texts.get("photos.tool.text.ask"))
                        .ifPresent(words -> add(
                                RecordKind.PHOTO_NOTES,
                                NoteShapes.note(photo, NoteShape.TEXT, a, b, Optional.of(words), Optional.empty())));
            case MEASURE -> measure(photo, a, b);
            case HIDE -> add(RecordKind.HIDDEN, NoteShapes.region(photo, a, b));
        }
    }

    /** By the scale set on the photo; the first line sets one. */
    private void measure(PhotoId photo, Point2D a, Point2D b) {
        Optional<PhotoScale> scale = PhotoShapes.scale(visit.visit(), photo)
                .or(() -> ask.apply(texts.get("photos.tool.measure.ask"))
                        .flatMap(NoteOverlay::millimeters)
                        .map(mm -> new PhotoScale.KnownLength(PhotoShapes.pixel(a), PhotoShapes.pixel(b), mm)));
        scale.ifPresent(known -> add(
                RecordKind.PHOTO_NOTES,
                NoteShapes.note(photo, NoteShape.MEASURE, a, b, Optional.empty(), Optional.of(known))));
    }

    private static Optional<Double> millimeters(String typed) {
        try {
            return Optional.of(
                            Double.parseDouble(typed.replace("mm", "").strip().replace(',', '.')))
                    .filter(mm -> mm > 0 && Double.isFinite(mm));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    private final class Mouse extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent e) {
            Optional<Point2D> p = canvas.photoPoint(e.getPoint());
            if (!drawing || p.isEmpty() || canvas.photo().isEmpty() || !SwingUtilities.isLeftMouseButton(e)) {
                return;
            }
            start = p;
            end = p;
            if (tool.isEmpty()) {
                choose(canvas.photo().get().id(), p.get());
            }
        }

        private void choose(PhotoId photo, Point2D p) {
            double within = NEAR_PX / canvas.zoom().orElse(1.0);
            note = NoteShapes.notes(visit.visit(), photo).stream()
                    .filter(row -> NoteShapes.lies(row.value(), p, within))
                    .reduce((a, b) -> b);
            region = note.isPresent()
                    ? Optional.empty()
                    : NoteShapes.hidden(visit.visit(), photo).stream()
                            .filter(row ->
                                    PhotoShapes.path(row.value().outline()).contains(p))
                            .reduce((a, b) -> b);
            canvas.repaint();
        }

        @Override
        public void mouseDragged(MouseEvent e) {
            if (drawing && start.isPresent()) {
                end = canvas.photoPoint(e.getPoint());
                canvas.repaint();
            }
        }

        @Override
        public void mouseReleased(MouseEvent e) {
            if (!drawing || start.isEmpty() || end.isEmpty() || canvas.photo().isEmpty()) {
                return;
            }
            Point2D a = start.get();
            Point2D b = end.get();
            start = Optional.empty();
            end = Optional.empty();
            boolean dragged = a.distance(b) * canvas.zoom().orElse(1.0) > NEAR_PX;
            if (tool.isPresent() && (dragged || tool.get() == NoteTool.TEXT)) {
                drawn(canvas.photo().get().id(), a, b);
            } else if (tool.isEmpty() && dragged) {
                double dx = b.getX() - a.getX();
                double dy = b.getY() - a.getY();
                note.ifPresent(row -> update(RecordKind.PHOTO_NOTES, row, NoteShapes.moved(row.value(), dx, dy)));
                region.ifPresent(row -> update(RecordKind.HIDDEN, row, NoteShapes.moved(row.value(), dx, dy)));
                note = Optional.empty();
                region = Optional.empty();
            }
            canvas.repaint();
        }
    }
}
