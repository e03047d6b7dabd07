package quarterlight.finish.model;

import java.util.Arrays;
import java.util.stream.IntStream;
import quarterlight.finish.number.FixedNumber;
import quarterlight.finish.number.JudgedNumber;
import quarterlight.finish.number.LifeStory;
import quarterlight.finish.number.SignRates;
import quarterlight.visit.trial.SignKind;

/**
 * The chance that each sign is seen, by draw, story and quality of the job: made once for a set of draws. Immutable.
 * <p>Slots 0 to 2 are the qualities of a job on one panel, slot 3 is a job on the whole car.
 */
final class SignTable {
    static final int WHOLE_CAR = 3;
    static final int SIGNS = SignKind.values().length;
    private static final int STORIES = LifeStory.values().length;
    private static final double HIGHEST = .95;

    private final Draws draws;
    /** {@code [draw][slot][story * SIGNS + sign]}. */
    private final double[][][] chances;

    SignTable(Draws draws) {
        this.draws = draws;
        chances = new double[draws.count()][WHOLE_CAR + 1][STORIES * SIGNS];
        for (int d = 0; d < draws.count(); d++) {
            for (int slot = 0; slot <= WHOLE_CAR; slot++) {
                double quality =
                        slot == WHOLE_CAR ? draws.value(d, JudgedNumber.WHOLE_CAR_CARE) : SignRates.QUALITY.get(slot);
                for (LifeStory story : LifeStory.values()) {
                    for (SignKind sign : SignKind.values()) {
                        chances[d][slot][story.ordinal() * SIGNS + sign.ordinal()] =
                                chance(sign, d, story, slot == WHOLE_CAR, quality);
                    }
                }
            }
        }
    }

    private double chance(SignKind sign, int draw, LifeStory story, boolean wholeCar, double quality) {
        SignRates.Row row = SignRates.rows().get(sign.ordinal());
        double eye = draws.value(draw, JudgedNumber.SEEN);
        double rate = row.rates().get(story.ordinal());
        if (row.ofFactory()) {
            return Math.min(HIGHEST, rate * eye);
        }
        double none = 1 - Math.min(.5, row.rates().get(0) * draws.value(draw, JudgedNumber.FALSE_SIGNS));
        if (story == LifeStory.FACTORY) {
            return 1 - none;
        }
        double contrast = wholeCar ? contrast(sign) : 1;
        return 1 - none * (1 - Math.min(HIGHEST, rate * eye * quality * contrast));
    }

    /** Where the whole car was refinished there is no neighbor to differ from. */
    private static double contrast(SignKind sign) {
        return switch (sign) {
            case TEXTURE_DIFFERS -> FixedNumber.LESS_CONTRAST_TEXTURE.value();
            case COLOR_DIFFERS -> FixedNumber.LESS_CONTRAST_COLOR.value();
            default -> 1;
        };
    }

    /**
     * Likelihood of all signs of a panel by story, and the same without each single sign.
     *
     * @param wholeCar a job on the whole car: of one quality; else averaged over the quality of the panel's job
     * @param without filled with {@code [sign][story]} if not null
     */
    double[] factors(Panel panel, int draw, boolean wholeCar, double[][] without) {
        double[] factors = new double[STORIES];
        double looked = draws.value(draw, JudgedNumber.SILENCE);
        double[] each = new double[SIGNS];
        Arrays.fill(each, 1);
        int[] marks = new int[SIGNS];
        Arrays.setAll(marks, panel::mark);
        int[] told = IntStream.range(0, SIGNS)
                .filter(sign -> marks[sign] != Panel.UNTOLD)
                .toArray();
        for (int s = 0; s < STORIES; s++) {
            boolean several = !wholeCar && s > 0;
            for (int q = 0; q < (several ? SignRates.QUALITY.size() : 1); q++) {
                double[] row = chances[draw][wholeCar ? WHOLE_CAR : q];
                double product = several ? SignRates.QUALITY_SHARE.get(q) : 1;
                for (int sign : told) {
                    double seen = row[s * SIGNS + sign];
                    each[sign] = marks[sign] == Panel.SEEN
                            ? seen
                            : marks[sign] == Panel.ABSENT ? 1 - seen : 1 - looked * seen;
                    product *= each[sign];
                }
                factors[s] += product;
                if (without != null) {
                    for (int sign = 0; sign < SIGNS; sign++) {
                        without[sign][s] += product / each[sign];
                    }
                }
            }
        }
        return factors;
    }
}
