package quarterlight.finish;

import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every case that an independent program computed. */
class FinishHistoryReferenceTest {
    private static final double CHANCE = 0.01;
    private static final double LOG_RATIO = 0.05;

    static List<FinishCase> cases() {
        return FinishCase.all();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void agreesWithTheIndependentProgram(FinishCase given) {
        FinishHistory found = FinishHistory.of(given.evidence());
        SoftAssertions soft = new SoftAssertions();
        JsonNode expected = given.expected();
        double level = expected.get("car_level_um").asDouble();
        soft.assertThat(found.carLevel().um()).as("car level").isCloseTo(level, within(Math.max(0.5, 0.01 * level)));
        double sd = expected.get("car_level_sd_um").asDouble();
        soft.assertThat(found.carLevelSd().um()).as("level sd").isCloseTo(sd, within(Math.max(0.5, 0.01 * sd)));
        for (Scenario scenario : Scenario.values()) {
            soft.assertThat(found.scenarios().get(scenario))
                    .as(scenario.word())
                    .isCloseTo(expected.get("scenarios").get(scenario.word()).asDouble(), within(CHANCE));
        }
        for (int q = 0; q < found.zones().size(); q++) {
            check(soft, found.zones().get(q), expected.get("expected").get(q));
        }
        soft.assertAll();
    }

    private static void check(SoftAssertions soft, ZoneHistory zone, JsonNode expected) {
        String name = zone.zone().value() + " ";
        for (History history : History.values()) {
            soft.assertThat(zone.chances().of(history))
                    .as(name + history.word())
                    .isCloseTo(expected.get(history.word()).asDouble(), within(CHANCE));
        }
        soft.assertThat(zone.notFactoryLow())
                .as(name + "low")
                .isCloseTo(expected.get("not_factory_low").asDouble(), within(CHANCE));
        soft.assertThat(zone.notFactoryHigh())
                .as(name + "high")
                .isCloseTo(expected.get("not_factory_high").asDouble(), within(CHANCE));
        double logRatio = expected.get("log10_lr_own").asDouble();
        if (Math.abs(logRatio) <= 6) {
            soft.assertThat(zone.log10LrOwn()).as(name + "own").isCloseTo(logRatio, within(LOG_RATIO));
        }
    }
}
