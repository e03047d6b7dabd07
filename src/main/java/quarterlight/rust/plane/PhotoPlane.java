package quarterlight.rust.plane;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PhotoScale.Coin;
import quarterlight.visit.annotation.PhotoScale.KnownLength;
import quarterlight.visit.annotation.PhotoScale.KnownRectangle;
import quarterlight.visit.annotation.PixelPoint;

/**
 * The plane of the panel as something of known size shows it: takes pixels of the upright photo to mm on the panel.
 * Immutable.
 * <p>A known length gives one figure for the whole photo and takes the camera to look square on. A known rectangle gives
 * the homography and so corrects the perspective of the plane it lies in. A coin gives the tilt beside itself as a parallel
 * projection ({@link CoinScale}). None corrects the bend of the lens or of the panel.
 */
public final class PhotoPlane {
    /** Nearer to the horizon than this share of the scale's own depth, a mark says nothing of the plane any more. */
    private static final double MIN_DEPTH = 0.05;

    private final ToDoubleFunction<PixelPoint> depth;
    private final Mapping mapping;

    private interface Mapping {
        PixelPoint map(PixelPoint p);
    }

    private PhotoPlane(Mapping mapping, ToDoubleFunction<PixelPoint> depth) {
        this.mapping = mapping;
        this.depth = depth;
    }

    /** The plane of a scale; empty if its marks fall together, lie on one line, or no ellipse goes through a coin's rim. */
    public static Optional<PhotoPlane> of(PhotoScale scale) {
        if (scale instanceof KnownLength length) {
            return ofLength(length);
        }
        if (scale instanceof Coin coin) {
            return CoinScale.ofRim(coin.rim(), coin.diameterMm()).map(ellipse -> new PhotoPlane(ellipse::toMm, p -> 1));
        }
        return ofRectangle((KnownRectangle) scale);
    }

    private static Optional<PhotoPlane> ofLength(KnownLength length) {
        double px = Math.hypot(
                length.to().x() - length.from().x(),
                length.to().y() - length.from().y());
        if (px == 0) {
            return Optional.empty();
        }
        double mmPerPx = length.mm() / px;
        return Optional.of(new PhotoPlane(p -> new PixelPoint(p.x() * mmPerPx, p.y() * mmPerPx), p -> 1));
    }

    private static Optional<PhotoPlane> ofRectangle(KnownRectangle rectangle) {
        double w = rectangle.widthMm();
        double h = rectangle.heightMm();
        List<PixelPoint> mm =
                List.of(new PixelPoint(0, 0), new PixelPoint(w, 0), new PixelPoint(w, h), new PixelPoint(0, h));
        return Homography.ofFourPoints(rectangle.corners(), mm).map(map -> {
            double own = rectangle.corners().stream()
                    .mapToDouble(map::depth)
                    .average()
                    .orElse(1);
            return new PhotoPlane(map::map, p -> map.depth(p) / own);
        });
    }

    /** True if the point lies well on the near side of the plane's horizon. */
    public boolean sees(PixelPoint p) {
        return depth.applyAsDouble(p) > MIN_DEPTH;
    }

    /** True if every mark of the outline lies on the near side of the horizon. */
    public boolean sees(Outline outline) {
        return outline.shell().stream().allMatch(this::sees)
                && outline.holes().stream().flatMap(List::stream).allMatch(this::sees);
    }

    /**
     * A pixel in mm on the panel.
     *
     * @throws IllegalArgumentException if the point lies on the horizon
     */
    public PixelPoint toMm(PixelPoint p) {
        return mapping.map(p);
    }

    /** Area of an outline in mm2: its outer ring less its inner rings. The outline must be one the plane {@link #sees}. */
    public double areaMm2(Outline outline) {
        double area = ringMm2(outline.shell());
        for (List<PixelPoint> hole : outline.holes()) {
            area -= ringMm2(hole);
        }
        return Math.max(0, area);
    }

    private double ringMm2(List<PixelPoint> ring) {
        return Shoelace.area(ring.stream().map(this::toMm).toList());
    }
}
