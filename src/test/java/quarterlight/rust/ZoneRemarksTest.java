package quarterlight.rust;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.car.Car;
import quarterlight.car.FinishProfile;
import quarterlight.car.Substrate;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Dimensions;
import quarterlight.car.body.DriveSide;
import quarterlight.rust.need.RepairNeed;
import quarterlight.table.ZoneTable;
import quarterlight.units.Area;
import quarterlight.visit.VisitParts;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale.KnownLength;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.annotation.TraceKind;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.statement.Statement;

/** What to beware of in a zone's rust is said where it holds and nowhere else; limits of the grade by ASTM D610, table 1. */
class ZoneRemarksTest {
    private static final ZoneId HOOD = new ZoneId("hood");
    private static final ZoneId ROOF = new ZoneId("roof");

    /** A square of 100 by 100 mm on a photo of the visit, or on one that is not in it. */
    private static Trace square(TraceKind kind, ZoneId zone, long photo) {
        Outline outline = new Outline(
                List.of(new PixelPoint(0, 0), new PixelPoint(100, 0), new PixelPoint(100, 100), new PixelPoint(0, 100)),
                List.of());
        return new Trace(
                new PhotoId(photo),
                kind,
                outline,
                new KnownLength(new PixelPoint(0, 0), new PixelPoint(100, 0), 100),
                zone,
                Optional.empty(),
                Optional.empty());
    }

