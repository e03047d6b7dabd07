package quarterlight.finish.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import quarterlight.car.View;
import quarterlight.visit.pin.ViewPoint;

class SpotNeighborsTest {
    private static ViewPoint at(double x, double y) {
        return new ViewPoint(View.LEFT, x, y);
    }

    @Test
    void nearestFirstAndItselfAtTheHead() {
        SpotNeighbors found = SpotNeighbors.of(List.of(at(.1, .5), at(.4, .5), at(.15, .5), at(.3, .5)))
                .orElseThrow();
        assertThat(found.order())
                .containsExactly(List.of(0, 2, 3, 1), List.of(1, 3, 2, 0), List.of(2, 0, 3, 1), List.of(3, 1, 2, 0));
    }

    @Test
    void eachDirectionCountsByHowFarTheSpotsSpreadAlongIt() {
        // .2 of .4 along x is half the spread, .15 of .2 along y three quarters
        SpotNeighbors found = SpotNeighbors.of(List.of(at(.2, .2), at(.4, .2), at(.2, .35), at(.6, .4)))
                .orElseThrow();
        assertThat(found.order().get(0)).containsExactly(0, 1, 2, 3);
    }

    @Test
    void spotsInARowHaveNoSecondDirection() {
        // y differs by a hundredth: a quarter of the spread along x is the least that counts, so x decides
        SpotNeighbors found = SpotNeighbors.of(List.of(at(.1, .5), at(.15, .51), at(.2, .5), at(.5, .5)))
                .orElseThrow();
        assertThat(found.order().get(0)).containsExactly(0, 1, 2, 3);
    }

    @Test
    void twoSpotsOrTwoViewsOrOnePlaceTellNothing() {
        assertThat(SpotNeighbors.of(List.of(at(.1, .5), at(.4, .5)))).isEmpty();
        assertThat(SpotNeighbors.of(List.of(at(.1, .5), at(.4, .5), new ViewPoint(View.TOP, .2, .2))))
                .isEmpty();
        assertThat(SpotNeighbors.of(List.of(at(.1, .5), at(.1, .5), at(.1, .5))))
                .isEmpty();
    }
}
