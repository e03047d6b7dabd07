package quarterlight.ui.rust.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.rust.plane.TraceCheck;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.annotation.TraceKind;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;

/**
 * An outline as far as it is drawn. Immutable.
 *
 * @param row the trace that is being changed; empty for a new one
 * @param rings closed rings, the outer one first
 * @param open points of the ring being drawn
 * @param marks of the scale being set
 */
public record TraceDraft(
        Optional<RecordId> row,
        PhotoId photo,
        TraceKind kind,
        Optional<ZoneId> zone,
        List<List<PixelPoint>> rings,
        List<PixelPoint> open,
        Optional<PhotoScale> scale,
        List<PixelPoint> marks,
        Optional<String> patch,
        Optional<String> note) {
    /** Fewer points make no ring. */
    public static final int MIN_POINTS = 3;

    private static final ZoneId ANY = new ZoneId("any");

    public TraceDraft {
        Objects.requireNonNull(photo, "photo");
        Objects.requireNonNull(kind, "kind");
        rings = rings.stream().map(List::copyOf).toList();
        open = List.copyOf(open);
        marks = List.copyOf(marks);
    }

    public static TraceDraft empty(PhotoId photo, TraceKind kind, Optional<ZoneId> zone, Optional<PhotoScale> scale) {
        return new TraceDraft(
                Optional.empty(),
                photo,
                kind,
                zone,
                List.of(),
                List.of(),
                scale,
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    public static TraceDraft of(Recorded<Trace> kept) {
        Trace trace = kept.value();
        List<List<PixelPoint>> rings = new ArrayList<>(List.of(trace.outline().shell()));
        rings.addAll(trace.outline().holes());
        return new TraceDraft(
                Optional.of(kept.id()),
                trace.photo(),
                trace.kind(),
                Optional.of(trace.zone()),
                rings,
                List.of(),
                Optional.of(trace.scale()),
                List.of(),
                trace.patch(),
                trace.note());
    }

    /** True if nothing was drawn. */
    public boolean isBlank() {
        return rings.isEmpty() && open.isEmpty() && marks.isEmpty();
    }

    public boolean isClosed() {
        return !rings.isEmpty();
    }

    /** The closed rings as an outline. */
    public Optional<Outline> outline() {
        return rings.isEmpty()
                ? Optional.empty()
                : Optional.of(new Outline(rings.get(0), rings.subList(1, rings.size())));
    }

    /** What would be kept; empty while outline, scale or zone is lacking. */
    public Optional<Trace> trace() {
        return zone.flatMap(this::traceOn);
    }

    /** The trace, on a zone that stands for none while its zone is not known: only for measuring. */
    public Optional<Trace> measurable() {
        return traceOn(zone.orElse(ANY));
    }

    /** The trace as if it lay on a zone. */
    private Optional<Trace> traceOn(ZoneId on) {
        return outline().flatMap(shape -> scale.map(known -> new Trace(photo, kind, shape, known, on, patch, note)));
    }

    /** Why the outline as drawn so far cannot be measured, if there is anything to say yet; its zone does not matter for that. */
    public Optional<String> problem(PhotoFile file) {
        return measurable().map(trace -> TraceCheck.problem(trace, file)).orElseGet(() -> outline()
                .flatMap(TraceCheck::ofOutline));
    }

    /** The points of a closed ring, of the ring being drawn, or of the scale. */
    public List<PixelPoint> points(int ring) {
        return switch (ring) {
            case Handle.OPEN -> open;
            case Handle.SCALE -> scale.map(PhotoScale::marks).orElse(marks);
            default -> rings.get(ring);
        };
    }

    /** With other points in a ring; a ring of too few points is taken away, with its inner rings if it is the outer one. */
    public TraceDraft with(int ring, List<PixelPoint> points) {
        if (ring == Handle.OPEN) {
            return drawn(rings, points);
        }
        if (ring == Handle.SCALE) {
            return scale.isPresent() ? with(Optional.of(scale.get().at(points)), List.of()) : with(scale, points);
        }
        List<List<PixelPoint>> changed = new ArrayList<>(rings);
        if (points.size() >= MIN_POINTS) {
            changed.set(ring, points);
        } else if (ring == 0) {
            changed.clear();
        } else {
            changed.remove(ring);
        }
        return drawn(changed, open);
    }

    /** With the ring being drawn closed; as it is if that has too few points. */
    public TraceDraft closed() {
        if (open.size() < MIN_POINTS) {
            return this;
        }
        List<List<PixelPoint>> more = new ArrayList<>(rings);
        more.add(open);
        return drawn(more, List.of());
    }

    public TraceDraft drawn(List<List<PixelPoint>> closedRings, List<PixelPoint> openRing) {
        return new TraceDraft(row, photo, kind, zone, closedRings, openRing, scale, marks, patch, note);
    }

    public TraceDraft with(Optional<PhotoScale> other, List<PixelPoint> setMarks) {
        return new TraceDraft(row, photo, kind, zone, rings, open, other, setMarks, patch, note);
    }

    public TraceDraft with(TraceKind other) {
        return new TraceDraft(row, photo, other, zone, rings, open, scale, marks, patch, note);
    }

    public TraceDraft on(Optional<ZoneId> other) {
        return new TraceDraft(row, photo, kind, other, rings, open, scale, marks, patch, note);
    }

    public TraceDraft said(Optional<String> samePatch, Optional<String> words) {
        return new TraceDraft(row, photo, kind, zone, rings, open, scale, marks, samePatch, words);
    }
}
