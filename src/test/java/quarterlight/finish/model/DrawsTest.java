package quarterlight.finish.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import quarterlight.finish.number.JudgedNumber;

/** Latin hypercube sampling as McKay, Beckman and Conover (1979) define it. */
class DrawsTest {
    private static final int COUNT = 24;

    @Test
    void everyNumberTakesEachOfItsSlicesOnceAndInAnOrderOfItsOwn() {
        Draws draws = new Draws(COUNT, 7);
        NormalDistribution normal = NormalDistribution.of(0, 1);
        int inOrder = 0;
        for (JudgedNumber number : JudgedNumber.values()) {
            double[] drawn = IntStream.range(0, COUNT)
                    .mapToDouble(d -> draws.score(d, number) - draws.model(d).shift(number))
                    .toArray();
            double[] sorted = drawn.clone();
            java.util.Arrays.sort(sorted);
            for (int slice = 0; slice < COUNT; slice++) {
                assertThat(normal.cumulativeProbability(sorted[slice]) * COUNT).isCloseTo(slice + .5, within(1e-6));
            }
            inOrder += java.util.Arrays.equals(sorted, drawn) ? 1 : 0;
        }
        assertThat(draws.count()).isEqualTo(COUNT);
        assertThat(inOrder).as("numbers whose draws come in order").isZero();
        assertThat(IntStream.range(0, COUNT)
                        .filter(d -> draws.score(d, JudgedNumber.NO_METAL) == draws.score(d, JudgedNumber.SEEN))
                        .count())
                .as("no two numbers share their order")
                .isLessThan(COUNT / 2);
    }
}
