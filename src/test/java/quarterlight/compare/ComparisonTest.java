package quarterlight.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.car.body.BodyStyle;
import quarterlight.findings.Findings;
import quarterlight.finish.history.Chances;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.rust.TestVisits;
import quarterlight.table.CounterpartTable;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.CoverageTable;
import quarterlight.table.list.DatePatternTable;
import quarterlight.units.Area;
import quarterlight.units.ThicknessText;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale.KnownLength;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.annotation.TraceKind;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.trial.Trial;
import quarterlight.visit.trial.TrialResult;

class ComparisonTest {
    private static final ZoneCatalog CATALOG = ZoneTable.load();
    private static final ZoneId HOOD = new ZoneId("hood");
    private static final ThicknessText UM = new ThicknessText(ThicknessUnit.UM);
    private static final Comparison.Terms TERMS =
            new Comparison.Terms(CoverageTable.load(), CounterpartTable.load(), Letters.AB, UM);

    /** A car of few facts, put together step by step. */
    private static final class Told {
        private final BodyStyle style;
        private final List<Reading> readings = new ArrayList<>();
        private final List<Trace> traces = new ArrayList<>();
        private final List<Statement> statements = new ArrayList<>();
        private final List<Trial> trials = new ArrayList<>();
        private final List<Mark> marks = new ArrayList<>();

        Told(BodyStyle style) {
            this.style = style;
        }

        Told measured(String zone, int... um) {
            for (int value : um) {
                readings.add(new Reading(
                        new ZoneId(zone),
                        new GaugeValue.Measured(BigDecimal.valueOf(value), ThicknessUnit.UM),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));
            }
            return this;
        }

        Told rusted(TraceKind kind, double sideMm) {
            Outline square = new Outline(
                    List.of(
                            new PixelPoint(0, 0),
                            new PixelPoint(1000, 0),
                            new PixelPoint(1000, 1000),
                            new PixelPoint(0, 1000)),
                    List.of());
            traces.add(new Trace(
                    new PhotoId(1),
                    kind,
                    square,
                    new KnownLength(new PixelPoint(0, 0), new PixelPoint(1000, 0), sideMm),
                    HOOD,
                    Optional.empty(),
                    Optional.empty()));
            return this;
        }

        Told clean() {
            statements.add(new Statement(
                    HOOD,
                    Facets.of(Condition.NO_RUST),
                    "clean",
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty()));
            return this;
        }

        Told stamped(Mark mark) {
            marks.add(mark);
            return this;
        }

