package quarterlight.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import quarterlight.car.FinishProfile;
import quarterlight.car.ZoneId;
import quarterlight.finish.FinishReason.Source;
import quarterlight.rust.RustExtent;
import quarterlight.units.Thickness;
import quarterlight.visit.SignKind;

/** Laws of the finish history. */
class FinishHistoryPropertyTest {
    private static final Thickness RANGE = new Thickness(2000);

    @ParameterizedTest
    @EnumSource(FinishProfile.class)
    void aCarNeverMeasuredStaysAtItsPrior(FinishProfile profile) {
        FinishHistory found =
                FinishHistory.of(evidence(profile, ZoneEvidence.none(id("hood")), ZoneEvidence.none(id("roof"))));
        assertThat(found.scenarios().get(Scenario.AS_BUILT)).isCloseTo(0.35, within(1e-12));
        for (ZoneHistory zone : found.zones()) {
            // .35 .97 + .35 .70 + .20 .02 + .10 .02
            assertThat(zone.chances().factory()).isCloseTo(0.5905, within(1e-9));
            assertThat(zone.log10LrOwn()).isZero();
            assertThat(zone.reasons())
                    .allSatisfy(reason -> assertThat(reason.log10Refinish()).isCloseTo(0, within(1e-9)));
        }
    }

    @Test
    void thinLacquerAllRoundIsFactoryFinish() {
        // 1 to 4 mil on every panel, in common practice thin original paint
        Random random = new Random(11);
        List<ZoneEvidence> zones = new ArrayList<>();
        for (int q = 0; q < 18; q++) {
            Double[] spots = new Double[4];
            Arrays.setAll(spots, n -> 25.4 * (1.4 + 2.2 * random.nextDouble()));
            zones.add(values("panel-" + q, spots));
        }
        FinishHistory found = FinishHistory.of(new FinishEvidence(FinishProfile.LACQUER, RANGE, zones));
        assertThat(found.zones())
                .allSatisfy(zone -> assertThat(zone.refinishScore()).isLessThan(10));
    }

    @Test
    void fifteenToTwentyMilEvenlyIsCoatsNotFiller() {
        // a published case: several paint jobs, no filler
        Random random = new Random(12);
        List<ZoneEvidence> zones = new ArrayList<>();
        for (int q = 0; q < 18; q++) {
            Double[] spots = new Double[4];
            Arrays.setAll(spots, n -> 25.4 * (15 + 5 * random.nextDouble()));
            zones.add(values("panel-" + q, spots));
        }
        FinishHistory found = FinishHistory.of(new FinishEvidence(FinishProfile.LACQUER, RANGE, zones));
        assertThat(found.zones()).allSatisfy(zone -> assertThat(zone.chances().over())
                .isGreaterThan(20 * zone.chances().filler()));
    }

