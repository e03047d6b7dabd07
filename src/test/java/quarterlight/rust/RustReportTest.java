package quarterlight.rust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.rust.need.RepairNeed;
import quarterlight.table.ZoneTable;
import quarterlight.units.Area;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PhotoScale.KnownLength;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.annotation.TraceKind;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.statement.Statement;

class RustReportTest {
    private static final ZoneCatalog CATALOG = ZoneTable.load();
    private static final ZoneId HOOD = new ZoneId("hood");
    private static final ZoneId RAIL = new ZoneId("frame-rail-front-left");
    private static final Map<ZoneId, Area> AREAS = Map.of(HOOD, new Area(1_000_000), RAIL, new Area(100_000));

    /** 100 pixels are this many mm. */
    private static PhotoScale ruler(double mm) {
        return new KnownLength(new PixelPoint(0, 0), new PixelPoint(100, 0), mm);
    }

    private static Outline square(double x, double y, double side) {
        return new Outline(
                List.of(
                        new PixelPoint(x, y),
                        new PixelPoint(x + side, y),
                        new PixelPoint(x + side, y + side),
                        new PixelPoint(x, y + side)),
                List.of());
    }

    private record Drawn(long photo, TraceKind kind, Outline outline, double mm, ZoneId zone, Optional<String> patch) {
        Drawn(long photo, TraceKind kind, Outline outline, double mm) {
            this(photo, kind, outline, mm, HOOD, Optional.empty());
        }

        Drawn patch(String name) {
            return new Drawn(photo, kind, outline, mm, zone, Optional.of(name));
        }

        Drawn on(ZoneId other) {
            return new Drawn(photo, kind, outline, mm, other, patch);
        }

        Trace trace() {
            return new Trace(new PhotoId(photo), kind, outline, ruler(mm), zone, patch, Optional.empty());
        }
    }

    private static RustReport report(Drawn... drawn) {
        return report(List.of(), drawn);
    }

    private static RustReport report(List<Statement> statements, Drawn... drawn) {
        List<Trace> traces = List.of(drawn).stream().map(Drawn::trace).toList();
        return RustReport.of(TestVisits.coupe(traces, statements), CATALOG, AREAS);
    }

    private static ZoneRust hood(Drawn... drawn) {
        return report(drawn).zone(HOOD).orElseThrow();
    }

    private static Statement says(ZoneId zone, Facets kind, Severity severity) {
        return new Statement(
                zone, kind, "seen so", Optional.of(severity), Optional.empty(), Optional.empty(), Optional.empty());
    }

    @Test
    void anOverlapOnOnePhotoCountsOnceWithTheScaleThatCameFirst() {
        Drawn first = new Drawn(1, TraceKind.SURFACE, square(100, 100, 100), 100);
        Drawn second = new Drawn(1, TraceKind.SCALE, square(150, 100, 100), 200);
        assertThat(hood(first, second).rust().orElseThrow().mm2()).isCloseTo(10_000 + 4 * 5_000, within(1e-6));
        assertThat(hood(second, first).rust().orElseThrow().mm2()).isCloseTo(4 * 10_000 + 5_000, within(1e-6));
    }

