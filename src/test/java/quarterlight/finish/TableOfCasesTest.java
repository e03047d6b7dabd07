package quarterlight.finish;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.car.FinishProfile;
import quarterlight.car.ZoneId;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.units.Thickness;
import quarterlight.visit.trial.SignKind;

/** What every inspector would say of a car of 20 outer panels, row by row of the table in docs/methods/finish-history.md. */
class TableOfCasesTest {
    private static final String QUARTER = "quarter-left";
    private static final List<String> ZONES = List.of(
            "hood",
            "cowl",
            "roof",
            "fender-left",
            "fender-right",
            "door-front-left",
            "door-front-right",
            QUARTER,
            "quarter-right",
            "rocker-left",
            "rocker-right",
            "a-pillar-left",
            "a-pillar-right",
            "sail-panel-left",
            "sail-panel-right",
            "decklid",
            "tail-panel",
            "valance-front",
            "valance-rear",
            "grille-panel");
    private static final List<SignKind> FOUR =
            List.of(SignKind.TAPE_EDGE, SignKind.OVERSPRAY, SignKind.TEXTURE_DIFFERS, SignKind.WEAK_MAGNET);
    private static final double USUAL = .12;

    /** A car whose panels can be changed one by one. */
    private static final class Car {
        private final FinishProfile profile;
        private final Map<String, double[]> mil = new java.util.LinkedHashMap<>();
        private final Map<String, Map<SignKind, Boolean>> signs = new java.util.HashMap<>();
        private final Map<String, Integer> over = new java.util.HashMap<>();
        private double rangeUm = 2000;

        Car(FinishProfile profile, double mean, double spread, long seed) {
            this.profile = profile;
            Random random = new Random(seed);
            for (String zone : ZONES) {
                double panel = spread * random.nextGaussian();
                mil.put(
                        zone,
                        random.doubles(5)
                                .map(u -> mean * Math.exp(spread == 0 ? 0 : panel + spread * random.nextGaussian()))
                                .toArray());
            }
        }

        Car spots(String zone, double... values) {
            mil.put(zone, values);
            return this;
        }

        Car over(String zone, double range) {
            rangeUm = range;
            over.merge(zone, 1, Integer::sum);
            return this;
        }

        Car sign(String zone, SignKind sign, boolean seen) {
            signs.computeIfAbsent(zone, z -> new EnumMap<>(SignKind.class)).put(sign, seen);
            return this;
        }

        Car fourAbsentElsewhere() {
            ZONES.stream()
                    .filter(zone -> !zone.equals(QUARTER))
                    .forEach(zone -> FOUR.forEach(s -> sign(zone, s, false)));
            return this;
        }

        FinishEvidence evidence() {
            List<ZoneEvidence> zones = new ArrayList<>();
            mil.forEach((zone, values) -> zones.add(new ZoneEvidence(
                    new ZoneId(zone),
                    true,
                    java.util.Arrays.stream(values).map(v -> v * 25.4).boxed().toList(),
                    over.getOrDefault(zone, 0),
                    0,
                    signs.getOrDefault(zone, Map.of()),
                    Optional.empty())));
            return new FinishEvidence(profile, new Thickness(rangeUm), zones);
        }

        FinishHistory history() {
            return FinishHistory.of(evidence());
        }
    }

    private static Car lacquer(long seed) {
        return new Car(FinishProfile.LACQUER, 5, USUAL, seed);
    }

    private static Car even(FinishProfile profile) {
        return new Car(profile, 6, 0, 1);
    }

    private static ZoneHistory quarter(FinishHistory history) {
        return history.zone(new ZoneId(QUARTER)).orElseThrow();
    }

    private static double percent(double share) {
        return 100 * share;
    }

    private static double repair(Car car) {
        return percent(quarter(car.history()).chances().filler());
    }

