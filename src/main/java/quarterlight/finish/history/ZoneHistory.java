package quarterlight.finish.history;

import static quarterlight.language.Sentences.say;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.finish.number.LifeStory;
import quarterlight.finish.number.ProcessModel;

/**
 * How likely each history of one zone's finish is.
 *
 * @param readable false if the gauge cannot read the zone; its signs still count
 * @param chances probabilities of the four histories; sum 1
 * @param replaced probability that the panel is a replaced one, part of "stripped"
 * @param notFactoryLow 5th percentile of "not factory" over the judged numbers
 * @param notFactoryHigh the 95th
 * @param log10LrOwn log10 of the posterior odds of "not factory" over the odds given all other zones: the weight of the
 *     zone's own evidence; 0 without evidence, held within -9 and 9
 * @param log10LrFiller the same for filler
 * @param reasons what moved it, heaviest first
 * @param stories every story with its probability, likeliest first
 * @param jury what each process model says
 * @param hiddenPatch what is to be feared of a patch of filler that no spot stands on; empty without the zone's area
 */
public record ZoneHistory(
        ZoneId zone,
        boolean readable,
        Chances chances,
        double replaced,
        double notFactoryLow,
        double notFactoryHigh,
        double log10LrOwn,
        double log10LrFiller,
        List<FinishReason> reasons,
        List<Story> stories,
        Map<ProcessModel, Verdict> jury,
        Optional<HiddenPatch> hiddenPatch) {
    /** One story and its probability. */
    public record Story(LifeStory story, double chance) {}

    /**
     * A patch of filler, 10 cm across, that no spot stands on.
     *
     * @param chance that there is one
     * @param missed share of the places of such a patch at which all spots miss it
     * @param spots how many spots there are
     * @param placed of how many of them the place on the panel is known
     */
    public record HiddenPatch(double chance, double missed, int spots, int placed) {}

    /** What one process model says: refinish and repair likelihood. */
    public record Verdict(double notFactory, double filler) {}

    public ZoneHistory {
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(chances, "chances");
        Objects.requireNonNull(hiddenPatch, "hiddenPatch");
        reasons = List.copyOf(reasons);
        stories = List.copyOf(stories);
        EnumMap<ProcessModel, Verdict> said = new EnumMap<>(ProcessModel.class);
        said.putAll(jury);
        jury = java.util.Collections.unmodifiableMap(said);
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

    /** A whole number as people read it: never 0 and never 100. */
    public static String shown(int score) {
        return score <= 0
                ? say("finish.zone-history.under-1")
                : score >= 100 ? say("finish.zone-history.over-99") : Integer.toString(score);
    }

    /** A probability as people read it, in percent. */
    public static String shown(double chance) {
        return shown(score(chance));
    }

    /** The band as people read it; one figure where both ends read alike. */
    public String shownBand() {
        return shownBand(notFactoryLow, notFactoryHigh);
    }

    /** Two chances from low to high as people read them, in percent; one figure where both read alike. */
    public static String shownBand(double low, double high) {
        String least = shown(low);
        String most = shown(high);
        return least.equals(most) ? least : say("finish.zone-history.to", least, most);
    }

    /** The strength of the zone's own evidence on refinishing, in the words of the published scale. */
    public EvidenceStrength strength() {
        return EvidenceStrength.ofLog10(log10LrOwn);
    }

    private static int score(double chance) {
        return (int) Math.floor(100 * chance + 0.5);
    }
}