    @Test
    void aCoinGivesAnAreaWithItsUncertaintyAndSaysWhereItEnds() {
        List<PixelPoint> rim = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            rim.add(new PixelPoint(500 + 100 * Math.cos(i * Math.PI / 6), 500 + 60 * Math.sin(i * Math.PI / 6)));
        }
        PhotoScale coin = new PhotoScale.Coin(rim, 20);
        Trace near = new Trace(
                new PhotoId(1),
                TraceKind.SURFACE,
                square(700, 450, 100),
                coin,
                HOOD,
                Optional.empty(),
                Optional.empty());
        Trace far = new Trace(
                new PhotoId(1),
                TraceKind.SURFACE,
                square(1500, 450, 100),
                coin,
                HOOD,
                Optional.empty(),
                Optional.empty());
        RustReport report = RustReport.of(TestVisits.coupe(List.of(near, far), List.of()), CATALOG, AREAS);
        double mm2 = 10_000 * (10.0 / 100) * (10.0 / 60);
        assertThat(report.traces())
                .allSatisfy(
                        trace -> assertThat(trace.area().orElseThrow().mm2()).isCloseTo(mm2, within(1e-6)));
        assertThat(report.traces().get(0).sdMm2().orElseThrow()).isBetween(0.05 * mm2, 0.15 * mm2);
        assertThat(report.traces().get(1).sdMm2().orElseThrow())
                .as("the farther from the coin, the less it shows")
                .isBetween(0.3 * mm2, 0.6 * mm2);
        assertThat(report.traces().get(0).remarks()).isEmpty();
        assertThat(report.traces().get(1).remarks()).first().asString().contains("three coins");
        assertThat(report.zone(HOOD).orElseThrow().rust().orElseThrow().mm2()).isCloseTo(2 * mm2, within(1e-6));
    }

    @Test
    void theSameTraceTwiceAddsNothing() {
        Drawn one = new Drawn(1, TraceKind.SURFACE, square(100, 100, 100), 100);
        ZoneRust once = hood(one);
        ZoneRust twice = hood(one, one);
        assertThat(twice.rust()).isEqualTo(once.rust());
        assertThat(twice.rustSdMm2().orElseThrow()).isCloseTo(once.rustSdMm2().orElseThrow(), within(1e-9));
    }

    @Test
    void differentPhotosAddUpUnlessTheyShowTheSamePatch() {
        Drawn near = new Drawn(1, TraceKind.SURFACE, square(100, 100, 300), 100 / 3.0);
        Drawn far = new Drawn(2, TraceKind.SURFACE, square(100, 100, 110), 100);
        assertThat(hood(near, far).rust().orElseThrow().mm2()).isCloseTo(10_000 + 12_100, within(1e-6));
        ZoneRust same = hood(far.patch("lip"), near.patch("lip"));
        assertThat(same.rust().orElseThrow().mm2())
                .as("the closer photo counts")
                .isCloseTo(10_000, within(1e-6));
        assertThat(hood(near.patch("lip"), far.patch("edge"))
                        .rust()
                        .orElseThrow()
                        .mm2())
                .isCloseTo(22_100, within(1e-6));
    }

    @Test
    void shareAndGradesFollowFromTheZoneArea() {
        ZoneRust zone = hood(new Drawn(1, TraceKind.SURFACE, square(0, 0, 100), 300));
        assertThat(zone.rust().orElseThrow().mm2()).isCloseTo(90_000, within(1e-6));
        assertThat(zone.percent().orElseThrow()).isCloseTo(9, within(1e-9));
        assertThat(zone.gradeD610()).hasValue(4);
        assertThat(zone.gradeInWords()).contains("4-S");
        assertThat(zone.ri()).hasValue(5);
        assertThat(zone.extent()).contains(RustExtent.MODERATE);
        assertThat(zone.need()).contains(RepairNeed.REFINISH);
    }

    @Test
    void aZoneNeverLookedAtIsNotAZoneWithoutRust() {
        RustReport report = report(List.of(says(HOOD, Facets.of(Condition.NO_RUST), Severity.NOTE)));
        ZoneRust clean = report.zone(HOOD).orElseThrow();
        assertThat(clean.lookedAt()).isTrue();
        assertThat(clean.rust()).contains(new Area(0));
        assertThat(clean.gradeD610()).hasValue(10);
        assertThat(clean.ri()).hasValue(0);
        assertThat(clean.holes()).hasValue(0);
        assertThat(clean.need()).contains(RepairNeed.NONE);
        ZoneRust roof = report.zone(new ZoneId("roof")).orElseThrow();
        assertThat(roof.lookedAt()).isFalse();
        assertThat(roof.rust()).isEmpty();
        assertThat(roof.percent()).isEmpty();
        assertThat(roof.gradeD610()).isEmpty();
        assertThat(roof.holes()).isEmpty();
        assertThat(roof.need()).isEmpty();
        assertThat(report.extents()).containsExactly(Map.entry(HOOD, RustExtent.NONE));
    }

    @Test
    void cracksAndDamageAreNotRust() {
        ZoneRust zone = hood(new Drawn(1, TraceKind.CRACK, square(0, 0, 100), 300));
        assertThat(zone.lookedAt()).isFalse();
        assertThat(zone.rust()).isEmpty();
        assertThat(zone.need()).contains(RepairNeed.PATCH);
        ZoneRust dented = hood(new Drawn(1, TraceKind.DAMAGE, square(0, 0, 100), 300));
        assertThat(dented.need()).contains(RepairNeed.REFINISH);
    }

    @Test
    void holesAreCountedWhereTheyHangTogetherAndCountAsRust() {
        ZoneRust zone = hood(
                new Drawn(1, TraceKind.HOLE, square(0, 0, 20), 100),
                new Drawn(1, TraceKind.HOLE, square(10, 0, 20), 100),
                new Drawn(1, TraceKind.HOLE, square(200, 0, 10), 100),
                new Drawn(1, TraceKind.SURFACE, square(0, 0, 100), 100));
        assertThat(zone.holes()).hasValue(2);
        assertThat(zone.largestHole().orElseThrow().mm2()).isCloseTo(600, within(1e-9));
        assertThat(zone.rust().orElseThrow().mm2()).isCloseTo(10_000 + 100, within(1e-6));
        assertThat(zone.extent()).contains(RustExtent.HEAVY);
        assertThat(zone.need()).contains(RepairNeed.PATCH);
    }

    @Test
    void aHoleOrRotInAZoneThatCarriesLoadIsStructural() {
        for (TraceKind kind : List.of(TraceKind.HOLE, TraceKind.ROT)) {
            ZoneRust rail = report(new Drawn(1, kind, square(0, 0, 10), 10).on(RAIL))
                    .zone(RAIL)
                    .orElseThrow();
            assertThat(rail.need()).as(kind.word()).contains(RepairNeed.STRUCTURAL);
            assertThat(rail.advice().cautions().get(0)).contains("licensed person");
            assertThat(rail.advice().reasons().get(0)).contains("carries load");
        }
    }

    @Test
    void surfaceRustOnAZoneThatCarriesLoadIsNot() {
        ZoneRust rail = report(new Drawn(1, TraceKind.SURFACE, square(0, 0, 100), 200).on(RAIL))
                .zone(RAIL)
                .orElseThrow();
        assertThat(rail.percent().orElseThrow()).isCloseTo(40, within(1e-9));
        assertThat(rail.need()).contains(RepairNeed.REFINISH);
        ZoneRust flaking = report(new Drawn(1, TraceKind.SCALE, square(0, 0, 100), 200).on(RAIL))
                .zone(RAIL)
                .orElseThrow();
        assertThat(flaking.need()).contains(RepairNeed.STRUCTURAL);
    }

    @Test
    void muchLostMetalEndsABoltOnPanelAndSmallHolesDoNot() {
        Drawn[] four = {
            new Drawn(1, TraceKind.HOLE, square(0, 0, 20), 100),
            new Drawn(1, TraceKind.HOLE, square(100, 0, 20), 100),
            new Drawn(1, TraceKind.HOLE, square(200, 0, 20), 100),
            new Drawn(1, TraceKind.HOLE, square(300, 0, 20), 100)
        };
        assertThat(hood(four).need()).contains(RepairNeed.PATCH);
        assertThat(hood(new Drawn(1, TraceKind.ROT, square(0, 0, 100), 400)).need())
                .contains(RepairNeed.REPLACE);
        assertThat(hood(new Drawn(1, TraceKind.PITTING, square(0, 0, 100), 600)).need())
                .contains(RepairNeed.REPLACE);
    }

    @Test
    void statedDamageSpeaksByItsSeverity() {
        assertThat(report(List.of(says(RAIL, Facets.of(Condition.DAMAGED), Severity.GRAVE)))
                        .zone(RAIL)
                        .orElseThrow()
                        .need())
                .contains(RepairNeed.STRUCTURAL);
        assertThat(report(List.of(says(HOOD, Facets.of(Condition.DAMAGED), Severity.MAJOR)))
                        .zone(HOOD)
                        .orElseThrow()
                        .need())
                .contains(RepairNeed.PATCH);
    }

    @Test
    void rustOnAZoneOfUnknownAreaHasNoShareAndNoGrade() {
        ZoneId lip = new ZoneId("wheel-lip-front-left");
        ZoneRust zone = report(new Drawn(1, TraceKind.SURFACE, square(0, 0, 100), 100).on(lip))
                .zone(lip)
                .orElseThrow();
        assertThat(zone.rust().orElseThrow().mm2()).isCloseTo(10_000, within(1e-6));
        assertThat(zone.percent()).isEmpty();
        assertThat(zone.gradeD610()).isEmpty();
        assertThat(zone.ri()).isEmpty();
        assertThat(zone.extent()).isEmpty();
        assertThat(zone.need()).contains(RepairNeed.REFINISH);
        assertThat(zone.remarks()).anyMatch(remark -> remark.contains("not known"));
    }

    @Test
    void moreRustThanZoneIsShownAsAllOfIt() {
        ZoneRust zone = hood(new Drawn(1, TraceKind.SURFACE, square(0, 0, 1000), 200));
        assertThat(zone.percent()).hasValue(100);
        assertThat(zone.gradeD610()).hasValue(0);
        assertThat(zone.remarks()).anyMatch(remark -> remark.contains("100 %"));
    }

    @Test
    void aTraceThatCannotBeMeasuredIsNamedAndHidesNothing() {
        RustReport report = report(new Drawn(9, TraceKind.HOLE, square(0, 0, 10), 10).on(RAIL));
        assertThat(report.traces().get(0).area()).isEmpty();
        assertThat(report.traces().get(0).remarks().get(0)).contains("Not measured");
        ZoneRust rail = report.zone(RAIL).orElseThrow();
        assertThat(rail.lookedAt()).isTrue();
        assertThat(rail.rust()).isEmpty();
        assertThat(rail.holes()).hasValue(1);
        assertThat(rail.need()).contains(RepairNeed.STRUCTURAL);
        assertThat(rail.extent()).contains(RustExtent.HEAVY);
    }

    @Test
    void everyTraceHasItsOwnAreaAndUncertainty() {
        TraceArea area = report(new Drawn(1, TraceKind.SURFACE, square(0, 0, 100), 100))
                .traces()
                .get(0);
        assertThat(area.area().orElseThrow().mm2()).isCloseTo(10_000, within(1e-9));
        // own part: 1.5 px * root(4 corners * (50^2 + 50^2)); scale: 2 marks, each 2 * 10000 / 100 mm2 per pixel
        double own = 1.5 * Math.sqrt(4 * 5000);
        double scale = 1.5 * Math.sqrt(2) * 200;
        // tilt that a ruler does not show: 0.25, and 1.06 for each focal length (0.8 of 4000 px) away from its middle
        double tilt = Math.hypot(0.25, 1.06 * 50 / 3200);
        assertThat(area.sdMm2().orElseThrow())
                .isCloseTo(Math.hypot(Math.hypot(own, scale), 10_000 * tilt), within(0.01));
    }
}
