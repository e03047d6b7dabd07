package quarterlight.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quarterlight.car.FinishProfile;
import quarterlight.car.ZoneId;
import quarterlight.finish.history.FinishReason;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.finish.model.Panel;
import quarterlight.rust.RustExtent;
import quarterlight.units.Thickness;
import quarterlight.visit.trial.SignKind;

/** What is told of one zone, by the rule of odds: posterior odds are prior odds times the weight of the evidence. */
class ZoneReportTest {
    private static ZoneEvidence zone(
            String id,
            List<Double> um,
            int over,
            int noMetal,
            Map<SignKind, Boolean> signs,
            Optional<RustExtent> rust) {
        return new ZoneEvidence(new ZoneId(id), true, um, over, noMetal, signs, rust);
    }

    private static FinishEvidence evidence(ZoneEvidence... zones) {
        return new FinishEvidence(FinishProfile.LACQUER, new Thickness(2000), List.of(zones));
    }

    private static FinishHistory history(ZoneEvidence... zones) {
        return new FinishEngine(FinishProfile.LACQUER).history(evidence(zones));
    }

    private static double logOdds(double chance) {
        return Math.log10(chance / (1 - chance));
    }

    @Test
    void theOneSignOfTheOnlyPanelMovesTheOddsFromThePriorToWhatIsSaid() {
        FinishHistory.ZonePrior prior =
                history(ZoneEvidence.none(new ZoneId("hood"))).priors().get(0);
        ZoneHistory seen = history(zone("hood", List.of(), 0, 0, Map.of(SignKind.TAPE_EDGE, true), Optional.empty()))
                .zones()
                .get(0);
        double refinish = logOdds(1 - seen.chances().factory()) - logOdds(prior.notFactory());
        double repair = logOdds(seen.chances().filler()) - logOdds(prior.filler());
        assertThat(refinish).isGreaterThan(.5);
        assertThat(seen.log10LrOwn()).isCloseTo(refinish, within(1e-9));
        assertThat(seen.log10LrFiller()).isCloseTo(repair, within(1e-9));
        FinishReason sign = seen.reasons().stream()
                .filter(reason -> reason.source() == FinishReason.Source.SIGN)
                .findFirst()
                .orElseThrow();
        assertThat(sign.log10Refinish()).isCloseTo(refinish, within(1e-9));
        assertThat(sign.log10Repair()).isCloseTo(repair, within(1e-9));
        FinishReason rest = seen.reasons().stream()
                .filter(reason -> reason.source() == FinishReason.Source.REST_OF_CAR)
                .findFirst()
                .orElseThrow();
        assertThat(rest.log10Refinish()).as("there is no other panel").isCloseTo(0, within(.02));
    }

    @Test
    void eachKindOfEvidenceIsAReasonAndNoOther() {
        ZoneHistory all = history(zone(
                        "hood", List.of(120.0), 0, 1, Map.of(SignKind.TAPE_EDGE, true), Optional.of(RustExtent.LIGHT)))
                .zones()
                .get(0);
        assertThat(all.reasons())
                .extracting(FinishReason::source)
                .containsExactlyInAnyOrder(FinishReason.Source.values());
        ZoneHistory values = history(zone("hood", List.of(120.0), 0, 0, Map.of(), Optional.empty()))
                .zones()
                .get(0);
        assertThat(values.reasons())
                .extracting(FinishReason::source)
                .containsExactlyInAnyOrder(FinishReason.Source.VALUES, FinishReason.Source.REST_OF_CAR);
    }

    @Test
    void aSignNotedOnOnePanelAndNowhereAsAbsentIsSilentOnTheOthers() {
        ZoneEvidence door = zone("left-front-door", List.of(120.0), 0, 0, Map.of(), Optional.empty());
        ZoneEvidence hood = zone("hood", List.of(), 0, 0, Map.of(SignKind.TAPE_EDGE, true), Optional.empty());
        ZoneEvidence roof = zone("roof", List.of(), 0, 0, Map.of(SignKind.TAPE_EDGE, false), Optional.empty());
        List<Panel> two = FinishEngine.panels(evidence(door, hood), List.of(door, hood));
        assertThat(two.get(0).silent()).containsExactly(SignKind.TAPE_EDGE);
        assertThat(two.get(1).silent()).as("it is told there").isEmpty();
        List<Panel> three = FinishEngine.panels(evidence(door, hood, roof), List.of(door, hood, roof));
        assertThat(three).allSatisfy(panel -> assertThat(panel.silent()).isEmpty());
    }

    @Test
    void spotsBeyondTheRangeCountAsSpots() {
        assertThat(zone("hood", List.of(120.0, 130.0), 3, 1, Map.of(), Optional.empty())
                        .spots())
                .isEqualTo(5);
    }
}
