package quarterlight.store.library;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.MediaHeader;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.Sha256;

/**
 * What shows a visit or one of its rows, as the index keeps it: enough to find and decode it.
 *
 * @param stored path within the visit
 * @param type format by content
 * @param orientation by Exif, 1 to 8
 * @param at seconds into a film, or the page of a paper
 */
public record LibraryPicture(
        String stored, Sha256 sha256, MediaKind kind, String type, int orientation, OptionalDouble at) {
    public LibraryPicture {
        Objects.requireNonNull(stored, "stored");
        Objects.requireNonNull(sha256, "sha256");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(type, "type");
        Objects.requireNonNull(at, "at");
    }

    public static LibraryPicture of(PhotoFile photo, OptionalDouble at) {
        return new LibraryPicture(photo.stored(), photo.sha256(), photo.kind(), photo.type(), photo.orientation(), at);
    }

    /** The file with what is known of it here; for who decodes it. */
    public PhotoFile file() {
        return new PhotoFile(
                stored.substring(stored.lastIndexOf('/') + 1),
                stored,
                sha256,
                0,
                kind,
                type,
                MediaHeader.NONE.withSize(OptionalInt.empty(), OptionalInt.empty(), orientation),
                OptionalDouble.empty(),
                List.of(),
                MediaFacts.NONE);
    }
}
