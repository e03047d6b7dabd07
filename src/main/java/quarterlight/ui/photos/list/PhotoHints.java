package quarterlight.ui.photos.list;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import quarterlight.capture.Exposure;
import quarterlight.capture.NearDuplicates;
import quarterlight.capture.SharpnessRange;
import quarterlight.visit.photo.PhotoId;

/**
 * What may be worth weeding out, with the numbers behind it. Hints only; the inspector decides.
 *
 * @param sharpness the visit's range, and which photos fall below it
 * @param measured of photos whose pictures were looked at so far
 * @param dark of these the underexposed
 * @param bright of these the overexposed
 */
public record PhotoHints(
        SharpnessRange sharpness,
        NearDuplicates duplicates,
        Map<PhotoId, Exposure> measured,
        Set<PhotoId> dark,
        Set<PhotoId> bright) {
    /** Before anything was looked at. */
    public static final PhotoHints NONE = of(SharpnessRange.NONE, NearDuplicates.NONE, Map.of());

    public PhotoHints {
        Objects.requireNonNull(sharpness, "sharpness");
        Objects.requireNonNull(duplicates, "duplicates");
        measured = Map.copyOf(measured);
        dark = Set.copyOf(dark);
        bright = Set.copyOf(bright);
    }

    public static PhotoHints of(SharpnessRange sharpness, NearDuplicates duplicates, Map<PhotoId, Exposure> measured) {
        return new PhotoHints(
                sharpness,
                duplicates,
                measured,
                with(measured, Exposure.Hint.DARK),
                with(measured, Exposure.Hint.BRIGHT));
    }

    /** The same hints, where only some photos count as what another is like. */
    @SuppressWarnings("ReferenceEquality") // the same duplicates leave the hints as they are, so that NONE stays NONE
    PhotoHints among(Predicate<PhotoId> counts) {
        NearDuplicates left = duplicates.among(counts);
        return left == duplicates ? this : new PhotoHints(sharpness, left, measured, dark, bright);
    }

    private static Set<PhotoId> with(Map<PhotoId, Exposure> measured, Exposure.Hint hint) {
        return measured.entrySet().stream()
                .filter(entry -> entry.getValue().hint() == hint)
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
    }

    /** True unless a choice rests on pictures that nobody has looked at yet. */
    @SuppressWarnings(
            "ReferenceEquality") // NONE stands for "not worked out yet"; hints that were worked out and are empty are
    // known
    public boolean isKnown(PhotoScope choice) {
        return this != NONE || !choice.restsOnPictures();
    }

    public boolean isSoft(PhotoId photo) {
        return sharpness.soft().contains(photo);
    }

    /** The photo most like it and the distance, if one is near. */
    public Optional<NearDuplicates.Match> alike(PhotoId photo) {
        return Optional.ofNullable(duplicates.nearest().get(photo));
    }

    public boolean isDark(PhotoId photo) {
        return dark.contains(photo);
    }

    public boolean isBright(PhotoId photo) {
        return bright.contains(photo);
    }

    /** Mean grey level 0 to 255 of a photo that was looked at. */
    public OptionalDouble mean(PhotoId photo) {
        Exposure exposure = measured.get(photo);
        return exposure == null ? OptionalDouble.empty() : OptionalDouble.of(exposure.mean());
    }
}
