package quarterlight.ui.rust.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import java.util.function.Function;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.photo.PhotoFile;

/** Draws, whether by pointer or by keys: sets points, closes rings, sets the scale, moves corners. Event thread only. */
final class TracePen {
    private final RustModel model;
    private final DoubleSupplier near;
    private final Function<TraceDraft, List<List<PixelPoint>>> others;

    /**
     * @param near how near is near, in pixels of the photo as it is zoomed now
     * @param others rings of the other traces on the photo of a draft
     */
    TracePen(RustModel model, DoubleSupplier near, Function<TraceDraft, List<List<PixelPoint>>> others) {
        this.model = model;
        this.near = near;
        this.others = others;
    }

    /** Where a point would come to lie: at the first point of the ring, else at what is near of other outlines. */
    PixelPoint snapped(PixelPoint p) {
        Optional<TraceDraft> draft = model.draft();
        if (draft.isEmpty() || !model.state().tool().draws()) {
            return p;
        }
        if (closes(draft.get(), p)) {
            return draft.get().open().get(0);
        }
        return Snap.of(p, others.apply(draft.get()), near.getAsDouble());
    }

    private boolean closes(TraceDraft draft, PixelPoint p) {
        return draft.open().size() >= TraceDraft.MIN_POINTS
                && Snap.distance(p, draft.open().get(0)) <= near.getAsDouble();
    }

    /** Sets a point of the ring or of the scale. At the first point of a ring it closes the ring. */
    void set(PixelPoint p, PhotoFile photo, boolean snapping) {
        if (model.draft().isEmpty()) {
            return;
        }
        TraceDraft draft = model.draft().get();
        PixelPoint within = within(p, photo);
        if (model.state().tool() == RustTool.SCALE) {
            mark(draft, within);
        } else if (model.state().tool().draws()) {
            if (closes(draft, p)) {
                close();
            } else {
                List<PixelPoint> more = new ArrayList<>(draft.open());
                more.add(snapping ? within(snapped(within), photo) : within);
                model.write(draft.drawn(draft.rings(), more));
            }
        }
    }

    /** A point drawn back to the photo's edge: a hand slips over it easily. */
    static PixelPoint within(PixelPoint p, PhotoFile photo) {
        double width = photo.width().orElse(Integer.MAX_VALUE);
        double height = photo.height().orElse(Integer.MAX_VALUE);
        return new PixelPoint(Math.max(0, Math.min(width, p.x())), Math.max(0, Math.min(height, p.y())));
    }

    private void mark(TraceDraft draft, PixelPoint p) {
        ScaleKind wish = model.state().wish();
        List<PixelPoint> marks = new ArrayList<>(draft.marks());
        boolean back = marks.size() >= wish.shape().marks() && Snap.distance(p, marks.get(0)) <= near.getAsDouble();
        if (back) {
            close();
            return;
        }
        marks.add(p);
        if (wish.isFull(marks.size())) {
            finishScale(draft, marks);
        } else {
            model.write(draft.with(draft.scale(), marks));
        }
    }

    private void finishScale(TraceDraft draft, List<PixelPoint> marks) {
        model.state().wish().at(marks).ifPresent(scale -> {
            model.write(draft.with(Optional.of(scale), List.of()));
            model.tool(draft.isClosed() ? RustTool.EDIT : RustTool.OUTLINE);
        });
    }

    /** Closes the ring being drawn, or ends the marks of a coin; false if there are too few points. */
    boolean close() {
        if (model.draft().isEmpty()) {
            return false;
        }
        TraceDraft draft = model.draft().get();
        if (model.state().tool() == RustTool.SCALE) {
            boolean enough =
                    draft.marks().size() >= model.state().wish().shape().marks();
            if (enough) {
                finishScale(draft, draft.marks());
            }
            return enough;
        }
        if (draft.open().size() < TraceDraft.MIN_POINTS) {
            return false;
        }
        model.write(draft.closed());
        model.tool(draft.scale().isPresent() ? RustTool.EDIT : RustTool.SCALE);
        return true;
    }

    /** Takes a ring drawn freehand. */
    void ring(List<PixelPoint> points) {
        model.draft().filter(draft -> points.size() >= TraceDraft.MIN_POINTS).ifPresent(draft -> {
            model.write(draft.drawn(draft.rings(), points).closed());
            model.tool(draft.scale().isPresent() ? RustTool.EDIT : RustTool.SCALE);
        });
    }

    /** Takes back the last point set; false if there is none. */
    boolean back() {
        Optional<TraceDraft> draft = model.draft();
        if (draft.isEmpty()) {
            return false;
        }
        TraceDraft old = draft.get();
        if (!old.marks().isEmpty()) {
            model.write(old.with(old.scale(), old.marks().subList(0, old.marks().size() - 1)));
            return true;
        }
        if (!old.open().isEmpty()) {
            model.write(old.with(Handle.OPEN, old.open().subList(0, old.open().size() - 1)));
            return true;
        }
        return false;
    }

