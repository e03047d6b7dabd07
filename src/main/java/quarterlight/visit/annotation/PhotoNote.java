package quarterlight.visit.annotation;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.visit.photo.Moments;
import quarterlight.visit.photo.PhotoId;

/**
 * A note drawn on an upright photo or on a moment of a film; the file itself stays as it is.
 *
 * @param atSeconds the moment of a film that it is drawn on
 * @param points as many as the shape has, pixels; of an arrow the tail first
 * @param text what stands beside it; always present for a text
 * @param scale what the length of a measuring line is taken from; present for a measuring line and for no other shape
 */
public record PhotoNote(
        PhotoId photo,
        Optional<Double> atSeconds,
        NoteShape shape,
        List<PixelPoint> points,
        Optional<String> text,
        Optional<PhotoScale> scale) {
    public PhotoNote {
        Objects.requireNonNull(photo, "photo");
        Objects.requireNonNull(shape, "shape");
        Moments.require(atSeconds);
        points = List.copyOf(points);
        if (points.size() != shape.points()) {
            throw new IllegalArgumentException(
                    "a note of the shape " + shape.word() + " has " + shape.points() + " points, not " + points.size());
        }
        if (shape == NoteShape.TEXT && text.isEmpty()) {
            throw new IllegalArgumentException("a note of the shape text has a text");
        }
        if ((shape == NoteShape.MEASURE) != scale.isPresent()) {
            throw new IllegalArgumentException("a measuring line has a scale, and no other note has one");
        }
    }
}
