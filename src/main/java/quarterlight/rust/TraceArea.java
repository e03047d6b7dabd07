package quarterlight.rust;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.car.ZoneId;
import quarterlight.rust.plane.MarkedArea;
import quarterlight.units.Area;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.annotation.TraceKind;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;

/**
 * The area of one trace on its own.
 *
 * @param area empty if it cannot be measured; {@code remarks} then says why
 * @param sdMm2 standard deviation, from the marking and from a tilt that the scale cannot see, mm2
 * @param remarks what to beware of, in sentences
 */
public record TraceArea(
        RecordId id,
        PhotoId photo,
        TraceKind kind,
        ZoneId zone,
        Optional<Area> area,
        OptionalDouble sdMm2,
        List<String> remarks) {
    public TraceArea {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(photo, "photo");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(area, "area");
        Objects.requireNonNull(sdMm2, "sdMm2");
        remarks = List.copyOf(remarks);
    }

    /**
     * The area of one trace, kept or still being drawn, with marks off as usual.
     *
     * @param visit holds the trace's photo
     */
    public static TraceArea of(Recorded<Trace> trace, VisitRecord visit) {
        return TraceReading.of(trace, visit, MarkedArea.USUAL_MARK_PX).area();
    }
}
