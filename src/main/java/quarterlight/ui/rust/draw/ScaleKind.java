package quarterlight.ui.rust.draw;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.rust.plane.KnownThing;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PhotoScale.Coin;
import quarterlight.visit.annotation.PhotoScale.KnownLength;
import quarterlight.visit.annotation.PhotoScale.KnownRectangle;
import quarterlight.visit.annotation.PixelPoint;

/**
 * The thing of known size that is to be marked.
 *
 * @param widthMm length, first side or diameter
 * @param heightMm second side of a rectangle; else the same again
 */
public record ScaleKind(Shape shape, double widthMm, double heightMm) {
    /** How a thing is marked. */
    public enum Shape {
        LENGTH(2),
        RECTANGLE(4),
        COIN(Coin.MIN_POINTS);

        private final int marks;

        Shape(int marks) {
            this.marks = marks;
        }

        /** Marks needed at least; of length and rectangle exactly. */
        int marks() {
            return marks;
        }
    }

    /** A card, by its edges: what most people have at hand. */
    public static final ScaleKind USUAL = of(KnownThing.all().get(0));

    public ScaleKind {
        Objects.requireNonNull(shape, "shape");
        if (!(widthMm > 0 && heightMm > 0 && Double.isFinite(widthMm) && Double.isFinite(heightMm))) {
            throw new IllegalArgumentException("a known size is above 0 mm");
        }
    }

    public static ScaleKind of(KnownThing thing) {
        return new ScaleKind(thing.round() ? Shape.COIN : Shape.RECTANGLE, thing.widthMm(), thing.heightMm());
    }

    /** The wish that a scale fulfils. */
    public static ScaleKind of(PhotoScale scale) {
        if (scale instanceof KnownLength length) {
            return new ScaleKind(Shape.LENGTH, length.mm(), length.mm());
        }
        if (scale instanceof Coin coin) {
            return new ScaleKind(Shape.COIN, coin.diameterMm(), coin.diameterMm());
        }
        KnownRectangle rectangle = (KnownRectangle) scale;
        return new ScaleKind(Shape.RECTANGLE, rectangle.widthMm(), rectangle.heightMm());
    }

    /** True if so many marks are all that can be set. */
    public boolean isFull(int marks) {
        return shape != Shape.COIN && marks >= shape.marks();
    }

    /** The scale by these marks; empty while there are too few. */
    public Optional<PhotoScale> at(List<PixelPoint> marks) {
        if (marks.size() < shape.marks()) {
            return Optional.empty();
        }
        return Optional.of(
                switch (shape) {
                    case LENGTH -> new KnownLength(marks.get(0), marks.get(1), widthMm);
                    case RECTANGLE -> new KnownRectangle(marks.subList(0, shape.marks()), widthMm, heightMm);
                    case COIN -> new Coin(marks, widthMm);
                });
    }
}
