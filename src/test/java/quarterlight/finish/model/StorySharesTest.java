package quarterlight.finish.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.finish.number.FixedNumber;
import quarterlight.finish.number.LifeStory;

/** Before anything is measured: by the law of total probability over kinds of car, touched or not, filler or not. */
class StorySharesTest {
    private static Panel panel(String zone) {
        return new Panel(zone, List.of(), 0, Map.of(), List.of(), Optional.empty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"left-front-door", "roof", "left-quarter", "left-rocker"})
    void theStoriesOfAPanelAreAllThereIs(String zone) {
        for (int draw = 0; draw < 12; draw++) {
            double[] before = StoryShares.before(Draws.USUAL, draw, panel(zone));
            assertThat(DoubleStream.of(before).sum()).isCloseTo(1, within(1e-12));
            assertThat(DoubleStream.of(before))
                    .allSatisfy(chance -> assertThat(chance).isPositive());
            assertThat(DoubleStream.of(StoryShares.scenarios(Draws.USUAL, draw)).sum())
                    .isCloseTo(1, within(1e-12));
        }
    }

    /** Of a door nothing is more or less prone: each share is the plain mean over the kinds of car. */
    @Test
    void fillerIsAsUsualAsItsSharesSay() {
        Panel door = panel("left-front-door");
        assertThat(door.proneness()).isEqualTo(1);
        assertThat(door.fillerOdds()).isEqualTo(1);
        double[] cars = StoryShares.scenarios(Draws.USUAL, 3);
        double touchedSome = DoubleStream.of(StoryShares.TOUCHED).average().orElseThrow();
        double filledSome = DoubleStream.of(StoryShares.FILLED_SOME).average().orElseThrow();
        double filledWhole = DoubleStream.of(StoryShares.FILLED_WHOLE).average().orElseThrow();
        double whole = 1 - FixedNumber.LEFT_OUT.value();
        double filler = filledSome * (cars[0] * FixedNumber.TOUCHED_AS_BUILT.value() + cars[1] * touchedSome)
                + filledWhole * whole * (cars[2] + cars[3]);
        double factory = cars[0] * (1 - FixedNumber.TOUCHED_AS_BUILT.value())
                + cars[1] * (1 - touchedSome)
                + (1 - whole) * (cars[2] + cars[3]);
        double[] before = StoryShares.before(Draws.USUAL, 3, door);
        assertThat(before[LifeStory.PATCH.ordinal()] + before[LifeStory.SKIM.ordinal()])
                .isCloseTo(filler, within(1e-12));
        assertThat(before[LifeStory.FACTORY.ordinal()]).isCloseTo(factory, within(1e-12));
    }

    @Test
    void proneMultipliesTheOdds() {
        assertThat(StoryShares.prone(.2, 3)).isCloseTo(.75 / 1.75, within(1e-12));
        assertThat(StoryShares.prone(.2, 1)).isCloseTo(.2, within(1e-12));
    }
}
