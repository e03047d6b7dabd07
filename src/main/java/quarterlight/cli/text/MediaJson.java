package quarterlight.cli.text;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import quarterlight.table.json.JsonObject;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.WithheldFiles;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.photo.SidecarWords;

/** What only some media have, as keys of a photo: pages, what it lies beside, what a sidecar says, and whether it goes to the buyer. */
public final class MediaJson {
    private MediaJson() {}

    public static JsonObject put(JsonObject json, Photo photo, VisitRecord visit) {
        MediaFacts more = photo.file().more();
        Optional<SidecarWords> said = more.said();
        Optional<Boolean> released = photo.file().kind().isHeldBack()
                ? Optional.of(!WithheldFiles.of(visit).holds(photo.id()))
                : Optional.empty();
        return json.put("pages", more.pages())
                .put("beside", beside(photo, visit).map(PhotoId::value))
                .put("caption", said.flatMap(SidecarWords::caption))
                .put("keywords", said.map(SidecarWords::keywords).orElse(List.of()))
                .put("rating", said.map(SidecarWords::rating).orElse(OptionalInt.empty()))
                .put("focal_35_mm", more.focal35Mm())
                .put("turned", said.map(SidecarWords::orientation).orElse(OptionalInt.empty()))
                .put("released", released);
    }

    /** What a file lies beside, if that is in the visit. */
    public static Optional<PhotoId> beside(Photo photo, VisitRecord visit) {
        return photo.file().more().beside().flatMap(sha256 -> visit.photos().stream()
                .filter(other -> other.file().sha256().equals(sha256))
                .map(Photo::id)
                .findFirst());
    }
}
