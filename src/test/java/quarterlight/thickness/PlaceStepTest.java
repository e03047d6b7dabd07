package quarterlight.thickness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Steps within a panel: the statistic against a published value, its chance against what chance must be. */
class PlaceStepTest {
    /** W. S. Gosset's (Student's) sleep data, 1908, as in R's data set sleep: pooled t = -1.8608 for group 1 less group 2. */
    @Test
    void theStatisticIsStudentsOnHisOwnData() {
        double[] first = {.7, -1.6, -.2, -1.2, -.1, 3.4, 3.7, .8, 0, 2};
        double[] second = {1.9, .8, 1.1, .1, -.1, 4.4, 5.5, 1.6, 4.6, 3.4};
        assertThat(PlaceStep.pooledT(first, second)).isCloseTo(1.8608, within(1e-4));
    }

    @Test
    void theEdgeIsFoundWhereItIs() {
        double[] x = {.1, .2, .3, .4, .6, .7, .8, .9};
        double[] y = {.5, .4, .6, .5, .5, .6, .4, .5};
        PlaceStep step = PlaceStep.of(x, y, new double[] {127, 125, 129, 126, 230, 228, 233, 231})
                .orElseThrow();
        assertThat(step.alongX()).isTrue();
        assertThat(step.at()).isCloseTo(.5, within(1e-9));
        assertThat(step.stepUm()).isCloseTo(230.5 - 126.75, within(1e-9));
        assertThat(step.p()).isLessThan(.07);
        PlaceStep turned = PlaceStep.of(y, x, new double[] {127, 125, 129, 126, 230, 228, 233, 231})
                .orElseThrow();
        assertThat(turned.alongX()).isFalse();
    }

    @Test
    @Tag("simulation")
    void wherePlacesMeanNothingTheChanceIsEven() {
        Random random = new Random(4);
        int small = 0;
        int half = 0;
        int panels = 400;
        for (int panel = 0; panel < panels; panel++) {
            double[] um =
                    random.doubles(8).map(u -> 127 + 12 * random.nextGaussian()).toArray();
            double p = PlaceStep.of(
                            random.doubles(8).toArray(), random.doubles(8).toArray(), um)
                    .orElseThrow()
                    .p();
            small += p <= .1 ? 1 : 0;
            half += p <= .5 ? 1 : 0;
        }
        // few ways to part eight spots: the chance comes in lumps, so small ones are rarer than they say, never more
        // frequent
        assertThat(small).isBetween(5, 58);
        assertThat(half).isBetween(160, 240);
    }

    /** Every one of the 720 deals of six values over their places: the chance drawn is the chance there is. */
    @Test
    void theChanceIsThatOfAllDeals() {
        double[] x = {.1, .2, .3, .6, .8, .9};
        double[] y = {.3, .3, .3, .3, .3, .3};
        double[] um = {120, 131, 125, 150, 139, 128};
        PlaceStep step = PlaceStep.of(x, y, um).orElseThrow();
        int[] counts = new int[2];
        deal(um.clone(), 0, step.t(), counts);
        assertThat(counts[1]).isEqualTo(720);
        assertThat(step.p()).isCloseTo(counts[0] / 720.0, within(.06));
        assertThat(step.p()).isGreaterThan(.05);
    }

    private static void deal(double[] um, int from, double t, int[] counts) {
        if (from == um.length) {
            double best = 0;
            for (int cut = 2; cut <= um.length - 2; cut++) {
                double[] low = Arrays.copyOfRange(um, 0, cut);
                double[] high = Arrays.copyOfRange(um, cut, um.length);
                best = Math.max(best, Math.abs(PlaceStep.pooledT(low, high)));
            }
            counts[0] += best >= t - 1e-9 ? 1 : 0;
            counts[1]++;
            return;
        }
        for (int k = from; k < um.length; k++) {
            swap(um, from, k);
            deal(um, from + 1, t, counts);
            swap(um, from, k);
        }
    }

    private static void swap(double[] um, int a, int b) {
        double kept = um[a];
        um[a] = um[b];
        um[b] = kept;
    }

    @Test
    void theSteeperOfBothDirectionsIsTold() {
        double[] one = {.1, .2, .3, .7, .8, .9};
        double[] other = {.1, .9, .2, .8, .3, .7};
        double[] um = {100, 101, 102, 150, 151, 152};
        assertThat(PlaceStep.of(one, other, um).orElseThrow().alongX()).isTrue();
        assertThat(PlaceStep.of(other, one, um).orElseThrow().alongX()).isFalse();
        assertThat(PlaceStep.of(other, one, um).orElseThrow().at()).isCloseTo(.5, within(1e-9));
    }

    @Test
    void withoutScatterTheStatisticIsZeroOrBeyondAll() {
        assertThat(PlaceStep.pooledT(new double[] {2, 2}, new double[] {2, 2})).isZero();
        assertThat(PlaceStep.pooledT(new double[] {2, 2}, new double[] {3, 3})).isEqualTo(1e9);
        assertThat(PlaceStep.pooledT(new double[] {3, 3}, new double[] {2, 2})).isEqualTo(-1e9);
    }

    @Test
    void fewSpotsOrOnePlaceShowNoStep() {
        double[] five = {1, 2, 3, 4, 5};
        assertThat(PlaceStep.of(five, five, five)).isEmpty();
        double[] same = {.5, .5, .5, .5, .5, .5};
        assertThat(PlaceStep.of(same, same, new double[] {1, 2, 3, 4, 5, 6})).isEmpty();
    }

    @Test
    void panelsThatMeetAreOfTheSameSide() {
        assertThat(PanelAnalyses.meeting("fender-left"))
                .contains("door-front-left", "hood")
                .doesNotContain("door-front-right");
        assertThat(PanelAnalyses.meeting("door-rear-right"))
                .isEqualTo(List.of("door-front-right", "quarter-right", "rocker-right"));
    }
}
