package quarterlight.rust.need;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Construction;
import quarterlight.language.Language;
import quarterlight.language.Sentences;
import quarterlight.rust.need.RepairEvidence.Damage;
import quarterlight.table.ZoneTable;
import quarterlight.visit.annotation.TraceKind;

class RepairRuleTest {
    private static final ZoneCatalog CATALOG = ZoneTable.load();

    private static Zone zone(String id) {
        return CATALOG.find(new ZoneId(id)).orElseThrow();
    }

    /** What was found, changed one thing at a time. */
    private record Found(
            String zone, Construction construction, Loss lost, Loss scale, Loss pitting, int holes, Damage damage) {
        static Found nothing(String zone, Construction construction) {
            return new Found(zone, construction, Loss.NONE, Loss.NONE, Loss.NONE, 0, Damage.NONE);
        }

        Found holes(int count, double largest, double all) {
            return new Found(zone, construction, new Loss(largest, all, false), scale, pitting, count, damage);
        }

        Found scale(double mm2) {
            return new Found(zone, construction, lost, new Loss(mm2, mm2, false), pitting, holes, damage);
        }

        Found pitting(double mm2) {
            return new Found(zone, construction, lost, scale, new Loss(mm2, mm2, false), holes, damage);
        }

        Found damaged(Damage weight) {
            return new Found(zone, construction, lost, scale, pitting, holes, weight);
        }

        RepairAdvice advice(double zoneMm2) {
            boolean rusted = lost.found() || scale.found() || pitting.found();
            return RepairRule.judge(new RepairEvidence(
                    RepairRuleTest.zone(zone),
                    construction,
                    rusted,
                    rusted,
                    OptionalDouble.empty(),
                    OptionalInt.empty(),
                    holes,
                    lost,
                    scale,
                    pitting,
                    false,
                    zoneMm2 > 0 ? OptionalDouble.of(zoneMm2) : OptionalDouble.empty(),
                    damage));
        }

        RepairNeed need() {
            return advice(0).need().orElse(RepairNeed.NONE);
        }
    }

    private static Found unibody(String zone) {
        return Found.nothing(zone, Construction.UNIBODY);
    }

    private static Found onFrame(String zone) {
        return Found.nothing(zone, Construction.BODY_ON_FRAME);
    }

    @Test
    void aSmallHoleInAWheelWellOrTrunkFloorIsAPatch() {
        for (Construction construction : Construction.values()) {
            for (String zone : List.of("spare-well", "trunk-floor")) {
                Found found = Found.nothing(zone, construction).holes(1, 7, 7);
                assertThat(found.need()).as("%s %s", zone, construction).isEqualTo(RepairNeed.PATCH);
            }
        }
        assertThat(unibody("spare-well").holes(1, 900, 900).need())
                .as("a hole larger than a coin in the box of a unibody")
                .isEqualTo(RepairNeed.STRUCTURAL);
    }

    @Test
    void aHoleInTheQuarterOfACarOnAFrameIsAPatch() {
        assertThat(onFrame("quarter-left").holes(1, 20, 20).need()).isEqualTo(RepairNeed.PATCH);
        assertThat(onFrame("quarter-left").holes(1, 2_000, 2_000).need()).isEqualTo(RepairNeed.PATCH);
        assertThat(unibody("quarter-left").holes(1, 2_000, 2_000).need())
                .as("which zone carries load depends on the construction")
                .isEqualTo(RepairNeed.STRUCTURAL);
    }

    @Test
    void scaleOrPittingOnARailIsStructuralByItsExtentAndNotByItsShare() {
        double longRail = 1_000_000;
        assertThat(unibody("frame-rail-front-left")
                        .scale(6_000)
                        .advice(longRail)
                        .need())
                .contains(RepairNeed.STRUCTURAL);
        assertThat(unibody("frame-rail-front-left")
                        .pitting(30_000)
                        .advice(longRail)
                        .need())
                .contains(RepairNeed.STRUCTURAL);
        assertThat(unibody("suspension-tower-right").scale(3_000).need()).isEqualTo(RepairNeed.STRUCTURAL);
        assertThat(unibody("frame-rail-front-left").scale(300).need()).isEqualTo(RepairNeed.REFINISH);
        assertThat(unibody("frame-rail-front-left").pitting(2_000).need()).isEqualTo(RepairNeed.REFINISH);
    }

