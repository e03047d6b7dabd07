package quarterlight.rust.plane;

import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.Optional;
import quarterlight.visit.annotation.HiddenRegion;
import quarterlight.visit.annotation.NoteShape;
import quarterlight.visit.annotation.PhotoNote;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.photo.PhotoFile;

/** Says why a note or a hidden region cannot be drawn on its photo, in one sentence: what, where, what to do. */
public final class NoteCheck {
    private NoteCheck() {}

    /** What is wrong with the points of the note on this photo, or empty. */
    public static Optional<String> ofPoints(PhotoNote note, PhotoFile photo) {
        Optional<String> outside = TraceCheck.first(note.points().stream(), photo)
                .map(p -> say("rust.mark.note-outside", TraceCheck.at(p), TraceCheck.edge(photo)));
        return outside.or(() -> ofShape(note));
    }

    /** What is wrong with the scale of the note on this photo, or empty. */
    public static Optional<String> ofScale(PhotoNote note, PhotoFile photo) {
        return note.scale().flatMap(scale -> ofScale(scale, note.points(), photo));
    }

    private static Optional<String> ofShape(PhotoNote note) {
        if (note.shape() == NoteShape.TEXT) {
            return Optional.empty();
        }
        PixelPoint a = note.points().get(0);
        PixelPoint b = note.points().get(1);
        double width = Math.abs(a.x() - b.x());
        double height = Math.abs(a.y() - b.y());
        double size = note.shape() == NoteShape.BOX ? Math.min(width, height) : Math.hypot(width, height);
        return size < TraceCheck.MIN_PX ? Optional.of(say("rust.mark.note-small", TraceCheck.at(a))) : Optional.empty();
    }

    private static Optional<String> ofScale(PhotoScale scale, List<PixelPoint> points, PhotoFile photo) {
        Optional<String> outside = TraceCheck.first(scale.marks().stream(), photo)
                .map(p -> say("rust.mark.scale-outside", TraceCheck.at(p), TraceCheck.edge(photo)));
        return outside.or(() -> TraceCheck.ofScale(scale))
                .or(() -> PhotoPlane.of(scale)
                                .filter(plane -> points.stream().allMatch(plane::sees))
                                .isPresent()
                        ? Optional.empty()
                        : Optional.of(say("rust.mark.line-horizon")));
    }

    /** What is wrong with the outline of the region on this photo or film, or empty. */
    public static Optional<String> ofOutline(HiddenRegion region, PhotoFile photo) {
        return TraceCheck.first(TraceCheck.marks(region.outline()), photo)
                .map(p -> say("rust.mark.outline-outside", TraceCheck.at(p), TraceCheck.edge(photo)))
                .or(() -> TraceCheck.ofOutline(region.outline()));
    }
}
