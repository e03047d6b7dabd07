package quarterlight.visit.photo;

import java.util.Optional;

/** Checks moments of films. */
public final class Moments {
    private Moments() {}

    public static void require(Optional<Double> seconds) {
        seconds.filter(at -> !(at >= 0 && Double.isFinite(at))).ifPresent(at -> {
            throw new IllegalArgumentException("a moment of a film is 0 s or later, not " + at);
        });
    }
}
