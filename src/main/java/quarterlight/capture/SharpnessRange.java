package quarterlight.capture;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import quarterlight.visit.photo.PhotoId;

/**
 * The range of sharpness within one visit, and the photos that fall out of it at the soft end: a hint, never a verdict.
 * <p>Common practice, without a source: sharpness spreads over orders of magnitude, so its logarithm is compared; a photo is soft if its
 * logarithm lies more than two robust deviations (1.4826 MAD, taken as at least {@link #MIN_SPREAD}) under the median of the visit.
 * Fewer than {@link #MIN_PHOTOS} photos are not compared.
 *
 * @param low the limit below which a photo counts as soft; 0 if too few were measured
 * @param median of the visit; 0 if none was measured
 * @param soft the photos below the limit
 */
public record SharpnessRange(double low, double median, Set<PhotoId> soft) {
    public static final int MIN_PHOTOS = 8;
    /** The least robust deviation of the natural logarithm; a visit of photos all alike must not call half of them soft. */
    public static final double MIN_SPREAD = 0.35;

    private static final double MAD_TO_SD = 1.4826;
    private static final double DEVIATIONS = 2;

    /** Nothing was measured. */
    public static final SharpnessRange NONE = new SharpnessRange(0, 0, Set.of());

    public SharpnessRange {
        soft = Set.copyOf(soft);
    }

    /** @param sharpness variance of the Laplacian by photo, 0 or more */
    public static SharpnessRange of(Map<PhotoId, Double> sharpness) {
        if (sharpness.isEmpty()) {
            return NONE;
        }
        double[] logs = logs(sharpness.values());
        double middle = median(logs);
        if (sharpness.size() < MIN_PHOTOS) {
            return new SharpnessRange(0, Math.exp(middle), Set.of());
        }
        double[] away = Arrays.stream(logs).map(x -> Math.abs(x - middle)).toArray();
        double spread = Math.max(MIN_SPREAD, MAD_TO_SD * median(away));
        double low = Math.exp(middle - DEVIATIONS * spread);
        Set<PhotoId> soft = new HashSet<>();
        sharpness.forEach((photo, value) -> {
            if (value < low) {
                soft.add(photo);
            }
        });
        return new SharpnessRange(low, Math.exp(middle), soft);
    }

    private static double[] logs(Collection<Double> values) {
        return List.copyOf(values).stream()
                .mapToDouble(value -> Math.log(Math.max(value, 1e-3)))
                .toArray();
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int n = sorted.length;
        return n % 2 == 1 ? sorted[n / 2] : (sorted[n / 2 - 1] + sorted[n / 2]) / 2;
    }
}
