package quarterlight.finish.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import quarterlight.finish.number.JudgedNumber;
import quarterlight.finish.number.LifeStory;
import quarterlight.finish.number.SignRates;
import quarterlight.rust.RustExtent;
import quarterlight.visit.trial.SignKind;

/** The chances of docs/methods/finish-history.md, worked out by hand. */
class SignFactorsTest {
    private static final String DOOR = "left-front-door";

    private static Panel panel(int noMetal, Optional<RustExtent> rust, Map<SignKind, Boolean> signs) {
        return new Panel(DOOR, List.of(), noMetal, signs, List.of(), rust);
    }

    private static double of(double[] factors, LifeStory story) {
        return factors[story.ordinal()];
    }

    @Test
    void spotsWithoutMetalSpeakForFiller() {
        double[] two = SignFactors.noMetal(panel(2, Optional.empty(), Map.of()), .01);
        assertThat(of(two, LifeStory.FACTORY)).isCloseTo(.01 * .01, within(1e-15));
        assertThat(of(two, LifeStory.OVER)).isCloseTo(.01 * .01, within(1e-15));
        assertThat(of(two, LifeStory.SKIM)).isCloseTo(.11 * .11, within(1e-15));
        double patch = .4 * Math.pow(.01 + .12 * .03, 2)
                + .35 * Math.pow(.01 + .12 * .12, 2)
                + .25 * Math.pow(.01 + .12 * .4, 2);
        assertThat(of(two, LifeStory.PATCH)).isCloseTo(patch, within(1e-15));
        assertThat(DoubleStream.of(SignFactors.noMetal(panel(0, Optional.empty(), Map.of()), .01)))
                .allSatisfy(factor -> assertThat(factor).isCloseTo(1, within(1e-12)));
    }

    @Test
    void rustAndSpotsWithoutMetalMultiply() {
        Panel panel = panel(1, Optional.of(RustExtent.HEAVY), Map.of());
        double share = Draws.USUAL.value(5, JudgedNumber.NO_METAL);
        double[] both = SignFactors.others(panel, Draws.USUAL, 5);
        assertThat(of(both, LifeStory.FACTORY)).isCloseTo(.05 * share, within(1e-15));
        assertThat(of(both, LifeStory.SKIM)).isCloseTo(.18 * (share + .1), within(1e-15));
    }

    @Test
    void aSignOnAFactoryPanelIsAFalseOneOrWhatTheFactoryLeft() {
        for (int draw = 0; draw < 24; draw++) {
            double falsely = Draws.USUAL.value(draw, JudgedNumber.FALSE_SIGNS);
            double eye = Draws.USUAL.value(draw, JudgedNumber.SEEN);
            assertThat(seen(SignKind.GAP_OUT_OF_LINE, draw, LifeStory.FACTORY))
                    .isCloseTo(Math.min(.5, .10 * falsely), within(1e-12));
            assertThat(seen(SignKind.FACTORY_PRIMER_VISIBLE, draw, LifeStory.FACTORY))
                    .isCloseTo(Math.min(.95, .60 * eye), within(1e-12));
        }
    }

    /** Falsely, or by the work itself: of a careful, a usual or a coarse job. */
    @Test
    void aSignOfWorkIsSeenByItsQuality() {
        for (int draw = 0; draw < 24; draw++) {
            double none = 1 - Math.min(.5, .10 * Draws.USUAL.value(draw, JudgedNumber.FALSE_SIGNS));
            double eye = Draws.USUAL.value(draw, JudgedNumber.SEEN);
            double expected = 0;
            for (int q = 0; q < 3; q++) {
                double by = Math.min(.95, .45 * eye * SignRates.QUALITY.get(q));
                expected += SignRates.QUALITY_SHARE.get(q) * (1 - none * (1 - by));
            }
            assertThat(seen(SignKind.GAP_OUT_OF_LINE, draw, LifeStory.REPLACED)).isCloseTo(expected, within(1e-12));
        }
    }

    private static double seen(SignKind sign, int draw, LifeStory story) {
        Panel panel = panel(0, Optional.empty(), Map.of(sign, true));
        return Draws.USUAL.signs().factors(panel, draw, false, null)[story.ordinal()];
    }
}
