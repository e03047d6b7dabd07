package quarterlight.finish;

import java.util.List;
import java.util.Objects;
import quarterlight.car.ZoneId;

/**
 * How likely each history of one zone's finish is.
 *
 * @param readable false if the gauge cannot read the zone; its signs still count
 * @param chances probabilities of the four histories; sum 1
 * @param notFactoryLow least probability of "not factory" over the three priors of the scenarios
 * @param notFactoryHigh the greatest
 * @param log10LrOwn log10 of the posterior odds of "not factory" over the odds given all other zones: the weight of the
 *     zone's own evidence; 0 without evidence, held within -9 and 9
 * @param log10LrFiller the same for filler
 * @param reasons what moved it, heaviest first
 */
public record ZoneHistory(
        ZoneId zone,
        boolean readable,
        Chances chances,
        double notFactoryLow,
        double notFactoryHigh,
        double log10LrOwn,
        double log10LrFiller,
        List<FinishReason> reasons) {
    public ZoneHistory {
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(chances, "chances");
        reasons = List.copyOf(reasons);
    }

    /** Probability that it is not the factory finish: the refinish likelihood. */
    public double notFactory() {
        return chances.over() + chances.stripped() + chances.filler();
    }

    /** The refinish likelihood from 0 to 100, rounded half up. */
    public int refinishScore() {
        return score(notFactory());
    }

    /** The repair likelihood, P(filler), from 0 to 100, rounded half up. */
    public int repairScore() {
        return score(chances.filler());
    }

    /** The strength of the zone's own evidence on refinishing, in the words of the published scale. */
    public EvidenceStrength strength() {
        return EvidenceStrength.ofLog10(log10LrOwn);
    }

    private static int score(double chance) {
        return (int) Math.floor(100 * chance + 0.5);
    }
}
