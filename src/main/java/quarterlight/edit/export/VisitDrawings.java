package quarterlight.edit.export;

import java.util.ArrayList;
import java.util.List;
import quarterlight.table.RowKind;
import quarterlight.table.cell.RowContext;
import quarterlight.table.drawn.Drawings;
import quarterlight.table.drawn.DrawnRow;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.annotation.PhotoNote;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;

/** What was drawn on the photos of a visit, as its tables write it. */
final class VisitDrawings {
    private VisitDrawings() {}

    /** @param visit as far as it goes out */
    static Drawings of(VisitRecord visit, RowContext context) {
        List<DrawnRow> rows = new ArrayList<>();
        for (Recorded<Trace> trace : visit.traces()) {
            rows.add(row(RowKind.of(RecordKind.TRACES), trace, trace.value().photo(), context));
        }
        for (Recorded<PhotoNote> note : visit.photoNotes()) {
            rows.add(row(RowKind.of(RecordKind.PHOTO_NOTES), note, note.value().photo(), context));
        }
        List<Photo> photos = visit.photos().stream()
                .filter(photo -> rows.stream().anyMatch(row -> row.photo().equals(photo)))
                .toList();
        return new Drawings(visit.facts().car().name(), photos, rows);
    }

    private static <T> DrawnRow row(RowKind<T> kind, Recorded<T> row, PhotoId photo, RowContext context) {
        return new DrawnRow(kind.word(), row.id().value(), kind.cells(row.value(), context), context.photo(photo));
    }
}
