package quarterlight.finish.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.finish.number.LifeStory;

class NextSpotsTest {
    /** Eight spots bring 0.5 bits; the least of 1, 2, 3, 5, 8 that brings 0.45 is proposed. */
    @ParameterizedTest
    @CsvSource({".4501, 1", ".4499, 2", ".4, 2", ".1, 2"})
    void nineTenthsOfWhatEightSpotsBringIsEnough(double afterOne, int spots) {
        double[] after = {.9, .9 - afterOne, .9 - .46, .9 - .47, .9 - .47, .9 - .48, .9 - .49, .9 - .49, .9 - .5};
        NextSpots.Gain gain = NextSpots.enough(.9, after);
        assertThat(gain.spots()).isEqualTo(spots);
        assertThat(gain.bits()).isCloseTo(spots == 1 ? afterOne : .46, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({".44, .44, .44, 8", ".44, .44, .46, 5", ".44, .46, .46, 3"})
    void fourSixAndSevenAreNotProposed(double two, double three, double five, int spots) {
        double[] after = {.9, .9, .9 - two, .9 - three, .9 - .5, .9 - five, .9 - .5, .9 - .5, .9 - .5};
        assertThat(NextSpots.enough(.9, after).spots()).isEqualTo(spots);
    }

    /** Shannon's binary entropy: 1 at a half, 0.811278 at a quarter (C. E. Shannon, 1948; to be had from any table). */
    @ParameterizedTest
    @CsvSource({"0, 0", "1, 0", ".5, 1", ".25, .811278", ".75, .811278", ".01, .080793"})
    void theEntropyOfAQuestionIsShannons(double p, double bits) {
        assertThat(NextSpots.entropy(p)).isCloseTo(bits, within(1e-6));
    }

    /** Normal level, normal spots: mean and variance of the level by precisions (any text on Bayesian statistics). */
    @Test
    void aSpotMovesTheBeliefByItsPrecision() {
        double[] belief = {1.6, .04};
        double y = 1.75;
        double spread = Math.sqrt(.04 + .12 * .12);
        double stray = .008;
        double expected = (1 - stray) * NormalDistribution.of(1.6, spread).density(y)
                + stray
                        * NormalDistribution.of(1.6 + (1 / (1 / .04 + 1 / .0144)) * (y - 1.6) / .0144 + .4, .61)
                                .density(y);
        assertThat(NextSpots.likelihood(LifeStory.FACTORY, y, belief)).isCloseTo(expected, within(1e-9));
        assertThat(belief[0]).isCloseTo((1.6 / .04 + y / .0144) / (1 / .04 + 1 / .0144), within(1e-12));
        assertThat(belief[1]).isCloseTo(1 / (1 / .04 + 1 / .0144), within(1e-12));
    }

    @Test
    void whatLiesFarOffMovesNothing() {
        double[] belief = {1.6, .04};
        double three = 3 * Math.sqrt(.04 + .12 * .12);
        NextSpots.likelihood(LifeStory.OVER, 1.6 + three + 1e-9, belief);
        assertThat(belief).containsExactly(1.6, .04);
        NextSpots.likelihood(LifeStory.OVER, 1.6 + three - 1e-9, belief);
        assertThat(belief[1]).isLessThan(.04);
    }

    /** Of the spots on a panel refinished in part a quarter is thicker by 0.45 in the logarithm. */
    @Test
    void partOfAPanelMayBeThicker() {
        double spread = Math.sqrt(.04 + .12 * .12);
        double y = 2.05;
        double[] belief = {1.6, .04};
        double both = .75 * NormalDistribution.of(1.6, spread).density(y)
                + .25 * NormalDistribution.of(2.05, spread).density(y);
        double moved = (1.6 / .04 + y / .0144) / (1 / .04 + 1 / .0144);
        double expected =
                .992 * both + .008 * NormalDistribution.of(moved + .4, .61).density(y);
        assertThat(NextSpots.likelihood(LifeStory.PARTLY, y, belief)).isCloseTo(expected, within(1e-9));
    }

    @Test
    void theLevelOfAStoryIsItsOwnAndThePanelsByTheirPrecisions() {
        Panel bare = new Panel("hood", List.of(), 0, Map.of(), List.of(), Optional.empty());
        assertThat(NextSpots.level(LifeStory.FACTORY, Math.log(5), bare))
                .containsExactly(new double[] {Math.log(5), .13 * .13}, within(1e-12));
        assertThat(NextSpots.level(LifeStory.OVER, Math.log(5), bare))
                .containsExactly(new double[] {Math.log(9), .33 * .33}, within(1e-12));
        assertThat(NextSpots.level(LifeStory.SKIM, Math.log(5), bare))
                .containsExactly(new double[] {Math.log(20), .25}, within(1e-12));
        Panel three = new Panel("hood", List.of(6.0, 6.0, 6.0), 0, Map.of(), List.of(), Optional.empty());
        double own = 1 / (.13 * .13);
        double spots = 3 / (.12 * .12);
        assertThat(NextSpots.level(LifeStory.FACTORY, Math.log(5), three))
                .containsExactly(
                        new double[] {(Math.log(5) * own + Math.log(6) * spots) / (own + spots), 1 / (own + spots)},
                        within(1e-12));
    }

    /** Factory finish or another coat, one spot: what 20,000 walks leave unknown is what summing over the spot's values gives. */
    @Test
    void walksLeaveWhatSummingOverTheSpotLeaves() {
        int stories = LifeStory.values().length;
        double[] chances = new double[stories];
        chances[LifeStory.FACTORY.ordinal()] = .6;
        chances[LifeStory.OVER.ordinal()] = .4;
        double[][] known = new double[stories][];
        Arrays.setAll(known, s -> new double[] {Math.log(5), .02});
        known[LifeStory.OVER.ordinal()] = new double[] {Math.log(7), .08};
        double left = 0;
        double step = .002;
        for (double y = -1; y < 5; y += step) {
            double factory = density(LifeStory.FACTORY, y, known);
            double over = density(LifeStory.OVER, y, known);
            double posterior = .6 * factory / (.6 * factory + .4 * over);
            double drawn = .6 * plain(LifeStory.FACTORY, y, known) + .4 * plain(LifeStory.OVER, y, known);
            left += step * drawn * NextSpots.entropy(posterior);
        }
        int walks = 20_000;
        double[] after = new double[9];
        SplittableRandom random = new SplittableRandom(11);
        for (int n = 0; n < walks; n++) {
            NextSpots.path(chances, known, random, after);
        }
        assertThat(after[0] * 64 / walks).isCloseTo(NextSpots.entropy(.4), within(1e-9));
        assertThat(after[1] * 64 / walks).isCloseTo(left, within(.012));
        assertThat(after[8]).isLessThan(after[1]);
    }

    private static double density(LifeStory story, double y, double[][] known) {
        return NextSpots.likelihood(story, y, known[story.ordinal()].clone());
    }

    private static double plain(LifeStory story, double y, double[][] known) {
        double[] level = known[story.ordinal()];
        return NormalDistribution.of(level[0], Math.sqrt(level[1] + .12 * .12)).density(y);
    }
}
