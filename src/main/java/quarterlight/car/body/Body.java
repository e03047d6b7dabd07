package quarterlight.car.body;

import java.util.Objects;

/** What decides which zones a car has: style, construction and engine place. */
public record Body(BodyStyle style, Construction construction, EnginePlace engine) {
    public Body {
        Objects.requireNonNull(style, "style");
        Objects.requireNonNull(construction, "construction");
        Objects.requireNonNull(engine, "engine");
    }

    /** A body of the style as it usually is: engine in front, usual construction. */
    public static Body usual(BodyStyle style) {
        return new Body(style, Construction.usualFor(style), EnginePlace.FRONT);
    }
}
