package quarterlight.finish.model;

import java.lang.ref.SoftReference;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import quarterlight.car.FinishProfile;

/**
 * The cars that were worked out last by the usual draws, as long as memory has room for them: an edit of something else, and a comparison of the same
 * car, ask for the same again. For any thread.
 */
final class KnownCars {
    private static final int MAX = 6;

    private final Map<Key, SoftReference<CarPosterior>> last = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, SoftReference<CarPosterior>> eldest) {
            return size() > MAX;
        }
    };

    /** What a car is worked out from. */
    private record Key(List<Panel> panels, FinishProfile profile) {}

    /** The car, worked out now unless it is known. */
    CarPosterior of(List<Panel> panels, FinishProfile profile) {
        Key key = new Key(List.copyOf(panels), profile);
        CarPosterior known = known(key);
        if (known != null) {
            return known;
        }
        CarPosterior made = CarPosterior.worked(key.panels(), profile, Draws.USUAL);
        synchronized (last) {
            last.put(key, new SoftReference<>(made));
        }
        return made;
    }

    private CarPosterior known(Key key) {
        synchronized (last) {
            SoftReference<CarPosterior> kept = last.get(key);
            return kept == null ? null : kept.get();
        }
    }
}