    @Test
    void fourSmallHolesInAFenderAreAPatchAndMuchLostMetalIsAPanel() {
        assertThat(unibody("fender-left").holes(4, 5, 20).need()).isEqualTo(RepairNeed.PATCH);
        assertThat(unibody("fender-left").holes(4, 12_000, 25_000).need()).isEqualTo(RepairNeed.REPLACE);
    }

    @ParameterizedTest
    @CsvSource({"bumper-front", "seat-front-left", "windshield", "dash", "headlamp-left", "soft-top", "wheel-rear-left"
    })
    void whatIsNoPaintedSheetMetalIsNeverRefinishedForDamageAndHasNoCautionForPaint(String zone) {
        RepairAdvice scratched = unibody(zone).damaged(Damage.SLIGHT).advice(0);
        assertThat(scratched.need()).as("a scratch asks for nothing here").isEmpty();
        RepairAdvice broken = unibody(zone).damaged(Damage.MAJOR).advice(0);
        assertThat(broken.need()).contains(RepairNeed.REPLACE);
        assertThat(broken.cautions()).isEmpty();
        RepairAdvice rusted = unibody(zone).scale(50).advice(0);
        assertThat(rusted.cautions()).isEmpty();
    }

    @Test
    void paintedSheetMetalIsRefinishedForDamageAndCarriesTheCaution() {
        RepairAdvice scratched =
                unibody("door-front-left").damaged(Damage.SLIGHT).advice(0);
        assertThat(scratched.need()).contains(RepairNeed.REFINISH);
        assertThat(scratched.cautions()).containsExactly(RepairRule.paintCaution());
    }

    @Test
    void whatIsStructuralIsToBeJudgedByALicensedPerson() {
        RepairAdvice rail = unibody("frame-rail-rear-right").holes(1, 7, 7).advice(0);
        assertThat(rail.need()).contains(RepairNeed.STRUCTURAL);
        assertThat(rail.reasons().get(0)).contains("1 hole, 7 mm2").contains("to be judged by a licensed person");
        assertThat(rail.cautions().get(0)).isEqualTo(RepairRule.structuralCaution());
    }

    @Test
    void fuelAndBrakeLinesAreExchangedWithTheirCaution() {
        RepairAdvice line = unibody("fuel-brake-lines").pitting(3).advice(0);
        assertThat(line.need()).contains(RepairNeed.REPLACE);
        assertThat(line.cautions()).contains(RepairRule.fuelBrakeCaution(), RepairRule.liftCaution());
    }

    /** Each limit in mm2 or percent from both sides: just below it the clause does not hold, at it and above it does. */
    @ParameterizedTest
    @EnumSource(NeedClause.class)
    void everyLimitHoldsFromItselfOn(NeedClause clause) {
        if (clause.from() == 0) {
            assertThat(clause.limitInWords()).isEqualTo("any");
            return;
        }
        double zoneMm2 = 10_000_000;
        double from = clause.measure().name().endsWith("PERCENT") ? clause.from() / 100 * zoneMm2 : clause.from();
        assertThat(clause.holds(evidence(clause, from * 0.999, zoneMm2))).isFalse();
        assertThat(clause.holds(evidence(clause, from * 1.000001, zoneMm2))).isTrue();
        assertThat(clause.holds(evidence(clause, from * 2, zoneMm2))).isTrue();
        assertThat(clause.holds(evidence(clause, 0, zoneMm2))).isFalse();
    }

    private static RepairEvidence evidence(NeedClause clause, double mm2, double zoneMm2) {
        Loss found = new Loss(mm2, mm2, false);
        boolean lost = clause.measure().name().startsWith("LOST");
        boolean pitting = clause.measure() == NeedClause.Measure.PITTING_LARGEST;
        String zone = LoadTable.rows().stream()
                .filter(row -> row.unibody() == clause.load())
                .map(row -> row.families().get(0))
                .findFirst()
                .orElse("hood");
        Zone at = CATALOG.find(new ZoneId(zone)).orElseGet(() -> zone(zone + "-left"));
        return new RepairEvidence(
                at,
                Construction.UNIBODY,
                true,
                true,
                OptionalDouble.empty(),
                OptionalInt.empty(),
                0,
                lost ? found : Loss.NONE,
                lost || pitting ? Loss.NONE : found,
                pitting ? found : Loss.NONE,
                false,
                OptionalDouble.of(zoneMm2),
                Damage.NONE);
    }

