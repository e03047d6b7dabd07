package quarterlight.ui.rust.draw;

import java.awt.Graphics2D;
import java.awt.event.InputEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import quarterlight.rust.OutlineSizes;
import quarterlight.rust.TraceArea;
import quarterlight.rust.plane.Freehand;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.DrawnPart;
import quarterlight.ui.kit.view.PhotoCanvas;
import quarterlight.ui.kit.view.PhotoShapes;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;

/** The outlines above the photo in hand, and what the pointer does to them. Event thread only. */
public final class TraceDesk implements PhotoCanvas.Overlay {
    private static final double NEAR_PX = 9;
    private static final double USUAL_BRUSH_PX = 14;

    private final Texts texts;
    private final OpenVisit visit;
    private final PhotoCanvas canvas;
    private final RustModel model;
    private final ShareModel share;
    private final TracePen pen;
    private final Consumer<Optional<RecordId>> choose;
    private Optional<RecordId> chosen = Optional.empty();
    private Optional<PixelPoint> pointer = Optional.empty();
    private List<PixelPoint> stroke = new ArrayList<>();

    /**
     * @param texts words for those who hear the window
     * @param choose told when a kept outline is clicked, or none
     */
    public TraceDesk(
            Texts texts,
            OpenVisit visit,
            PhotoCanvas canvas,
            RustModel model,
            ShareModel share,
            Consumer<Optional<RecordId>> choose) {
        this.texts = texts;
        this.visit = visit;
        this.canvas = canvas;
        this.model = model;
        this.share = share;
        this.choose = choose;
        this.pen = new TracePen(model, this::near, this::others);
        Mouse mouse = new Mouse();
        canvas.addMouseListener(mouse);
        canvas.addMouseMotionListener(mouse);
        canvas.overlay(this);
        visit.onVisit(canvas::repaint);
        model.onChange(this::changed);
        share.onChange(canvas::repaint);
    }

    TracePen pen() {
        return pen;
    }

    /** The kept outline that is chosen. */
    public void chosen(Optional<RecordId> trace) {
        chosen = trace;
        canvas.repaint();
    }

    private void changed() {
        canvas.pointer();
        canvas.repaint();
    }

    /** How near is near, in pixels of the photo. */
    double near() {
        return NEAR_PX / canvas.zoom().orElse(1.0);
    }

    /** Radius of the brush in pixels of the photo. */
    double brushPx() {
        return USUAL_BRUSH_PX / canvas.zoom().orElse(1.0);
    }

    List<Recorded<Trace>> kept(PhotoId photo) {
        return visit.visit().traces().stream()
                .filter(row -> row.value().photo().equals(photo))
                .toList();
    }

    private List<List<PixelPoint>> others(TraceDraft draft) {
        List<List<PixelPoint>> rings = new ArrayList<>();
        kept(draft.photo()).stream()
                .filter(row -> !draft.row().equals(Optional.of(row.id())))
                .map(row -> row.value().outline())
                .forEach(outline -> {
                    rings.add(outline.shell());
                    rings.addAll(outline.holes());
                });
        return rings;
    }

    /** Every kept outline: where it lies and what it shows. */
    @Override
    public List<DrawnPart> parts(Photo photo) {
        return kept(photo.id()).stream()
                .map(row -> new DrawnPart(
                        texts.get(
                                "trace.part",
                                row.value().kind().said(),
                                visit.label(row.value().zone())),
                        PhotoShapes.path(row.value().outline()).getBounds(),
                        chosen.equals(Optional.of(row.id())),
                        texts.get("trace.part.choose"),
                        () -> choose.accept(Optional.of(row.id()))))
                .toList();
    }

    @Override
    public boolean takesMouse() {
        return model.state().tool() != RustTool.LOOK;
    }

    @Override
    public void paint(Graphics2D g, Photo photo, double scale) {
        share.cover(photo.id())
                .ifPresent(cover -> g.drawImage(cover.image(), 0, 0, cover.width(), cover.height(), null));
        TraceInk ink = new TraceInk(g, scale);
        Optional<TraceDraft> draft = model.draft().filter(d -> d.photo().equals(photo.id()));
        for (Recorded<Trace> row : kept(photo.id())) {
            if (!draft.flatMap(TraceDraft::row).equals(Optional.of(row.id()))) {
                boolean taken = chosen.equals(Optional.of(row.id()));
                if (taken && !share.isOn()) {
                    ink.ground(row.value().outline());
                }
                ink.kept(row.value(), taken);
                if (taken && draft.isEmpty()) {
                    sizes(ink, row);
                    ink.scale(row.value().scale(), Optional.empty(), false);
                }
            }
        }
        draft.ifPresent(d -> draft(ink, d));
        model.state().cross().filter(p -> canvas.isFocusOwner()).ifPresent(ink::cross);
        if (model.state().tool() == RustTool.BRUSH) {
            pointer.or(() -> model.state().cross()).ifPresent(p -> ink.brush(p, brushPx()));
        }
    }

