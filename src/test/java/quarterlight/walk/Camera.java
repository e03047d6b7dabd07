package quarterlight.walk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import quarterlight.car.ZoneId;

/** The photos of one simulated visit as they come; with a second camera whose clock stays off, if there is one. */
final class Camera {
    private final List<Snap> snaps = new ArrayList<>();
    private final Random random;
    private final boolean second;
    private final double errorSeconds;
    private Pace pace;
    private double seconds;

    /** @param mostErrorSeconds how far the second camera's clock stays off at most; no second camera if 0 */
    Camera(Pace pace, double mostErrorSeconds, Random random) {
        this.pace = pace;
        this.random = random;
        second = mostErrorSeconds > 0;
        errorSeconds = second ? mostErrorSeconds * (2 * random.nextDouble() - 1) : 0;
    }

    void pace(Pace changed) {
        pace = changed;
    }

    /** Photographs one zone; the later half of the photos by the second camera. */
    void stop(ZoneId zone) {
        int here = pace.photos(random);
        for (int i = 0; i < here; i++) {
            double off = second && i >= (here + 1) / 2 ? errorSeconds : 0;
            snaps.add(new Snap(seconds + off, zone));
            seconds += i + 1 < here ? pace.within(random) : pace.between(random);
        }
    }

    int count() {
        return snaps.size();
    }

    /** In the order of the recorded times. */
    List<Snap> snaps() {
        snaps.sort(Comparator.comparingDouble(Snap::seconds));
        return snaps;
    }
}
