package quarterlight.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.car.FinishProfile;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.units.Thickness;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.trial.SignKind;

/** Laws of the finish history, on seeded random cars. */
class FinishHistoryPropertyTest {
    private static final List<String> ZONES = List.of(
            "hood",
            "fender-left",
            "fender-right",
            "door-front-left",
            "door-front-right",
            "quarter-left",
            "quarter-right",
            "roof");

    private static List<ZoneEvidence> car(long seed) {
        Random random = new Random(seed);
        List<ZoneEvidence> zones = new ArrayList<>();
        for (String zone : ZONES) {
            double level = (random.nextInt(4) == 0 ? 230 : 125) * Math.exp(.1 * random.nextGaussian());
            List<Double> spots = new ArrayList<>();
            for (int n = 0; n < 4; n++) {
                spots.add(level * Math.exp(.1 * random.nextGaussian()));
            }
            zones.add(zone(zone, spots, Map.of(SignKind.OVERSPRAY, random.nextInt(4) == 0)));
        }
        return zones;
    }

    private static ZoneEvidence zone(String id, List<Double> spots, Map<SignKind, Boolean> signs) {
        return new ZoneEvidence(new ZoneId(id), true, spots, 0, 0, signs, Optional.empty());
    }

    private static FinishHistory history(List<ZoneEvidence> zones) {
        return FinishHistory.of(new FinishEvidence(FinishProfile.LACQUER, new Thickness(2000), zones));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void theOrderOfZonesAndSpotsIsNothing(long seed) {
        List<ZoneEvidence> zones = car(seed);
        List<ZoneEvidence> shuffled = new ArrayList<>();
        for (ZoneEvidence zone : zones) {
            List<Double> spots = new ArrayList<>(zone.spotsUm());
            Collections.shuffle(spots, new Random(seed));
            shuffled.add(zone(zone.zone().value(), spots, zone.signs()));
        }
        Collections.shuffle(shuffled, new Random(seed));
        FinishHistory one = history(zones);
        FinishHistory other = history(shuffled);
        for (ZoneHistory zone : one.zones()) {
            assertThat(other.zone(zone.zone()).orElseThrow().notFactory())
                    .as("seed %d, %s", seed, zone.zone())
                    .isCloseTo(zone.notFactory(), within(1e-9));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {3, 4})
    void leftAndRightAreAlike(long seed) {
        List<ZoneEvidence> mirrored = car(seed).stream()
                .map(zone -> zone(
                        zone.zone().value().endsWith("-left")
                                ? zone.zone().value().replace("-left", "-right")
                                : zone.zone().value().replace("-right", "-left"),
                        zone.spotsUm(),
                        zone.signs()))
                .toList();
        FinishHistory one = history(car(seed));
        FinishHistory other = history(mirrored);
        double left = one.zone(new ZoneId("quarter-left")).orElseThrow().notFactory();
        double right = other.zone(new ZoneId("quarter-right")).orElseThrow().notFactory();
        assertThat(right).as("seed " + seed).isCloseTo(left, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {3, 10, 22, 40})
    void moreReadingsOfTheSameNeverSpeakTheOtherWay(double mil) {
        double last = Double.NaN;
        boolean above = false;
        for (int count = 1; count <= 9; count += 2) {
            List<ZoneEvidence> zones = car(5);
            zones.removeIf(zone -> zone.zone().value().equals("roof"));
            zones.add(zone("roof", Collections.nCopies(count, mil * 25.4), Map.of()));
            ZoneHistory roof = history(zones).zone(new ZoneId("roof")).orElseThrow();
            if (count == 1) {
                above = roof.notFactory() > .5;
            } else if (mil >= 10) {
                assertThat(above ? roof.notFactory() : 1 - roof.notFactory())
                        .as(mil + " mil, " + count + " spots")
                        .isGreaterThan((above ? last : 1 - last) - .05);
            }
            last = roof.notFactory();
        }
    }

    /** From three spots on: one alone may stand on a patch. */
    @ParameterizedTest
    @ValueSource(doubles = {22, 40})
    void aThickPanelIsNoLessFilledForBeingReadMoreOften(double mil) {
        double first = filler(mil, 3);
        assertThat(first).isGreaterThan(.75);
        for (int count : new int[] {5, 9, 15}) {
            assertThat(filler(mil, count)).as(mil + " mil, " + count + " spots").isCloseTo(first, within(.02));
        }
    }

    private static double filler(double mil, int count) {
        List<ZoneEvidence> zones = car(5);
        zones.removeIf(zone -> zone.zone().value().equals("hood"));
        zones.add(zone("hood", Collections.nCopies(count, mil * 25.4), Map.of()));
        return history(zones).zone(new ZoneId("hood")).orElseThrow().chances().filler();
    }

    /** Three spots of 12 mil among nine of 5: side by side, or scattered. */
    @Test
    void thickSpotsSideBySideSpeakLouderForAPatchThanScatteredOnes() {
        double together = patched(Set.of(0, 1, 2));
        double apart = patched(Set.of(0, 5, 8));
        double nowhere = patched(Set.of());
        assertThat(together / (1 - together)).isGreaterThan(1.5 * apart / (1 - apart));
        assertThat(nowhere).isBetween(apart, together);
    }

    /** @param thick which places along the panel are thick; empty for three whose places are not known */
    private static double patched(Set<Integer> thick) {
        List<Double> spots = new ArrayList<>();
        List<ViewPoint> places = new ArrayList<>();
        for (int n = 0; n < 9; n++) {
            boolean isThick = thick.isEmpty() ? n < 3 : thick.contains(n);
            spots.add((isThick ? 12 : 5 + .1 * (n % 3)) * 25.4);
            places.add(new ViewPoint(View.LEFT, .1 + .05 * n, .5));
        }
        List<ZoneEvidence> zones = car(5);
        zones.removeIf(zone -> zone.zone().value().equals("quarter-left"));
        zones.add(new ZoneEvidence(
                new ZoneId("quarter-left"),
                true,
                spots,
                0,
                0,
                Map.of(),
                Optional.empty(),
                thick.isEmpty() ? List.of() : places));
        return history(zones)
                .zone(new ZoneId("quarter-left"))
                .orElseThrow()
                .chances()
                .filler();
    }

    @Test
    void aZoneWithNeitherReadingNorSignHasNoLikelihood() {
        List<ZoneEvidence> zones = car(6);
        zones.add(ZoneEvidence.none(new ZoneId("decklid")));
        FinishHistory with = history(zones);
        assertThat(with.zone(new ZoneId("decklid"))).isEmpty();
        assertThat(with.prior(new ZoneId("decklid")).orElseThrow().notFactory()).isBetween(.01, .99);
        FinishHistory without = history(car(6));
        assertThat(with.zones().get(0).notFactory())
                .isCloseTo(without.zones().get(0).notFactory(), within(1e-9));
    }

    @Test
    void nobodyReadsZeroOrAHundred() {
        assertThat(ZoneHistory.shown(0)).isEqualTo("under 1");
        assertThat(ZoneHistory.shown(1)).isEqualTo("1");
        assertThat(ZoneHistory.shown(99)).isEqualTo("99");
        assertThat(ZoneHistory.shown(100)).isEqualTo("over 99");
        assertThat(ZoneHistory.shown(.004)).isEqualTo("under 1");
        assertThat(ZoneHistory.shown(.005)).isEqualTo("1");
        assertThat(ZoneHistory.shown(.995)).isEqualTo("over 99");
        assertThat(ZoneHistory.shown(.9949)).isEqualTo("99");
    }

    @Test
    void storiesAndJuryAndBandHangTogether() {
        FinishHistory history = history(car(7));
        assertThat(history.scenarios().values().stream().mapToDouble(p -> p).sum())
                .isCloseTo(1, within(1e-9));
        for (ZoneHistory zone : history.zones()) {
            assertThat(zone.chances().sum()).isCloseTo(1, within(1e-9));
            assertThat(zone.stories().stream()
                            .mapToDouble(ZoneHistory.Story::chance)
                            .sum())
                    .isCloseTo(1, within(1e-9));
            assertThat(zone.notFactory()).isBetween(zone.notFactoryLow(), zone.notFactoryHigh());
            assertThat(zone.jury()).hasSize(4);
            double least = zone.jury().values().stream()
                    .mapToDouble(ZoneHistory.Verdict::notFactory)
                    .min()
                    .orElseThrow();
            double most = zone.jury().values().stream()
                    .mapToDouble(ZoneHistory.Verdict::notFactory)
                    .max()
                    .orElseThrow();
            assertThat(zone.notFactory()).isBetween(least, most);
        }
    }
}
