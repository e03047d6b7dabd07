package quarterlight.edit;

import quarterlight.store.RecordKind;
import quarterlight.visit.CoverageWish;
import quarterlight.visit.HiddenRegion;
import quarterlight.visit.LeftOut;
import quarterlight.visit.Photo;
import quarterlight.visit.PhotoId;
import quarterlight.visit.PhotoNote;
import quarterlight.visit.Pin;
import quarterlight.visit.Trace;
import quarterlight.visit.VisitRecord;

/** The labels of edits of one row: {@code add pin DSC_0231 to left front door}, {@code remove arrow on DSC_0231}. */
final class RowLabels {
    private final VisitRecord visit;

    RowLabels(VisitRecord visit) {
        this.visit = visit;
    }

    <T> String added(RecordKind<T> kind, T value) {
        return value instanceof LeftOut leftOut ? "leave out " + named(leftOut) : "add " + named(kind, value);
    }

    <T> String changed(RecordKind<T> kind, T value) {
        return value instanceof LeftOut leftOut ? "leave out " + named(leftOut) : "change " + named(kind, value);
    }

    <T> String removed(RecordKind<T> kind, T value) {
        return value instanceof LeftOut leftOut
                ? "take " + named(leftOut) + " back into the report"
                : "remove " + named(kind, value);
    }

    private String named(LeftOut leftOut) {
        return leftOut.photo()
                .map(this::photo)
                .orElseGet(() -> leftOut.zone().orElseThrow().value());
    }

    private <T> String named(RecordKind<T> kind, T value) {
        if (value instanceof Pin pin) {
            return "pin " + photo(pin.photo()) + " to " + pin.zone();
        }
        if (value instanceof Trace trace) {
            return "trace of " + trace.kind().word() + " on " + photo(trace.photo());
        }
        if (value instanceof PhotoNote note) {
            return note.shape().word() + " on " + photo(note.photo());
        }
        if (value instanceof HiddenRegion region) {
            return "hidden region on " + photo(region.photo());
        }
        if (value instanceof CoverageWish wish) {
            return "wish for " + wish.want() + " " + wish.evidence()
                    + wish.zone().map(zone -> " on " + zone).orElse("");
        }
        return kind.count(1);
    }

    /** The file name of a photo. */
    String photo(PhotoId id) {
        return visit.photo(id).map(Photo::file).map(file -> file.name()).orElse("photo " + id);
    }
}
