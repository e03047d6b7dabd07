package quarterlight.store.rows;

import java.sql.SQLException;
import quarterlight.visit.Pin;
import quarterlight.visit.Trace;
import quarterlight.visit.TraceKind;

/** What is tied to a photo: pins and traces. */
public final class PhotoRows {
    public static final TableShape<Pin> PINS = TableShape.of(
            "pin", "photo_id, zone, at_s, view, x, y, shows, caption, mark", PhotoRows::write, PhotoRows::pin);

    public static final TableShape<Trace> TRACES = TableShape.of(
            "trace", "photo_id, kind, outline_px, scale_px_mm, zone, patch, note", PhotoRows::write, PhotoRows::trace);

    private PhotoRows() {}

    private static Cells write(Pin pin) {
        return new Cells()
                .integer(pin.photo().value())
                .zone(pin.zone())
                .real(pin.at())
                .point(pin.point())
                .textOf(pin.shows())
                .textOf(pin.caption())
                .textOf(pin.mark());
    }

    private static Pin pin(Row row) throws SQLException {
        return new Pin(
                row.photo("photo_id"),
                row.zone("zone"),
                row.someReal("at_s"),
                row.point(),
                row.someText("shows"),
                row.someText("caption"),
                row.someText("mark"));
    }

    private static Cells write(Trace trace) {
        return new Cells()
                .integer(trace.photo().value())
                .word(trace.kind())
                .text(TraceText.of(trace.outline()))
                .text(TraceText.of(trace.scale()))
                .zone(trace.zone())
                .textOf(trace.patch())
                .textOf(trace.note());
    }

    private static Trace trace(Row row) throws SQLException {
        return new Trace(
                row.photo("photo_id"),
                row.word(TraceKind.class, "kind"),
                TraceText.outline(row.text("outline_px")),
                TraceText.scale(row.text("scale_px_mm")),
                row.zone("zone"),
                row.someText("patch"),
                row.someText("note"));
    }
}
