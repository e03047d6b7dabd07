package quarterlight.finish.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quarterlight.car.FinishProfile;
import quarterlight.visit.trial.SignKind;

/** A car is worked out anew when anything that it rests on is another, and only then. */
class KnownCarsTest {
    private static List<Panel> car(double spot, Map<SignKind, Boolean> signs) {
        return List.of(
                new Panel("hood", List.of(4.1, spot), 0, signs, List.of(), Optional.empty()),
                new Panel("roof", List.of(4.6), 0, Map.of(), List.of(), Optional.empty()));
    }

    private static CarPosterior of(List<Panel> panels, FinishProfile profile) {
        return CarPosterior.of(panels, profile, Draws.USUAL);
    }

    @Test
    void theSameEvidenceIsWorkedOutOnceAndOtherEvidenceAnew() {
        CarPosterior first = of(car(4.4, Map.of()), FinishProfile.LACQUER);
        assertThat(of(car(4.4, Map.of()), FinishProfile.LACQUER)).isSameAs(first);
        assertThat(of(car(4.5, Map.of()), FinishProfile.LACQUER).level()[0]).isNotEqualTo(first.level()[0]);
        assertThat(of(car(4.4, Map.of(SignKind.OVERSPRAY, true)), FinishProfile.LACQUER)
                        .scenarios()[0])
                .isLessThan(first.scenarios()[0]);
        assertThat(of(car(4.4, Map.of()), FinishProfile.ENAMEL)).isNotSameAs(first);
    }

    @Test
    void whatIsKnownIsWhatWouldBeWorkedOut() {
        CarPosterior known = of(car(9.8, Map.of()), FinishProfile.LACQUER);
        known.level();
        CarPosterior anew = CarPosterior.worked(car(9.8, Map.of()), FinishProfile.LACQUER, Draws.USUAL);
        assertThat(of(car(9.8, Map.of()), FinishProfile.LACQUER).level()).isEqualTo(anew.level());
        assertThat(known.scenarios()).isEqualTo(anew.scenarios());
    }

    @Test
    void manyCarsDoNotFillTheMemory() {
        CarPosterior first = of(car(5.5, Map.of()), FinishProfile.LACQUER);
        for (int n = 0; n < 6; n++) {
            of(car(6 + n, Map.of()), FinishProfile.LACQUER);
        }
        assertThat(of(car(5.5, Map.of()), FinishProfile.LACQUER))
                .as("left out once six others were worked out")
                .isNotSameAs(first);
    }
}
