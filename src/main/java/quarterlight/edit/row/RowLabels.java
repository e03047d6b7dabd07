package quarterlight.edit.row;

import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.row.RecordKind;

/** The labels of edits of one row: {@code add pin DSC_0231 to left front door}, {@code remove arrow on DSC_0231}. */
final class RowLabels {
    private final VisitRecord visit;

    RowLabels(VisitRecord visit) {
        this.visit = visit;
    }

    <T> String added(RecordKind<T> kind, T value) {
        return kind.names().ofAdding(value, this::photo);
    }

    <T> String changed(RecordKind<T> kind, T value) {
        return kind.names().ofChanging(value, this::photo);
    }

    <T> String removed(RecordKind<T> kind, T value) {
        return kind.names().ofRemoving(value, this::photo);
    }

    /** The file name of a photo. */
    String photo(PhotoId id) {
        return visit.photo(id).map(Photo::file).map(file -> file.name()).orElse("photo " + id);
    }
}
