package quarterlight.store.rows;

import java.sql.SQLException;
import quarterlight.visit.HiddenRegion;
import quarterlight.visit.NoteShape;
import quarterlight.visit.PhotoNote;

/** What is drawn on photos for the pages: notes, and regions that the pages must not show. */
public final class NoteRows {
    public static final TableShape<PhotoNote> NOTES = TableShape.of(
            "photo_note", "photo_id, at_s, shape, points_px, text, scale_px_mm", NoteRows::write, NoteRows::note);

    public static final TableShape<HiddenRegion> HIDDEN =
            TableShape.of("hidden_region", "photo_id, outline_px, why", NoteRows::write, NoteRows::hidden);

    private NoteRows() {}

    private static Cells write(PhotoNote note) {
        return new Cells()
                .integer(note.photo().value())
                .real(note.atSeconds())
                .word(note.shape())
                .text(TraceText.of(note.points()))
                .textOf(note.text())
                .textOf(note.scale().map(TraceText::of));
    }

    private static PhotoNote note(Row row) throws SQLException {
        return new PhotoNote(
                row.photo("photo_id"),
                row.someRealValue("at_s"),
                row.word(NoteShape.class, "shape"),
                TraceText.pointList(row.text("points_px")),
                row.someText("text"),
                row.someText("scale_px_mm").map(TraceText::scale));
    }

    private static Cells write(HiddenRegion region) {
        return new Cells()
                .integer(region.photo().value())
                .text(TraceText.of(region.outline()))
                .textOf(region.why());
    }

    private static HiddenRegion hidden(Row row) throws SQLException {
        return new HiddenRegion(row.photo("photo_id"), TraceText.outline(row.text("outline_px")), row.someText("why"));
    }
}