    /** Leaves by one step: what is held, points not yet closed, the tool, and last the draft (undo brings that back). */
    void leave() {
        Optional<TraceDraft> draft = model.draft();
        if (model.state().held().isPresent()) {
            model.hold(Optional.empty());
        } else if (draft.isPresent()
                && !(draft.get().open().isEmpty() && draft.get().marks().isEmpty())) {
            model.write(draft.get()
                    .drawn(draft.get().rings(), List.of())
                    .with(draft.get().scale(), List.of()));
        } else if (draft.isPresent() && draft.get().isClosed() && model.state().tool() != RustTool.LOOK) {
            model.tool(RustTool.LOOK);
        } else {
            model.tool(RustTool.LOOK);
            model.drop();
        }
    }

    /** The point of the draft or its scale that is near. */
    Optional<Handle> handle(PixelPoint p) {
        if (model.draft().isEmpty()) {
            return Optional.empty();
        }
        TraceDraft draft = model.draft().get();
        Optional<Handle> best = Optional.empty();
        double least = near.getAsDouble();
        for (int ring = draft.scale().isPresent() ? Handle.SCALE : Handle.OPEN;
                ring < draft.rings().size();
                ring++) {
            List<PixelPoint> points = draft.points(ring);
            for (int i = 0; i < points.size(); i++) {
                double distance = Snap.distance(p, points.get(i));
                if (distance <= least) {
                    least = distance;
                    best = Optional.of(new Handle(ring, i));
                }
            }
        }
        return best;
    }

    /** Takes hold of the point that is near, or of a new one on the edge that is near; false if there is none. */
    boolean take(PixelPoint p) {
        if (model.draft().isEmpty()) {
            return false;
        }
        Optional<Handle> handle = handle(p);
        if (handle.isPresent()) {
            model.remember();
            model.hold(handle);
            return true;
        }
        return insert(p);
    }

    /** A new corner on the edge that is near. */
    boolean insert(PixelPoint p) {
        TraceDraft draft = model.draft().orElseThrow();
        for (int ring = 0; ring < draft.rings().size(); ring++) {
            List<PixelPoint> points = draft.points(ring);
            for (int i = 0; i < points.size(); i++) {
                PixelPoint foot = Snap.foot(p, points.get(i), points.get((i + 1) % points.size()));
                if (Snap.distance(p, foot) <= near.getAsDouble()) {
                    List<PixelPoint> more = new ArrayList<>(points);
                    more.add(i + 1, foot);
                    model.write(draft.with(ring, more));
                    model.hold(Optional.of(new Handle(ring, i + 1)));
                    return true;
                }
            }
        }
        return false;
    }

    /** Moves the point that is held. */
    void move(PixelPoint p, PhotoFile photo) {
        model.state().held().ifPresent(handle -> model.draft().ifPresent(draft -> {
            List<PixelPoint> points = new ArrayList<>(draft.points(handle.ring()));
            if (handle.at() < points.size()) {
                points.set(handle.at(), within(p, photo));
                model.replace(draft.with(handle.ring(), points));
            }
        }));
    }

    /** Removes the corner that is held or near; false if there is none. Marks of a scale are moved, not removed. */
    boolean remove(PixelPoint p) {
        Optional<Handle> handle = model.state().held().or(() -> handle(p)).filter(h -> h.ring() != Handle.SCALE);
        if (handle.isEmpty()) {
            return false;
        }
        TraceDraft draft = model.draft().orElseThrow();
        List<PixelPoint> points = new ArrayList<>(draft.points(handle.get().ring()));
        points.remove(handle.get().at());
        model.hold(Optional.empty());
        model.write(draft.with(handle.get().ring(), points));
        return true;
    }

    /** The corner after the one that is near, so that keys can go round; the first if none is near. */
    Optional<PixelPoint> next(Optional<PixelPoint> from, int by) {
        List<PixelPoint> all = new ArrayList<>();
        model.draft().ifPresent(draft -> {
            draft.rings().forEach(all::addAll);
            all.addAll(draft.open());
            draft.scale().ifPresent(scale -> all.addAll(scale.marks()));
        });
        if (all.isEmpty()) {
            return Optional.empty();
        }
        int at = from.map(p -> nearest(all, p)).orElse(-1);
        return Optional.of(all.get(at < 0 ? 0 : Math.floorMod(at + by, all.size())));
    }

    private int nearest(List<PixelPoint> all, PixelPoint p) {
        for (int i = 0; i < all.size(); i++) {
            if (Snap.distance(all.get(i), p) < 0.5) {
                return i;
            }
        }
        return -1;
    }
}
