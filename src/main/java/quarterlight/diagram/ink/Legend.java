package quarterlight.diagram.ink;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.finish.scale.ThicknessSteps;

/**
 * The key to a diagram: the steps of its tint with their limits, and in words whatever else is drawn on it and nothing else.
 *
 * @param steps empty if no zone has a value
 */
public record Legend(Optional<Steps> steps, List<Key> keys) {
    public Legend {
        Objects.requireNonNull(steps, "steps");
        keys = List.copyOf(keys);
    }

    /**
     * The steps of the tint.
     *
     * @param title what is shown
     * @param unit of the numbers in the zones
     * @param limits between the steps as shown, from the lowest; they stand for the ranges where these find no room
     * @param ranges of each step as shown, from the lowest
     */
    public record Steps(String title, String unit, List<String> limits, List<String> ranges) {
        public Steps {
            Objects.requireNonNull(title, "title");
            Objects.requireNonNull(unit, "unit");
            limits = List.copyOf(limits);
            ranges = List.copyOf(ranges);
            if (ranges.size() != ThicknessSteps.HIGHEST - ThicknessSteps.LOWEST + 1) {
                throw new IllegalArgumentException("every step says its range: " + ranges);
            }
            if (limits.size() != ranges.size() - 1) {
                throw new IllegalArgumentException("limits stand between steps: " + limits);
            }
        }
    }

    /** Swatches of one kind under a title. */
    public record Key(String title, List<Swatch> swatches) {
        public Key {
            Objects.requireNonNull(title, "title");
            swatches = List.copyOf(swatches);
        }
    }

    /**
     * One sample with what it means.
     *
     * @param density of a hatching or stipple; 0 for others
     */
    public record Swatch(Sample sample, int density, String words) {
        public Swatch {
            Objects.requireNonNull(sample, "sample");
            Objects.requireNonNull(words, "words");
        }

        public static Swatch of(Sample sample, String words) {
            return new Swatch(sample, 0, words);
        }
    }

    /** What a swatch shows. */
    public enum Sample {
        HATCH,
        STIPPLE,
        THROUGH,
        COMPLETE,
        PARTIAL,
        MISSING,
        PHOTO,
        MATTER,
        GRAVE_MATTER
    }
}
