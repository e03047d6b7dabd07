package quarterlight.car.body;

import java.util.OptionalInt;

/** The car's own main dimensions in mm where the inspector gave them; an absent one is the style's default. */
public record Dimensions(OptionalInt wheelbaseMm, OptionalInt lengthMm, OptionalInt widthMm, OptionalInt heightMm) {
    public static final Dimensions NOT_GIVEN =
            new Dimensions(OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty());
}