    static List<FinishCase> cases() {
        return FinishCase.all();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void aFinerGridAgrees(FinishCase given) {
        FinishProfile profile = given.evidence().profile();
        FinishHistory usual = FinishHistory.of(given.evidence());
        FinishHistory finer =
                new FinishEngine(FinishModel.V1, profile, new GridSize(96, 2, 5, 3, 5)).history(given.evidence());
        for (int q = 0; q < usual.zones().size(); q++) {
            for (History history : History.values()) {
                assertThat(usual.zones().get(q).chances().of(history))
                        .isCloseTo(finer.zones().get(q).chances().of(history), within(2e-4));
            }
            assertThat(usual.zones().get(q).log10LrOwn())
                    .isCloseTo(finer.zones().get(q).log10LrOwn(), within(2e-3));
        }
        assertThat(usual.carLevel().um()).isCloseTo(finer.carLevel().um(), within(0.05));
    }

    @Test
    void manyValuesBeyondTheRangeDoNotOverflow() {
        ZoneEvidence zone = new ZoneEvidence(
                id("hood"), true, List.of(0.0, -3.0, 1e9), 300, 400, Map.of(), Optional.of(RustExtent.HEAVY));
        ZoneHistory found = FinishHistory.of(evidence(FinishProfile.MODERN, zone, values("roof", 100.0, 101.0)))
                .zones()
                .get(0);
        assertThat(found.chances().sum()).isCloseTo(1, within(1e-9));
        assertThat(found.chances().filler()).isGreaterThan(0.99);
        assertThat(found.log10LrOwn()).isEqualTo(9);
    }

    @Test
    void beyondTheRangeSpeaksForFiller() {
        ZoneEvidence over = new ZoneEvidence(id("hood"), true, List.of(100.0), 2, 0, Map.of(), Optional.empty());
        ZoneHistory with =
                FinishHistory.of(evidence(FinishProfile.ENAMEL, over)).zones().get(0);
        ZoneHistory without = FinishHistory.of(evidence(FinishProfile.ENAMEL, values("hood", 100.0)))
                .zones()
                .get(0);
        assertThat(with.chances().filler()).isGreaterThan(10 * without.chances().filler());
    }

    @Test
    void aZoneTheGaugeCannotReadIsJudgedBySignsAlone() {
        ZoneEvidence deaf = new ZoneEvidence(
                id("hood"),
                false,
                List.of(900.0),
                1,
                5,
                Map.of(SignKind.OVERSPRAY, true, SignKind.WEAK_MAGNET, true),
                Optional.empty());
        ZoneEvidence signOnly =
                new ZoneEvidence(id("hood"), true, List.of(), 0, 0, Map.of(SignKind.OVERSPRAY, true), Optional.empty());
        ZoneHistory found =
                FinishHistory.of(evidence(FinishProfile.UNKNOWN, deaf)).zones().get(0);
        ZoneHistory same = FinishHistory.of(evidence(FinishProfile.UNKNOWN, signOnly))
                .zones()
                .get(0);
        assertThat(found.readable()).isFalse();
        assertThat(found.chances()).isEqualTo(same.chances());
        assertThat(found.reasons()).noneMatch(reason -> reason.source() == Source.VALUES);
    }

    @Test
    void aReasonIsTheOddsWithoutIt() {
        FinishCase given = FinishCase.named("signs decide a middling panel");
        ZoneHistory whole = FinishHistory.of(given.evidence()).zones().get(1);
        ZoneEvidence fender = given.evidence().zones().get(1);
        Map<SignKind, Boolean> fewer = Map.of(SignKind.OVERSPRAY, true, SignKind.WEAK_MAGNET, false);
        ZoneEvidence without = new ZoneEvidence(fender.zone(), true, fender.spotsUm(), 0, 0, fewer, Optional.empty());
        ZoneHistory left =
                FinishHistory.of(given.evidence().with(without)).zones().get(1);
        FinishReason reason = whole.reasons().stream()
                .filter(r -> r.sign().equals(Optional.of(SignKind.TAPE_EDGE)))
                .findFirst()
                .orElseThrow();
        assertThat(reason.log10Refinish()).isCloseTo(odds(whole) - odds(left), within(1e-9));
        FinishReason rest = whole.reasons().stream()
                .filter(r -> r.source() == Source.REST_OF_CAR)
                .findFirst()
                .orElseThrow();
        ZoneHistory alone = FinishHistory.of(evidence(FinishProfile.LACQUER, fender))
                .zones()
                .get(0);
        assertThat(rest.log10Refinish()).isCloseTo(odds(whole) - odds(alone), within(1e-9));
    }

    @Test
    void reasonsComeHeaviestFirst() {
        for (ZoneHistory zone : FinishHistory.of(
                        FinishCase.named("gauge finds no metal on two spots, heavy rust beside it")
                                .evidence())
                .zones()) {
            assertThat(zone.reasons())
                    .isSortedAccordingTo(
                            (a, b) -> Double.compare(Math.abs(b.log10Refinish()), Math.abs(a.log10Refinish())));
        }
    }

    @Test
    void profileAndSignsCanBeOverridden() {
        FinishModel thicker = FinishModel.V1.withLevel("own", FinishProfile.LACQUER, new LogNormal(8, 0.2));
        FinishEvidence evidence = evidence(FinishProfile.LACQUER, values("hood", 200.0, 205.0, 198.0));
        double own = new FinishEngine(thicker, FinishProfile.LACQUER, GridSize.USUAL)
                .history(evidence)
                .zones()
                .get(0)
                .chances()
                .factory();
        assertThat(own)
                .isGreaterThan(
                        FinishHistory.of(evidence).zones().get(0).chances().factory());
    }

    private static double odds(ZoneHistory zone) {
        return Math.log10(zone.notFactory() / zone.chances().factory());
    }

    private static FinishEvidence evidence(FinishProfile profile, ZoneEvidence... zones) {
        return new FinishEvidence(profile, RANGE, List.of(zones));
    }

    private static ZoneEvidence values(String zone, Double... um) {
        return new ZoneEvidence(id(zone), true, List.of(um), 0, 0, Map.of(), Optional.empty());
    }

    private static ZoneId id(String zone) {
        return new ZoneId(zone);
    }
}
