package quarterlight.ui.photos.list;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.capture.Exposure;
import quarterlight.capture.NearDuplicates;
import quarterlight.capture.SharpnessRange;
import quarterlight.visit.PhotoId;

/**
 * What may be worth weeding out, with the numbers behind it. Hints only; the inspector decides.
 *
 * @param sharpness the visit's range, and which photos fall below it
 * @param measured of photos whose pictures were looked at so far
 */
public record PhotoHints(SharpnessRange sharpness, NearDuplicates duplicates, Map<PhotoId, Exposure> measured) {
    /** Before anything was looked at. */
    public static final PhotoHints NONE = new PhotoHints(SharpnessRange.NONE, NearDuplicates.of(Map.of()), Map.of());

    public PhotoHints {
        Objects.requireNonNull(sharpness, "sharpness");
        Objects.requireNonNull(duplicates, "duplicates");
        measured = Map.copyOf(measured);
    }

    public boolean isSoft(PhotoId photo) {
        return sharpness.soft().contains(photo);
    }

    /** The photo most like it and the distance, if one is near. */
    public Optional<NearDuplicates.Match> alike(PhotoId photo) {
        return Optional.ofNullable(duplicates.nearest().get(photo));
    }

    public boolean isDark(PhotoId photo) {
        return is(photo, Exposure.Hint.DARK);
    }

    public boolean isBright(PhotoId photo) {
        return is(photo, Exposure.Hint.BRIGHT);
    }

    private boolean is(PhotoId photo, Exposure.Hint hint) {
        return Optional.ofNullable(measured.get(photo))
                .map(e -> e.hint() == hint)
                .orElse(false);
    }

    /** Mean grey level 0 to 255 of a photo that was looked at. */
    public OptionalDouble mean(PhotoId photo) {
        Exposure exposure = measured.get(photo);
        return exposure == null ? OptionalDouble.empty() : OptionalDouble.of(exposure.mean());
    }
}