    /** English between marks: what has none comes from no bundle and would stay English on a German page. */
    @Test
    void everyReasonAndCautionIsSaidInTheLanguageInHand() throws Exception {
        List<RepairAdvice> all = Language.MARKED.during(() -> Stream.of(
                        unibody("frame-rail-rear-right").holes(1, 7, 7),
                        unibody("fender-left").holes(3, 12_000, 25_000),
                        unibody("suspension-tower-right").scale(3_000),
                        unibody("fuel-brake-lines").pitting(3),
                        unibody("door-front-left").damaged(Damage.SLIGHT))
                .map(found -> found.advice(0))
                .toList());
        assertThat(all.stream().flatMap(one -> Stream.concat(one.reasons().stream(), one.cautions().stream())))
                .hasSizeGreaterThan(15)
                .allMatch(sentence -> sentence.startsWith(Sentences.MARK) && sentence.endsWith(Sentences.MARK_END));
    }

    @Test
    void aGermanBuyerReadsGermanAndItsDecimalSigns() throws Exception {
        RepairAdvice tower = Language.GERMAN.during(
                () -> unibody("suspension-tower-right").scale(3_000).advice(0));
        assertThat(tower.reasons().get(0)).contains("Blattrost", "3.000 mm2", "tragend");
        assertThat(tower.cautions().get(0)).contains("zugelassene", "Wagenheber");
    }

    @Test
    void theTableOfLoadsKnowsEveryZoneThatCarriesLoadAndOnlyThose() {
        Set<String> inTable = LoadTable.rows().stream()
                .filter(row -> row.unibody() != Load.FLUID)
                .flatMap(row -> row.families().stream())
                .collect(Collectors.toSet());
        Set<String> structural = CATALOG.all().stream()
                .filter(Zone::structural)
                .map(LoadTable::family)
                .collect(Collectors.toSet());
        assertThat(inTable).isEqualTo(structural);
        List<String> all = new ArrayList<>();
        LoadTable.rows().forEach(row -> all.addAll(row.families()));
        assertThat(all).doesNotHaveDuplicates();
        Set<String> known = CATALOG.all().stream().map(LoadTable::family).collect(Collectors.toSet());
        assertThat(known).containsAll(all);
    }

    @Test
    void moreRustNeverAsksForLess() {
        for (Zone zone : CATALOG.all()) {
            for (Construction construction : Construction.values()) {
                List<RepairNeed> needs = Stream.of(1.0, 600.0, 3_000.0, 12_000.0, 70_000.0)
                        .map(mm2 -> NeedByEye.of(zone, construction, TraceKind.HOLE, OptionalDouble.of(mm2))
                                .need()
                                .orElseThrow())
                        .toList();
                List<RepairNeed> sorted = new ArrayList<>(needs);
                Collections.sort(sorted);
                assertThat(needs).as("%s %s", zone.id(), construction).isEqualTo(sorted);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "spare-well, HOLE, 7, PATCH",
        "spare-well, HOLE, , STRUCTURAL",
        "fender-left, HOLE, , PATCH",
        "frame-rail-front-left, SURFACE, , REFINISH",
        "frame-rail-front-left, SCALE, , STRUCTURAL",
        "frame-rail-front-left, SCALE, 6000, STRUCTURAL",
        "frame-rail-front-left, SCALE, 300, REFINISH",
        "frame-rail-front-left, PITTING, , REFINISH",
        "frame-rail-front-left, PITTING, 30000, STRUCTURAL",
        "suspension-tower-left, SCALE, 3000, STRUCTURAL",
        "hood, SURFACE, 40, REFINISH",
        "hood, PITTING, , REFINISH",
        "fuel-tank, HOLE, , REPLACE",
        "bumper-rear, HOLE, , REPLACE",
    })
    void whatWasSeenByEyeFollowsTheSameRule(String zone, TraceKind seen, Double mm2, RepairNeed need) {
        OptionalDouble size = mm2 == null ? OptionalDouble.empty() : OptionalDouble.of(mm2);
        assertThat(NeedByEye.of(zone(zone), Construction.UNIBODY, seen, size).need())
                .contains(need);
    }

    @Test
    void aSizeSaidIsAboveZero() {
        Zone hood = zone("hood");
        OptionalDouble zero = OptionalDouble.of(0);
        assertThatThrownBy(() -> NeedByEye.of(hood, Construction.UNIBODY, TraceKind.SCALE, zero))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("above 0 mm2");
    }
}
