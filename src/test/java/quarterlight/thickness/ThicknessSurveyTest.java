package quarterlight.thickness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import quarterlight.car.Substrate;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.table.ZoneTable;
import quarterlight.thickness.gauge.GaugeCorrection;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.ReportLength;
import quarterlight.visit.VisitChoices;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.reading.GaugeCheck;
import quarterlight.visit.reading.GaugeMoment;
import quarterlight.visit.reading.GaugeSurface;
import quarterlight.visit.reading.GaugeValue;

class ThicknessSurveyTest {
    private final ZoneCatalog catalog = ZoneTable.load();
    private final VisitBuilder visit = new VisitBuilder();

    @Test
    void spotsAreMeansOfTheirReadingsAndMedianIsOverReadings() {
        visit.reading("roof", "100", "a", "", "")
                .reading("roof", "110", "a", "", "")
                .reading("roof", "120", "a", "", "")
                .reading("roof", "140")
                .reading("roof", "150");
        ZoneThickness roof = zone("roof");
        assertThat(roof.readings()).isEqualTo(5);
        assertThat(roof.spotsUm()).containsExactly(110, 140, 150);
        assertThat(roof.meanUm().getAsDouble()).isCloseTo(400.0 / 3, within(1e-9));
        assertThat(roof.medianUm().getAsDouble()).isEqualTo(120);
        assertThat(roof.madUm().getAsDouble()).isCloseTo(20 * 1.4826, within(1e-9));
        // sd of 110, 140, 150 is 20.8167; t(0.975, 2) = 4.303
        assertThat(roof.sdUm().getAsDouble()).isCloseTo(20.8167, within(1e-4));
        assertThat(roof.ci95HighUm().getAsDouble() - roof.meanUm().getAsDouble())
                .isCloseTo(4.303 * 20.8167 / Math.sqrt(3), within(0.01));
        assertThat(roof.minUm().getAsDouble()).isEqualTo(100);
        assertThat(roof.maxUm().getAsDouble()).isEqualTo(150);
    }

    @Test
    void oneSpotHasAMeanAndNoScatter() {
        visit.reading("roof", "100", "a", "", "").reading("roof", "104", "a", "", "");
        ZoneThickness roof = zone("roof");
        assertThat(roof.meanUm()).hasValue(102);
        assertThat(roof.sdUm()).isEmpty();
        assertThat(roof.ci95LowUm()).isEmpty();
        assertThat(roof.valueSpots()).isEqualTo(1);
    }

    @Test
    void noneCountsBySpotAndOverByReading() {
        visit.reading("hood", "none", "a", "", "")
                .reading("hood", "none", "a", "", "")
                .reading("hood", "none")
                .reading("hood", "over", "b", "", "")
                .reading("hood", "over", "b", "", "")
                .reading("hood", "none", "c", "", "")
                .reading("hood", "over", "c", "", "");
        ZoneThickness hood = zone("hood");
        assertThat(hood.noMetal()).isEqualTo(2);
        assertThat(hood.overRange()).isEqualTo(3);
        assertThat(hood.overSpots()).isEqualTo(2);
        assertThat(hood.readings()).isZero();
        assertThat(hood.meanUm()).isEmpty();
        assertThat(hood.medianUm()).isEmpty();
        assertThat(hood.minUm()).isEmpty();
    }

    @Test
    void aSpotWithANumberIsItsNumbersWhateverElseWasShownThere() {
        visit.reading("hood", "300", "a", "", "")
                .reading("hood", "over", "a", "", "")
                .reading("hood", "none", "a", "", "");
        ZoneThickness hood = zone("hood");
        assertThat(hood.spotsUm()).containsExactly(300);
        assertThat(hood.overRange()).isEqualTo(1);
        assertThat(hood.overSpots()).isZero();
        assertThat(hood.noMetal()).isZero();
    }

    @Test
    void excludedReadingsAreCountedAndLeftOut() {
        visit.reading("hood", "900", "", "", "factory joint")
                .reading("hood", "none", "", "", "stripe")
                .reading("hood", "100");
        ZoneThickness hood = zone("hood");
        assertThat(hood.excluded()).isEqualTo(2);
        assertThat(hood.meanUm()).hasValue(100);
        assertThat(hood.noMetal()).isZero();
    }

    @Test
    void aZoneWithNothingButExcludedReadingsIsListed() {
        visit.reading("hood", "900", "", "", "joint");
        assertThat(zone("hood").readings()).isZero();
        assertThat(zone("hood").excluded()).isEqualTo(1);
    }

