package quarterlight.finish.scale;

import java.util.Arrays;
import java.util.List;
import quarterlight.car.FinishProfile;
import quarterlight.finish.FinishHistory;
import quarterlight.thickness.statistics.Quantiles;

/**
 * Seven steps of thickness, from far below to far above what a car should read. The middle step runs from 0.8 to 1.25 times the car's own
 * level and is widened to the published range of its kind of finish, so that a sound car is all middle; the other limits keep their
 * ratios to the edges of the middle (0.6 to 0.8, and 1.6, 2.5 and 5 to 1.25). Immutable.
 *
 * @param limitsUm the six limits between the steps, rising
 */
public record ThicknessSteps(List<Double> limitsUm) {
    /** The lowest step; the middle is 0. */
    public static final int LOWEST = -2;
    /** The highest step. */
    public static final int HIGHEST = 4;

    private static final double THIN = 0.6;
    private static final double MIDDLE_LOW = 0.8;
    private static final double MIDDLE_HIGH = 1.25;
    private static final double[] THICK = {1.6, 2.5, 5};

    public ThicknessSteps {
        limitsUm = List.copyOf(limitsUm);
        if (limitsUm.size() != HIGHEST - LOWEST) {
            throw new IllegalArgumentException("seven steps have six limits, not " + limitsUm.size());
        }
        for (int i = 0; i < limitsUm.size(); i++) {
            if (!(limitsUm.get(i) > (i == 0 ? 0 : limitsUm.get(i - 1)))) {
                throw new IllegalArgumentException("limits rise: " + limitsUm);
            }
        }
    }

    /** The steps of a car by its own level and its kind of finish. */
    public static ThicknessSteps of(FinishHistory history) {
        return of(history.carLevel().um(), FactoryRange.of(history.profile()));
    }

    /**
     * The steps while the car's own level is not worked out: by the median of those panels that read as a factory finish of its kind can, by
     * the middle of that range if none does.
     *
     * @param meansUm of the panels
     */
    public static ThicknessSteps beforeJudging(FinishProfile profile, double[] meansUm) {
        FactoryRange factory = FactoryRange.of(profile);
        double[] usual = Arrays.stream(meansUm)
                .filter(um -> um >= factory.lowUm() && um <= factory.highUm())
                .toArray();
        return of(usual.length == 0 ? (factory.lowUm() + factory.highUm()) / 2 : Quantiles.median(usual), factory);
    }

    /** @param levelUm the car's own level */
    public static ThicknessSteps of(double levelUm, FactoryRange factory) {
        double low = Math.min(MIDDLE_LOW * levelUm, factory.lowUm());
        double high = Math.max(MIDDLE_HIGH * levelUm, factory.highUm());
        double thick = high / MIDDLE_HIGH;
        return new ThicknessSteps(
                List.of(low * THIN / MIDDLE_LOW, low, high, thick * THICK[0], thick * THICK[1], thick * THICK[2]));
    }

    /** The step of a thickness, {@link #LOWEST} to {@link #HIGHEST}; what lies on a limit of the middle belongs to it. */
    public int of(double um) {
        int step = LOWEST;
        for (double limit : limitsUm) {
            if (step < 0 ? um >= limit : um > limit) {
                step++;
            }
        }
        return step;
    }

    /** The thinnest that counts as sound, um. */
    public double soundFromUm() {
        return limitsUm.get(-LOWEST - 1);
    }

    /** The thickest that counts as sound, um. */
    public double soundToUm() {
        return limitsUm.get(-LOWEST);
    }
}
