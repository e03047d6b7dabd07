package quarterlight.rust.plane;

import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PhotoScale.Coin;
import quarterlight.visit.annotation.PhotoScale.KnownLength;
import quarterlight.visit.annotation.PhotoScale.KnownRectangle;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.PhotoFile;

/**
 * Says why a trace cannot be measured, in one sentence: what, where, what to do. An outline may run either way round, and
 * may pass the edge of the photo by up to one pixel (it is drawn back to the edge).
 */
public final class TraceCheck {
    /** How far a mark may lie outside the photo, pixels. */
    static final double EDGE_PX = 1;

    /** Less than this is no area and no distance, in pixels and square pixels. */
    static final double MIN_PX = 1;

    private TraceCheck() {}

    /** The reason why the trace cannot be taken in with this photo, or empty if it can. */
    public static Optional<String> problem(Trace trace, PhotoFile photo) {
        return ofOutline(trace.outline(), photo)
                .or(() -> ofScale(trace.scale(), photo))
                .or(() -> ofHorizon(trace));
    }

    /** The reason why the outline or its scale cannot be measured, whatever the photo. */
    public static Optional<String> problem(Trace trace) {
        return ofOutline(trace.outline()).or(() -> ofScale(trace.scale())).or(() -> ofHorizon(trace));
    }

    /** What is wrong with the outline on this photo. */
    public static Optional<String> ofOutline(Outline outline, PhotoFile photo) {
        if (photo.kind() == MediaKind.FILM) {
            return Optional.of(say("rust.mark.film", photo.name()));
        }
        return first(marks(outline), photo)
                .map(p -> say("rust.mark.outline-outside", at(p), edge(photo)))
                .or(() -> ofOutline(outline));
    }

    /** What is wrong with the scale on this photo. */
    public static Optional<String> ofScale(PhotoScale scale, PhotoFile photo) {
        return first(scale.marks().stream(), photo)
                .map(p -> say("rust.mark.scale-outside", at(p), edge(photo)))
                .or(() -> ofScale(scale));
    }

    /** What is wrong with the outline in the plane of a scale that is right by itself. */
    public static Optional<String> ofHorizon(Trace trace) {
        return ofHorizon(trace.outline(), trace.scale());
    }

    /** A remark that a rectangle cannot have the stated size, by the camera it would imply; empty if it can. */
    public static Optional<String> ofStatedSize(PhotoScale scale, Lens lens) {
        return scale instanceof KnownRectangle rectangle ? ImpliedCamera.problem(rectangle, lens) : Optional.empty();
    }

    /** What is wrong with the outline alone. */
    public static Optional<String> ofOutline(Outline outline) {
        Polygon shape = OutlineShape.of(outline);
        if (shape.convexHull().getArea() < MIN_PX) {
            return Optional.of(say("rust.mark.no-area"));
        }
        TopologyValidationError error = new IsValidOp(shape).getValidationError();
        if (error != null) {
            return Optional.of(sentence(error));
        }
        if (shape.getArea() < MIN_PX) {
            return Optional.of(say("rust.mark.small-area"));
        }
        return Optional.empty();
    }

    /** What is wrong with the scale alone. */
    public static Optional<String> ofScale(PhotoScale scale) {
        if (scale instanceof KnownLength length) {
            double px = distance(length.from(), length.to());
            return px < MIN_PX ? Optional.of(say("rust.mark.ends-together", at(length.from()))) : Optional.empty();
        }
        if (scale instanceof Coin coin) {
            return ofRim(coin);
        }
        return ofCorners(((KnownRectangle) scale).corners());
    }

    private static Optional<String> ofRim(Coin coin) {
        Optional<CoinScale> ellipse = CoinScale.ofRim(coin.rim(), coin.diameterMm());
        if (ellipse.isEmpty()
                || ellipse.get().minorPx() < MIN_PX
                || !ellipse.get().fits(coin.rim())) {
            return Optional.of(say("rust.mark.no-ellipse", at(coin.rim().get(0))));
        }
        return Optional.empty();
    }

    private static Optional<String> ofCorners(List<PixelPoint> corners) {
        int turns = 0;
        for (int i = 0; i < 4; i++) {
            PixelPoint before = corners.get(i);
            PixelPoint corner = corners.get((i + 1) % 4);
            PixelPoint after = corners.get((i + 2) % 4);
            if (height(before, corner, after) < MIN_PX) {
                return Optional.of(say("rust.mark.corners-on-line", at(corner)));
            }
            turns += Orientation.index(coordinate(before), coordinate(corner), coordinate(after));
        }
        return Math.abs(turns) == 4 ? Optional.empty() : Optional.of(say("rust.mark.corners-order"));
    }

    private static Optional<String> ofHorizon(Outline outline, PhotoScale scale) {
        Optional<PhotoPlane> plane = PhotoPlane.of(scale);
        if (plane.isEmpty()) {
            return Optional.of(say("rust.mark.scale-on-line"));
        }
        return plane.get().sees(outline) ? Optional.empty() : Optional.of(say("rust.mark.outline-horizon"));
    }

    static String edge(PhotoFile photo) {
        return say("rust.mark.edge", photo.width().orElseThrow(), photo.height().orElseThrow());
    }

    static Optional<PixelPoint> first(Stream<PixelPoint> marks, PhotoFile photo) {
        if (photo.width().isEmpty() || photo.height().isEmpty()) {
            return Optional.empty();
        }
        int width = photo.width().getAsInt();
        int height = photo.height().getAsInt();
        return marks.filter(p ->
                        p.x() < -EDGE_PX || p.y() < -EDGE_PX || p.x() > width + EDGE_PX || p.y() > height + EDGE_PX)
                .findFirst();
    }

    static Stream<PixelPoint> marks(Outline outline) {
        return Stream.concat(outline.shell().stream(), outline.holes().stream().flatMap(List::stream));
    }

    private static String sentence(TopologyValidationError error) {
        Coordinate where = error.getCoordinate();
        String at = where == null ? "" : " " + say("rust.ring.at", at(new PixelPoint(where.x, where.y)));
        return switch (error.getErrorType()) {
            case TopologyValidationError.HOLE_OUTSIDE_SHELL -> say("rust.ring.outside", at);
            case TopologyValidationError.NESTED_HOLES, TopologyValidationError.DUPLICATE_RINGS ->
                say("rust.ring.twice", at);
            case TopologyValidationError.DISCONNECTED_INTERIOR -> say("rust.ring.apart", at);
            case TopologyValidationError.TOO_FEW_POINTS -> say("rust.ring.few-points", at);
            default -> say("rust.ring.crosses", at);
        };
    }

    static String at(PixelPoint p) {
        return String.format(Locale.ROOT, "(%.0f, %.0f)", p.x(), p.y());
    }

    private static double distance(PixelPoint a, PixelPoint b) {
        return Math.hypot(a.x() - b.x(), a.y() - b.y());
    }

    /** The least height of a triangle, pixels: below a pixel its corners lie on one line as far as marks can tell. */
    private static double height(PixelPoint a, PixelPoint b, PixelPoint c) {
        double longest = Math.max(distance(a, b), Math.max(distance(b, c), distance(a, c)));
        return longest == 0 ? 0 : 2 * Shoelace.area(List.of(a, b, c)) / longest;
    }

    private static Coordinate coordinate(PixelPoint p) {
        return new Coordinate(p.x(), p.y());
    }
}