    private static double highestElsewhere(FinishHistory history) {
        return history.zones().stream()
                .filter(zone -> !zone.zone().value().equals(QUARTER))
                .mapToDouble(zone -> percent(zone.notFactory()))
                .max()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void aQuarterOfFortyMilAllOverIsFilled(long seed) {
        assertThat(repair(lacquer(seed).spots(QUARTER, 40, 42, 38, 44, 41, 39))).isGreaterThanOrEqualTo(90);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void aQuarterOfSixtyMilEvenlyIsFilledAndTheMagnetSettlesIt(long seed) {
        Car car = lacquer(seed).spots(QUARTER, 60, 60, 60, 60, 60, 60);
        assertThat(repair(car)).isGreaterThanOrEqualTo(95);
        car.sign(QUARTER, SignKind.WEAK_MAGNET, true).sign(QUARTER, SignKind.RIPPLE, true);
        assertThat(repair(car)).isGreaterThanOrEqualTo(99);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void oneSpotOfFortyIsLikelyAPatchAndIsReadAgainFirst(long seed) {
        Car car = lacquer(seed).spots(QUARTER, 5, 5, 5, 40);
        assertThat(repair(car)).isGreaterThanOrEqualTo(50);
        NextMeasurement first = new FinishEngine(FinishProfile.LACQUER)
                .joint(car.evidence())
                .next()
                .get(0);
        assertThat(first.zone().value()).isEqualTo(QUARTER);
        assertThat(first.about()).contains("read again around this place");
    }

    @ParameterizedTest
    @EnumSource(FinishProfile.class)
    void fortyFiveMilEverywhereIsNoFactoryFinishAndPutsTheGaugeInQuestion(FinishProfile profile) {
        FinishHistory history = new Car(profile, 45, USUAL, 1).history();
        assertThat(history.zones())
                .allSatisfy(zone -> assertThat(zone.refinishScore()).isGreaterThanOrEqualTo(95));
        assertThat(history.remarks()).hasSize(1);
        assertThat(history.remarks().get(0))
                .contains("gauge")
                .contains("unit")
                .contains("metal")
                .contains("paint jobs");
    }

    @ParameterizedTest
    @EnumSource(FinishProfile.class)
    void evennessAloneIsNoSign(FinishProfile profile) {
        FinishHistory history = even(profile).history();
        assertThat(history.zones())
                .allSatisfy(zone -> assertThat(zone.refinishScore()).isLessThan(30));
        assertThat(history.remarks()).isEmpty();
    }

    @Test
    void aTapeEdgeSpeaksForItsPanelWhateverTheThickness() {
        FinishHistory history = even(FinishProfile.LACQUER)
                .sign(QUARTER, SignKind.TAPE_EDGE, true)
                .history();
        assertThat(percent(quarter(history).notFactory())).isGreaterThanOrEqualTo(60);
        assertThat(highestElsewhere(history)).isLessThanOrEqualTo(35);
    }

    @Test
    void signsAbsentElsewhereSpeakForElsewhere() {
        Car car = even(FinishProfile.LACQUER).fourAbsentElsewhere().sign(QUARTER, SignKind.TAPE_EDGE, true);
        FinishHistory history = car.history();
        assertThat(percent(quarter(history).notFactory())).isGreaterThanOrEqualTo(60);
        assertThat(highestElsewhere(history)).isLessThanOrEqualTo(15);
        assertThat(percent(quarter(car.sign(QUARTER, SignKind.OVERSPRAY, true).history())
                        .notFactory()))
                .isGreaterThanOrEqualTo(85);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void oneThinPanelIsInQuestionAndTheOthersAreNot(long seed) {
        FinishHistory history = new Car(FinishProfile.ENAMEL, 8, USUAL, seed)
                .spots(QUARTER, 3.6, 3.5, 3.7, 3.6, 3.6)
                .history();
        ZoneHistory thin = quarter(history);
        assertThat(percent(thin.notFactory())).isGreaterThan(30);
        assertThat(thin.chances().stripped())
                .isGreaterThan(thin.chances().over() + thin.chances().filler());
        assertThat(highestElsewhere(history)).isLessThanOrEqualTo(25);
    }

    @Test
    void thereIsNoCliffAtTheRangeOfTheGauge() {
        double below = repair(lacquer(1).spots(QUARTER, 5, 5, 5, 79.9));
        double above = repair(lacquer(1).spots(QUARTER, 5, 5, 5, 80.1));
        assertThat(Math.abs(above - below)).isLessThan(10);
        for (double range : new double[] {1000, 2000, 5000}) {
            double over = repair(lacquer(1).spots(QUARTER, 5, 5, 5).over(QUARTER, range));
            assertThat(Math.abs(over - above)).as("range " + range).isLessThan(10);
        }
    }
}