    private void sizes(TraceInk ink, Recorded<Trace> row) {
        OutlineSizes.of(TraceArea.of(row, visit.visit()))
                .ifPresent(sizes -> ink.sizes(row.value().outline(), sizes));
    }

    private void draft(TraceInk ink, TraceDraft draft) {
        RustTool tool = model.state().tool();
        Optional<PixelPoint> next = pointer.or(() -> model.state().cross());
        boolean edits = tool == RustTool.EDIT;
        draft.outline().filter(outline -> !share.isOn()).ifPresent(ink::ground);
        draft.measurable().ifPresent(trace -> sizes(ink, new Recorded<>(new RecordId(0), trace)));
        draft.scale().ifPresent(scale -> ink.scale(scale, model.state().held(), edits));
        ink.draft(
                draft,
                model.state().held(),
                next.map(pen::snapped),
                edits || !draft.open().isEmpty());
        if (tool == RustTool.SCALE) {
            ink.marksBeingSet(draft.marks(), next);
        }
        if (stroke.size() > 1) {
            ink.draft(draft.drawn(List.of(), stroke), Optional.empty(), Optional.empty(), false);
        }
    }

    private final class Mouse extends MouseAdapter {
        private Optional<PixelPoint> at(MouseEvent e) {
            return canvas.photoPoint(e.getPoint()).map(PhotoShapes::pixel);
        }

        @Override
        public void mousePressed(MouseEvent e) {
            Optional<PixelPoint> p = at(e);
            if (p.isEmpty() || canvas.photo().isEmpty() || !SwingUtilities.isLeftMouseButton(e)) {
                return;
            }
            switch (model.state().tool()) {
                case LOOK -> choose.accept(under(p.get()));
                case OUTLINE, SCALE -> {
                    if (e.getClickCount() == 2) {
                        pen.close();
                    } else {
                        pen.set(p.get(), canvas.photo().get().file(), !e.isShiftDown());
                    }
                }
                case FREEHAND -> stroke = new ArrayList<>(List.of(p.get()));
                case EDIT -> pen.take(p.get());
                case BRUSH -> share.brush(p.get(), brushPx(), !e.isShiftDown());
            }
        }

        private Optional<RecordId> under(PixelPoint p) {
            return kept(canvas.photo().orElseThrow().id()).stream()
                    .filter(row -> holds(row.value().outline(), p))
                    .map(Recorded::id)
                    .reduce((a, b) -> b);
        }

        private boolean holds(Outline outline, PixelPoint p) {
            return PhotoShapes.path(outline).contains(new Point2D.Double(p.x(), p.y()));
        }

        @Override
        public void mouseDragged(MouseEvent e) {
            pointer = at(e);
            if (pointer.isEmpty()
                    || canvas.photo().isEmpty()
                    || (e.getModifiersEx() & InputEvent.BUTTON1_DOWN_MASK) == 0) {
                return;
            }
            PixelPoint p = pointer.get();
            switch (model.state().tool()) {
                case FREEHAND -> {
                    if (!stroke.isEmpty()) {
                        stroke.add(TracePen.within(p, canvas.photo().get().file()));
                    }
                }
                case EDIT -> pen.move(p, canvas.photo().get().file());
                case BRUSH -> share.brush(p, brushPx(), !e.isShiftDown());
                case LOOK, OUTLINE, SCALE -> {}
            }
            canvas.repaint();
        }

        @Override
        public void mouseReleased(MouseEvent e) {
            if (model.state().tool() == RustTool.FREEHAND && stroke.size() > 1) {
                List<PixelPoint> ring =
                        Freehand.thinned(stroke, 1.2 / canvas.zoom().orElse(1.0));
                stroke = new ArrayList<>();
                pen.ring(ring);
            } else if (model.state().tool() == RustTool.EDIT) {
                model.hold(Optional.empty());
            }
            forgetStroke();
            canvas.repaint();
        }

        @Override
        public void mouseMoved(MouseEvent e) {
            pointer = at(e);
            if (takesMouse()) {
                canvas.repaint();
            }
        }

        @Override
        public void mouseExited(MouseEvent e) {
            pointer = Optional.empty();
            canvas.repaint();
        }
    }

    /** Draws freehand by keys: the first call puts the pen down, the next lifts it and closes the ring. */
    void pen(PixelPoint at) {
        if (stroke.isEmpty()) {
            stroke = new ArrayList<>(List.of(at));
        } else {
            lift(0.5);
        }
    }

    /** Goes on with the stroke while the pen is down. */
    void drag(PixelPoint to) {
        if (!stroke.isEmpty()) {
            stroke.add(to);
        }
    }

    /** Lifts the pen without a ring. */
    void forgetStroke() {
        stroke = new ArrayList<>();
    }

    private void lift(double tolerance) {
        List<PixelPoint> ring =
                Freehand.thinned(stroke, tolerance / canvas.zoom().orElse(1.0));
        forgetStroke();
        pen.ring(ring);
    }

    /** Points set by keys follow the cross-hair, not the pointer. */
    void forgetPointer() {
        pointer = Optional.empty();
    }
}