        Told tried(String item, TrialResult result) {
            trials.add(new Trial(item, result, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
            return this;
        }

        Findings findings() {
            VisitRecord visit = new VisitParts(TestVisits.facts(style))
                    .photos(List.of(TestVisits.photo(1, MediaKind.PHOTO, 4000, 3000)))
                    .readings(TestVisits.rows(readings))
                    .marks(TestVisits.rows(marks))
                    .traces(TestVisits.rows(traces))
                    .trials(TestVisits.rows(trials))
                    .statements(TestVisits.rows(statements))
                    .record();
            return Findings.of(visit, CATALOG, Map.of(HOOD, new Area(1_000_000)), DatePatternTable.load());
        }
    }

    private static Told coupe() {
        return new Told(BodyStyle.COUPE);
    }

    private static Comparison compare(Told a, Told b) {
        return Comparison.of(a.findings(), b.findings(), TERMS);
    }

    private static List<Contrast> contrasts(ZoneFacts a, ZoneFacts b) {
        return ZoneContrasts.of(a, b, Letters.AB, UM);
    }

    /** Contrasts of the hood alone. */
    private static List<Contrast> hood(Told a, Told b) {
        return ZoneContrasts.of(
                ZoneFacts.of(a.findings(), HOOD, List.of()),
                ZoneFacts.of(b.findings(), HOOD, List.of()),
                Letters.AB,
                UM);
    }

    @Test
    void aCarBesideItselfDiffersInNothing() {
        Comparison same = compare(
                coupe().measured("hood", 120, 128, 133).clean(),
                coupe().measured("hood", 120, 128, 133).clean());
        assertThat(same.zones()).allSatisfy(zone -> assertThat(zone.contrasts()).isEmpty());
        CountComparison refinished = same.refinished().orElseThrow();
        assertThat(refinished.a().mean()).isEqualTo(refinished.b().mean());
        assertThat(refinished.chanceAFewer()).isCloseTo(refinished.chanceBFewer(), within(1e-12));
        assertThat(refinished.chanceAFewer() + refinished.chanceEqual() + refinished.chanceBFewer())
                .isCloseTo(1, within(1e-9));
    }

    @Test
    void theCountsAgreeWithTheChancesOfTheZonesAndWithAllPairsOfCounts() {
        Told thick = coupe();
        Told even = coupe();
        for (String zone : List.of("hood", "roof", "decklid", "fender-left", "door-front-left", "quarter-left")) {
            even.measured(zone, 118, 125, 130, 122);
            thick.measured(zone, zone.equals("fender-left") ? 640 : 250, 300, 280, 265);
        }
        Findings a = even.findings();
        Findings b = thick.findings();
        Comparison comparison = Comparison.of(a, b, TERMS);
        double sumOfChances = a.history().zones().stream()
                .mapToDouble(zone -> zone.notFactory())
                .sum();
        assertThat(comparison.refinished().orElseThrow().a().mean())
                .as(
                        "mean of the joint count is near the sum of the zones' chances: each zone sees the others coarsened")
                .isCloseTo(sumOfChances, within(.1));
        List<Double> ofA =
                comparison.refinished().orElseThrow().a().distribution().chances();
        List<Double> ofB =
                comparison.refinished().orElseThrow().b().distribution().chances();
        double fewer = 0;
        double equal = 0;
        for (int i = 0; i < ofA.size(); i++) {
            for (int j = 0; j < ofB.size(); j++) {
                fewer += i < j ? ofA.get(i) * ofB.get(j) : 0;
                equal += i == j ? ofA.get(i) * ofB.get(j) : 0;
            }
        }
        assertThat(comparison.refinished().orElseThrow().chanceAFewer()).isCloseTo(fewer, within(1e-9));
        assertThat(comparison.refinished().orElseThrow().chanceEqual()).isCloseTo(equal, within(1e-9));
        assertThat(comparison.refinished().orElseThrow().chanceAFewer())
                .isGreaterThan(comparison.refinished().orElseThrow().chanceBFewer());
        assertThat(comparison.refinished().orElseThrow().a().low())
                .isLessThanOrEqualTo(comparison.refinished().orElseThrow().a().high());
        assertThat(comparison.speakingFor(Side.A)).isNotEmpty();
        assertThat(comparison.speakingFor(Side.B)).isEmpty();
    }

    @Test
    void zonesOfUnlikeBodiesStandTogetherWhereTheyCorrespondAndAloneElsewhere() {
        Comparison comparison = compare(coupe(), new Told(BodyStyle.PICKUP));
        assertThat(comparison.shared())
                .extracting(ComparedZone::label)
                .contains(
                        "Hood",
                        "Decklid / Tailgate",
                        "Quarter panel, left / Bed side, left",
                        "Front frame rail, left / Frame side rail, left")
                .doesNotContain("Cab corner, left");
        assertThat(comparison.apart())
                .extracting(zone -> zone.zone().id().value())
                .contains("cab-corner-left", "tail-panel", "frame-rail-rear-left", "torque-box-front-left");
        Set<ZoneId> onA = comparison.zones().stream()
                .flatMap(zone -> zone.zoneA().stream())
                .map(Zone::id)
                .collect(Collectors.toSet());
        assertThat(onA)
                .as("no zone of a car vanishes")
                .isEqualTo(
                        CATALOG.zonesOf(TestVisits.facts(BodyStyle.COUPE).car().body()).stream()
                                .map(Zone::id)
                                .collect(Collectors.toSet()));
        assertThat(comparison.a().onlyHere())
                .extracting(Zone::id)
                .contains(new ZoneId("decklid"))
                .doesNotContain(HOOD);
    }

    /** Panels enough that the level of the car is its own, and one that stands out. */
    private static Told leveled(int level, int hood) {
        Told car = coupe();
        for (String zone :
                List.of("roof", "decklid", "door-front-left", "door-front-right", "fender-left", "quarter-left")) {
            car.measured(zone, level - 4, level, level + 4);
        }
        return car.measured("hood", hood - 6, hood, hood + 6);
    }

    @Test
    void howThickOneCarIsBesideAnotherSaysNothingByItself() {
        assertThat(hood(leveled(100, 100), leveled(150, 150)))
                .as("each at its own level")
                .extracting(Contrast::aspect)
                .doesNotContain(Aspect.THICKNESS);
        assertThat(hood(coupe().measured("hood", 110, 130, 150), coupe().measured("hood", 112, 140, 145)))
                .isEmpty();
    }

    @Test
    void aPanelFarFromTheLevelOfItsOwnCarIsToldWithBothFigures() {
        List<Contrast> apart = hood(leveled(100, 100), leveled(100, 420));
        assertThat(apart.get(0)).satisfies(contrast -> {
            assertThat(contrast.aspect()).isEqualTo(Aspect.THICKNESS);
            assertThat(contrast.speaksFor()).isEmpty();
            assertThat(contrast.text())
                    .contains("times the level of A (100\u202f\u00b5m")
                    .contains("of B (420\u202f\u00b5m");
        });
    }

    /** A panel with evidence of its own whose likelihood and band are as given. */
    private static ZoneFacts likelihood(double refinished, double low, double high) {
        Chances chances = new Chances(1 - refinished, refinished, 0, 0);
        return new ZoneFacts(
                Optional.empty(),
                OptionalDouble.empty(),
                false,
                Optional.of(new ZoneHistory(
                        HOOD, true, chances, 0, low, high, 0, 0, List.of(), List.of(), Map.of(), Optional.empty())),
                true,
                Optional.empty(),
                List.of(),
                List.of(),
                0,
                List.of());
    }

    private static Mark stamp(String text, String expected) {
        return new Mark(
                "Body stamp",
                MarkKind.STAMP,
                text,
                Optional.empty(),
                Optional.empty(),
                Optional.of(expected),
                Optional.of(HOOD),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    @Test
    void aNumberThatDoesNotMatchSpeaksForTheOtherCarIfThereOneWasRead() {
        Told wrong = coupe().stamped(stamp("H71C2A10447", "H71C2A10448"));
        Told right = coupe().stamped(stamp("H71C2A1044?", "H71C2A10448"));
        assertThat(hood(wrong, right)).singleElement().satisfies(contrast -> {
            assertThat(contrast.aspect()).isEqualTo(Aspect.DATES);
            assertThat(contrast.speaksFor()).contains(Side.B);
            assertThat(contrast.text()).contains("Body stamp");
        });
        assertThat(hood(wrong, coupe())).singleElement().satisfies(contrast -> {
            assertThat(contrast.speaksFor()).isEmpty();
            assertThat(contrast.missing()).contains(Side.B);
        });
        assertThat(hood(right, right)).isEmpty();
        Comparison both = compare(wrong, right);
        assertThat(both.a().dateContradictions()).hasSize(1);
        assertThat(both.b().dateContradictions()).isEmpty();
        assertThat(both.b().datesJudged()).isEqualTo(1);
    }

    @Test
    void likelihoodsSpeakForACarOnlyWhereTheyLieTwentyPointsApart() {
        ZoneFacts none = likelihood(0.002, 0.001, 0.003);
        assertThat(contrasts(none, likelihood(0.03, 0.02, 0.04))).isEmpty();
        assertThat(contrasts(none, likelihood(0.35, 0.002, 0.6)))
                .as("bands overlap")
                .isEmpty();
        assertThat(contrasts(likelihood(0.35, 0.2, 0.6), none))
                .extracting(Contrast::speaksFor)
                .containsExactly(Optional.of(Side.B));
    }

    @Test
    void evidenceThatOneSideLacksIsNamedAndSpeaksForNeither() {
        List<Contrast> comparison = hood(coupe().measured("hood", 110, 114, 112).clean(), coupe());
        assertThat(comparison)
                .extracting(Contrast::aspect)
                .containsExactly(Aspect.THICKNESS, Aspect.REFINISH, Aspect.RUST);
        assertThat(comparison).allSatisfy(contrast -> {
            assertThat(contrast.missing()).contains(Side.B);
            assertThat(contrast.speaksFor()).isEmpty();
        });
    }

    @Test
    void lessRustAndLessNeedSpeakForACar() {
        List<Contrast> comparison = hood(coupe().rusted(TraceKind.HOLE, 200), coupe().rusted(TraceKind.SURFACE, 30));
        assertThat(comparison)
                .filteredOn(contrast -> contrast.aspect() == Aspect.RUST || contrast.aspect() == Aspect.NEED)
                .hasSize(2)
                .allSatisfy(contrast -> assertThat(contrast.speaksFor()).contains(Side.B));
    }

    @Test
    void gradesThatTheMarkingLeavesOpenDoNotDiffer() {
        List<Contrast> comparison =
                hood(coupe().rusted(TraceKind.SURFACE, 99.95), coupe().rusted(TraceKind.SURFACE, 100.05));
        assertThat(comparison).extracting(Contrast::aspect).doesNotContain(Aspect.RUST);
    }

    @Test
    void trialsStandSideBySideByTheirItem() {
        Comparison comparison = compare(
                coupe().tried("Horn", TrialResult.WORKS).tried("Heater", TrialResult.NOT_TRIED),
                coupe().tried("horn ", TrialResult.DOES_NOT).tried("Wipers", TrialResult.WORKS));
        assertThat(comparison.trials()).extracting(ComparedTrial::item).containsExactly("Horn", "Heater", "Wipers");
        assertThat(comparison.trials().get(0).b().orElseThrow().result()).isEqualTo(TrialResult.DOES_NOT);
        assertThat(comparison.trials().get(1).b()).isEmpty();
    }
}