    @Test
    void zonesComeInTheOrderOfTheTable() {
        visit.reading("roof", "100").reading("hood", "100");
        assertThat(survey().zones()).extracting(zone -> zone.zone().value()).containsExactly("hood", "roof");
    }

    @Test
    void zonesThatTheGaugeCannotReadSaySo() {
        visit.substrate("hood", Substrate.FIBERGLASS)
                .substrate("roof", Substrate.ALUMINUM)
                .substrate("decklid", Substrate.ALUMINUM)
                .substrate("cowl", Substrate.ALUMINUM)
                .reading("hood", "none")
                .reading("roof", "120", "", "EDDY", "")
                .reading("decklid", "none", "", "MAGNETIC", "")
                .reading("tail-panel", "100");
        assertThat(zone("hood").readable()).isFalse();
        assertThat(zone("roof").readable()).isTrue();
        assertThat(zone("decklid").readable()).isFalse();
        assertThat(zone("tail-panel").readable()).isTrue();
    }

    @Test
    void aReadingInAModeThatDoesNotReadTheZoneTakesNoPart() {
        visit.substrate("hood", Substrate.ALUMINUM)
                .reading("hood", "120", "", "EDDY", "")
                .reading("hood", "124", "", "EDDY", "")
                .reading("hood", "900", "", "MAGNETIC", "")
                .reading("hood", "none", "", "MAGNETIC", "");
        ZoneThickness hood = zone("hood");
        assertThat(hood.readable()).isTrue();
        assertThat(hood.spotsUm()).containsExactly(120, 124);
        assertThat(hood.noMetal()).isZero();
        assertThat(hood.excluded()).isEqualTo(2);
    }

    @Test
    void aluminumThatGivesNothingButNoMetalIsNotReadByThisGauge() {
        visit.substrate("hood", Substrate.ALUMINUM).reading("hood", "none").reading("hood", "none");
        assertThat(zone("hood").readable()).isFalse();
    }

    @Test
    void aCorrectionMovesTheNumbersAndKeepsTheReadings() {
        visit.reading("hood", "104");
        ThicknessSurvey corrected = ThicknessSurvey.of(visit.build(), catalog, new GaugeCorrection(4, 1.1));
        assertThat(corrected.zones().get(0).meanUm().getAsDouble()).isCloseTo(110, within(1e-9));
        assertThat(zone("hood").meanUm()).hasValue(104);
    }

    @Test
    void theCorrectionIsAppliedIfTheInspectorChoseItAndTheChecksAllowIt() {
        VisitRecord typed = visit.reading("hood", "104").build();
        VisitFacts chosen = typed.facts()
                .with(new VisitChoices(true, Optional.empty(), Optional.empty(), Optional.empty(), ReportLength.FULL));
        List<GaugeCheck> checks = List.of(check(GaugeSurface.BARE, "0", "4"), check(GaugeSurface.SHIM, "100", "104"));
        VisitParts unchecked = new VisitParts(chosen).readings(typed.readings());
        assertThat(ThicknessSurvey.of(unchecked.record(), catalog)
                        .zones()
                        .get(0)
                        .meanUm())
                .hasValue(104);
        VisitRecord checked = unchecked.gaugeChecks(VisitParts.rows(checks)).record();
        assertThat(ThicknessSurvey.of(checked, catalog).zones().get(0).meanUm().getAsDouble())
                .isCloseTo(100, within(1e-9));
    }

    private static GaugeCheck check(GaugeSurface on, String nominal, String shown) {
        return new GaugeCheck(
                GaugeMoment.BEFORE,
                on,
                new GaugeValue.Measured(new BigDecimal(nominal), ThicknessUnit.UM),
                new GaugeValue.Measured(new BigDecimal(shown), ThicknessUnit.UM),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty());
    }

    @Test
    void leftIsComparedWithRightAndEachZoneWithTheRest() {
        for (String value : List.of("100", "102", "98")) {
            visit.reading("fender-left", value).reading("roof", value);
        }
        for (String value : List.of("200", "204", "196")) {
            visit.reading("fender-right", value);
        }
        CarThickness car = CarThickness.of(survey(), catalog);
        assertThat(car.sides()).hasSize(1);
        assertThat(car.sides().get(0).difference().difference()).isCloseTo(-100, within(1e-9));
        assertThat(car.sides().get(0).difference().isClear()).isTrue();
        assertThat(car.against()).hasSize(3);
        assertThat(car.components().orElseThrow().sdBetween()).isGreaterThan(50);
    }

    private ThicknessSurvey survey() {
        return ThicknessSurvey.of(visit.build(), catalog);
    }

    private ZoneThickness zone(String id) {
        return survey().zone(new ZoneId(id)).orElseThrow();
    }
}