    private static Statement said(Condition condition, Severity severity) {
        return new Statement(
                HOOD,
                Facets.of(condition),
                "said so",
                Optional.ofNullable(severity),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static ZoneRust hood(Substrate substrate, double areaMm2, List<Trace> traces, Statement... statements) {
        Car car = new Car(
                "Tamarisk",
                Body.usual(BodyStyle.COUPE),
                DriveSide.LEFT,
                FinishProfile.UNKNOWN,
                OptionalInt.empty(),
                Optional.empty(),
                Substrate.STEEL,
                Map.of(HOOD, substrate),
                Dimensions.NOT_GIVEN);
        return RustReport.of(
                        new VisitParts(VisitParts.facts(car, java.time.ZoneId.of("UTC")))
                                .photos(List.of(TestVisits.photo(1, MediaKind.PHOTO, 4000, 3000)))
                                .traces(VisitParts.rows(traces))
                                .statements(VisitParts.rows(List.of(statements)))
                                .record(),
                        ZoneTable.load(),
                        areaMm2 < 0 ? Map.of() : Map.of(HOOD, new Area(areaMm2), ROOF, new Area(500)))
                .zone(HOOD)
                .orElseThrow();
    }

    private static final List<Trace> ONE = List.of(square(TraceKind.SURFACE, HOOD, 1));

    @Test
    void aTraceOnAZoneStatedCleanIsSaidToCount() {
        assertThat(hood(Substrate.STEEL, 200_000, ONE, said(Condition.NO_RUST, null))
                        .remarks())
                .anyMatch(text -> text.contains("stated to have no rust"));
        assertThat(hood(Substrate.STEEL, 200_000, ONE).remarks()).noneMatch(text -> text.contains("stated"));
        assertThat(hood(Substrate.STEEL, 200_000, List.of(), said(Condition.NO_RUST, null))
                        .remarks())
                .isEmpty();
    }

    @Test
    void whatDoesNotRustIsQuestionedWhereRustIsTraced() {
        assertThat(hood(Substrate.ALUMINUM, 200_000, ONE).remarks()).anyMatch(text -> text.contains("set as aluminum"));
        assertThat(hood(Substrate.STEEL, 200_000, ONE).remarks()).noneMatch(text -> text.contains("does not rust"));
        assertThat(hood(Substrate.ALUMINUM, 200_000, List.of()).remarks()).isEmpty();
    }

    @Test
    void rustWithoutAZoneAreaHasNoShare() {
        for (double none : new double[] {-1, 0}) {
            ZoneRust zone = hood(Substrate.STEEL, none, ONE);
            assertThat(zone.remarks()).anyMatch(text -> text.contains("no share and no grade"));
            assertThat(zone.zoneArea()).isEmpty();
            assertThat(zone.percent()).isEmpty();
        }
        assertThat(hood(Substrate.STEEL, -1, List.of()).remarks()).isEmpty();
    }

    @Test
    void tracesThatCannotBeMeasuredAreCountedByTheirKindAndZone() {
        ZoneRust zone = hood(
                Substrate.STEEL,
                200_000,
                List.of(
                        square(TraceKind.SURFACE, HOOD, 1),
                        square(TraceKind.SURFACE, HOOD, 9),
                        square(TraceKind.DAMAGE, HOOD, 9),
                        square(TraceKind.SURFACE, ROOF, 9),
                        square(TraceKind.HOLE, ROOF, 1)));
        assertThat(zone.remarks()).anyMatch(text -> text.contains("cannot be measured") && text.contains(": 1."));
        assertThat(zone.holes()).hasValue(0);
        assertThat(zone.rust().orElseThrow().mm2()).isEqualTo(10_000);
        assertThat(hood(Substrate.STEEL, 200_000, ONE).remarks())
                .noneMatch(text -> text.contains("cannot be measured"));
    }

    @Test
    void moreRustThanZoneIsQuestionedAndAsMuchIsNot() {
        assertThat(hood(Substrate.STEEL, 9_999, ONE).remarks()).anyMatch(text -> text.contains("shown as 100 %"));
        assertThat(hood(Substrate.STEEL, 10_000, ONE).remarks()).noneMatch(text -> text.contains("shown as"));
    }

    private static Optional<String> open(double areaMm2) {
        return hood(Substrate.STEEL, areaMm2, ONE).remarks().stream()
                .filter(text -> text.contains("grade may be"))
                .findFirst();
    }

    /** Within two standard deviations: the upper end at 3 %, the lower at 1 %, each limit from both sides. */
    @Test
    void gradesWithinTheMarkingAreNamed() {
        ZoneRust zone = hood(Substrate.STEEL, 200_000, ONE);
        double sd = zone.rustSdMm2().orElseThrow();
        double high = 10_000 + 2 * sd;
        double low = 10_000 - 2 * sd;
        assertThat(high / low).isBetween(3.0, 10.0 / 3);
        assertThat(open(high / 0.03 * 1.001)).get().asString().contains("5 to 6");
        assertThat(open(high / 0.03 * 0.999)).get().asString().contains("4 to 6");
        assertThat(open(low / 0.01 * 1.001)).get().asString().contains("4 to 6");
        assertThat(open(low / 0.01 * 0.999)).get().asString().contains("4 to 5");
        assertThat(open(low / 0.03 * 0.99)).as("3 to 10 %%").isEmpty();
        assertThat(open(10_000)).get().asString().contains("0 to 1");
    }

    @ParameterizedTest
    @CsvSource({"0.004, 10, false", "0.02, 9, true", "49, 1, true", "60, 0, false"})
    void aTypeOfSpreadIsSuggestedForGrades9To1(double percent, int grade, boolean suggested) {
        ZoneRust zone = hood(Substrate.STEEL, 10_000 / percent * 100, ONE);
        assertThat(zone.gradeD610()).hasValue(grade);
        assertThat(zone.spread().isPresent()).isEqualTo(suggested);
        assertThat(zone.gradeInWords()).contains(suggested ? grade + "-S" : Integer.toString(grade));
    }

    /** Light is grade 6 or better, moderate 5 and 4, heavy anything worse and any hole. */
    @ParameterizedTest
    @CsvSource({"0.9, LIGHT", "1.1, MODERATE", "9.9, MODERATE", "10.1, HEAVY"})
    void theExtentFollowsTheGrade(double percent, RustExtent extent) {
        assertThat(hood(Substrate.STEEL, 10_000 / percent * 100, ONE).extent()).contains(extent);
        assertThat(hood(Substrate.STEEL, 10_000 / percent * 100, List.of(square(TraceKind.HOLE, HOOD, 1)))
                        .extent())
                .contains(RustExtent.HEAVY);
        assertThat(hood(Substrate.STEEL, 200_000, List.of(), said(Condition.NO_RUST, null))
                        .extent())
                .contains(RustExtent.NONE);
        assertThat(hood(Substrate.STEEL, 200_000, List.of()).extent()).isEmpty();
    }

    @Test
    void theGravestDamageStatedDecides() {
        assertThat(hood(
                                Substrate.STEEL,
                                200_000,
                                List.of(),
                                said(Condition.DAMAGED, Severity.GRAVE),
                                said(Condition.DAMAGED, null))
                        .need())
                .contains(RepairNeed.REPLACE);
        assertThat(hood(Substrate.STEEL, 200_000, List.of(square(TraceKind.DAMAGE, HOOD, 1)))
                        .need())
                .contains(RepairNeed.REFINISH);
        assertThat(hood(Substrate.STEEL, 200_000, List.of()).rustSdMm2()).isEqualTo(OptionalDouble.empty());
    }

    @Test
    void whatWasSeenByEyeSaysSoAndTheGravestComesFirst() {
        ZoneRust zone = hood(
                Substrate.STEEL,
                200_000,
                List.of(),
                said(Condition.SURFACE_RUST, null),
                said(Condition.RUSTED_THROUGH, null));
        assertThat(zone.needByEye()).contains(RepairNeed.PATCH);
        assertThat(zone.need()).isEmpty();
        assertThat(zone.lookedAt()).isTrue();
        assertThat(zone.reasons()).allMatch(text -> text.startsWith("by eye: "));
        assertThat(zone.reasons().get(0)).contains("hole");
        assertThat(zone.cautions()).doesNotHaveDuplicates().isNotEmpty();
        ZoneRust both = hood(Substrate.STEEL, 200_000, ONE, said(Condition.PITTED, null));
        assertThat(both.reasons().get(0)).doesNotStartWith("by eye");
        assertThat(both.reasons()).anyMatch(text -> text.startsWith("by eye: "));
    }
}
