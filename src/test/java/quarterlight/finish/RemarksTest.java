package quarterlight.finish;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.car.FinishProfile;
import quarterlight.car.ZoneId;
import quarterlight.units.Thickness;
import quarterlight.visit.trial.SignKind;

/** Readings that no history explains are remarked on: medians above 20 mil (508 um) or below 1 mil (25.4 um) on seven of ten of four panels and more. */
class RemarksTest {
    private static final double RANGE_UM = 1000;

    private static ZoneEvidence zone(String id, boolean readable, int over, Double... um) {
        return new ZoneEvidence(new ZoneId(id), readable, List.of(um), over, 0, Map.of(), Optional.empty());
    }

    private static List<String> remarks(List<ZoneEvidence> zones) {
        return Remarks.of(new FinishEvidence(FinishProfile.UNKNOWN, new Thickness(RANGE_UM), zones));
    }

    private static List<String> panels(int odd, double oddUm, int usual) {
        List<ZoneEvidence> zones = new ArrayList<>();
        for (int i = 0; i < odd + usual; i++) {
            zones.add(zone("panel-" + i, true, 0, i < odd ? oddUm : 120));
        }
        zones.add(zone("bare", true, 0));
        zones.add(zone("plastic", false, 0, 600.0));
        return remarks(zones);
    }

    @ParameterizedTest
    @CsvSource({
        "7, 508.1, 3, above 20 mil",
        "7, 508.0, 3, ''",
        "6, 508.1, 3, ''",
        "4, 508.1, 0, above 20 mil",
        "3, 508.1, 0, ''",
        "7, 25.3, 3, below 1 mil",
        "7, 25.4, 3, ''",
        "6, 25.3, 3, ''",
        "4, 25.3, 0, below 1 mil",
        "3, 25.3, 0, ''",
    })
    void sevenOfTenPanelsBeyondALimitAreRemarkedOn(int odd, double um, int usual, String said) {
        List<String> remarks = panels(odd, um, usual);
        if (said.isEmpty()) {
            assertThat(remarks).isEmpty();
        } else {
            assertThat(remarks)
                    .singleElement()
                    .asString()
                    .contains(said, odd + " of " + (odd + usual), "whether the gauge was right");
        }
    }

    @Test
    void theMedianCountsAndASpotBeyondTheRangeCountsAsTheRange() {
        List<ZoneEvidence> even = new ArrayList<>();
        List<ZoneEvidence> thinner = new ArrayList<>();
        List<ZoneEvidence> over = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            even.add(zone("panel-" + i, true, 0, 900.0, 100.0, 420.0, 600.0));
            thinner.add(zone("panel-" + i, true, 0, 900.0, 100.0, 410.0, 600.0));
            over.add(zone("panel-" + i, true, 2, 90.0));
        }
        assertThat(remarks(even)).hasSize(1);
        assertThat(remarks(thinner)).isEmpty();
        assertThat(remarks(over)).hasSize(1);
    }

    @Test
    void whatTheGaugeCannotReadPlaysNoPartNorDoesAMagnetThere() {
        ZoneEvidence fiberglass = new ZoneEvidence(
                new ZoneId("hood"),
                false,
                List.of(120.0),
                1,
                1,
                Map.of(SignKind.WEAK_MAGNET, true, SignKind.RIPPLE, true),
                Optional.empty());
        assertThat(fiberglass.usable().signs()).containsOnlyKeys(SignKind.RIPPLE);
        assertThat(fiberglass.usable().hasValues()).isFalse();
        assertThat(fiberglass.usable().noMetal()).isZero();
        assertThat(fiberglass.isJudged()).isTrue();
        assertThat(zone("hood", false, 1, 120.0).isJudged()).isFalse();
        assertThat(zone("hood", true, 1).isJudged()).isTrue();
        assertThat(zone("hood", true, 0).isJudged()).isFalse();
        assertThat(new ZoneEvidence(new ZoneId("hood"), true, List.of(), 0, 1, Map.of(), Optional.empty()).isJudged())
                .isTrue();
    }
}
