package quarterlight.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.car.body.BodyStyle;
import quarterlight.findings.Findings;
import quarterlight.finish.history.Chances;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.finish.model.PanelStories;
import quarterlight.finish.number.JudgedNumber;
import quarterlight.rust.TestVisits;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.CoverageTable;
import quarterlight.table.list.DatePatternTable;
import quarterlight.units.Area;
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
        return Comparison.of(a.findings(), b.findings(), CoverageTable.load());
    }

    /** Contrasts of the hood alone. */
    private static List<Contrast> hood(Told a, Told b) {
        return ZoneContrasts.of(
                ZoneFacts.of(a.findings(), HOOD, List.of()), ZoneFacts.of(b.findings(), HOOD, List.of()));
    }

    @Test
    void aCarBesideItselfDiffersInNothing() {
        Comparison same = compare(
                coupe().measured("hood", 120, 128, 133).clean(),
                coupe().measured("hood", 120, 128, 133).clean());
        assertThat(same.zones()).allSatisfy(zone -> assertThat(zone.contrasts()).isEmpty());
        CountComparison refinished = same.refinished();
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
        Comparison comparison = Comparison.of(a, b, CoverageTable.load());
        double sumOfChances = a.history().zones().stream()
                .mapToDouble(zone -> zone.notFactory())
                .sum();
        assertThat(comparison.refinished().a().mean())
                .as(
                        "mean of the joint count is near the sum of the zones' chances: each zone sees the others coarsened")
                .isCloseTo(sumOfChances, within(.1));
        List<Double> ofA = comparison.refinished().a().distribution().chances();
        List<Double> ofB = comparison.refinished().b().distribution().chances();
        double fewer = 0;
        double equal = 0;
        for (int i = 0; i < ofA.size(); i++) {
            for (int j = 0; j < ofB.size(); j++) {
                fewer += i < j ? ofA.get(i) * ofB.get(j) : 0;
                equal += i == j ? ofA.get(i) * ofB.get(j) : 0;
            }
        }
        assertThat(comparison.refinished().chanceAFewer()).isCloseTo(fewer, within(1e-9));
        assertThat(comparison.refinished().chanceEqual()).isCloseTo(equal, within(1e-9));
        assertThat(comparison.refinished().chanceAFewer())
                .isGreaterThan(comparison.refinished().chanceBFewer());
        assertThat(comparison.refinished().a().low())
                .isLessThanOrEqualTo(comparison.refinished().a().high());
        assertThat(comparison.speakingFor(Side.A)).isNotEmpty();
        assertThat(comparison.speakingFor(Side.B)).isEmpty();
    }

    @Test
    void unlikeBodiesAreComparedByTheZonesBothHave() {
        Comparison comparison = compare(coupe(), new Told(BodyStyle.PICKUP));
        assertThat(comparison.zones())
                .extracting(zone -> zone.zone().id().value())
                .contains("hood", "roof", "door-front-left")
                .doesNotContain("decklid", "bed-side-left", "frame-side-rail-left", "frame-rail-front-left");
        assertThat(comparison.counted())
                .allSatisfy(id -> assertThat(CATALOG.get(id).finish()).isTrue());
        assertThat(comparison.refinished().a().distribution().chances())
                .hasSize(comparison.counted().size() + 1);
        assertThat(comparison.a().onlyHere())
                .extracting(Zone::id)
                .contains(new ZoneId("decklid"))
                .doesNotContain(HOOD);
        assertThat(comparison.b().onlyHere()).extracting(Zone::id).contains(new ZoneId("bed-side-left"));
    }

    @Test
    void aDifferenceWithinItsUncertaintyIsNotOne() {
        List<Contrast> close = hood(coupe().measured("hood", 110, 130, 150), coupe().measured("hood", 112, 140, 145));
        assertThat(close).isEmpty();
        List<Contrast> apart = hood(coupe().measured("hood", 110, 114, 112), coupe().measured("hood", 410, 420, 430));
        assertThat(apart.get(0)).satisfies(contrast -> {
            assertThat(contrast.aspect()).isEqualTo(Aspect.THICKNESS);
            assertThat(contrast.speaksFor()).isEmpty();
            assertThat(contrast.text()).contains("308\u2009\u00b5m thinner").contains("95 % interval");
        });
    }

    /** A panel with evidence of its own whose likelihood and band are as given. */
    private static ZoneFacts likelihood(double refinished, double low, double high) {
        Chances chances = new Chances(1 - refinished, refinished, 0, 0);
        return new ZoneFacts(
                Optional.empty(),
                Optional.of(new ZoneHistory(
                        HOOD,
                        true,
                        chances,
                        0,
                        low,
                        high,
                        0,
                        0,
                        List.of(),
                        List.of(),
                        Map.of(),
                        new PanelStories.Sway(JudgedNumber.SEEN, low, high),
                        Optional.empty())),
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
        assertThat(ZoneContrasts.of(none, likelihood(0.03, 0.02, 0.04))).isEmpty();
        assertThat(ZoneContrasts.of(none, likelihood(0.35, 0.002, 0.6)))
                .as("bands overlap")
                .isEmpty();
        assertThat(ZoneContrasts.of(likelihood(0.35, 0.2, 0.6), none))
                .extracting(Contrast::speaksFor)
                .containsExactly(Optional.of(Side.B));
    }

    @Test
    void readingsWithoutScatterAreComparedAsTheyAre() {
        List<Contrast> apart = hood(coupe().measured("hood", 110, 110), coupe().measured("hood", 150, 150));
        assertThat(apart).extracting(Contrast::aspect).contains(Aspect.THICKNESS);
        List<Contrast> same = hood(coupe().measured("hood", 110, 110), coupe().measured("hood", 110, 110));
        assertThat(same).isEmpty();
        List<Contrast> oneSided = hood(coupe().measured("hood", 110, 110), coupe().measured("hood", 300, 310, 320));
        assertThat(oneSided).extracting(Contrast::aspect).contains(Aspect.THICKNESS);
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
