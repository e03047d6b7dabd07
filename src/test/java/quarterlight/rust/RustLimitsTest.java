package quarterlight.rust;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.car.ZoneId;
import quarterlight.rust.need.RepairNeed;
import quarterlight.table.ZoneTable;
import quarterlight.units.Area;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PhotoScale.KnownLength;
import quarterlight.visit.annotation.PhotoScale.KnownRectangle;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.annotation.TraceKind;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.SaidSize;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.statement.StatementDetails;

/** Sizes in words, rust by eye, and what is said of a single trace, each limit from both sides. */
class RustLimitsTest {
    private static final ZoneId SPARE_WELL = new ZoneId("spare-well");

    /** A US quarter is 24.26 mm across, 462.2 mm2; a card 4,620.7 mm2. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "9.9|9.9 mm2",
                "10|10 mm2",
                "46.1|less than a tenth of a quarter coin",
                "46.3|an eighth of a quarter coin",
                "78.5|an eighth",
                "78.6|a quarter of a quarter coin",
                "134.0|a quarter of",
                "134.1|a third of a quarter coin",
                "184.8|a third",
                "184.9|half a quarter coin",
                "277.3|half",
                "277.4|two thirds of a quarter coin",
                "392.8|two thirds",
                "392.9|about one quarter coin",
                "693.2|about one quarter coin",
                "693.4|about 2 quarter coins",
                "3927.5|about 8 quarter coins",
                "3927.7|about one bank card",
                "6799|about one bank card",
                "6801|about one palm",
                "633000|about 10 letter sheets",
                "634000|more than 10 letter sheets",
            })
    void areasAreLikenedToThingsFromTheirLimitsOn(double mm2, String words) {
        assertThat(EverydaySize.words(new Area(mm2))).contains(words);
        assertThat(EverydaySize.beside(new Area(mm2)).orElseThrow()).isNotBlank();
        assertThat(EverydaySize.beside(new Area(0))).isEmpty();
    }

    private static Statement seen(String zone, Condition condition, Double mm) {
        return new Statement(
                new ZoneId(zone),
                Facets.of(condition),
                "seen",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                StatementDetails.NONE.withSize(Optional.ofNullable(mm).map(size -> new SaidSize(size + " mm"))));
    }

    private static ZoneRust spareWell(Statement... statements) {
        return RustReport.of(TestVisits.coupe(List.of(), List.of(statements)), ZoneTable.load(), Map.of())
                .zone(SPARE_WELL)
                .orElseThrow();
    }

    /** A length said is the diameter of a round hole: 25.2 mm are 499 mm2, 25.3 mm are 503, and 500 is the limit there. */
    @Test
    void aSizeSaidIsTheDiameterOfARoundHole() {
        assertThat(spareWell(seen("spare-well", Condition.RUSTED_THROUGH, 25.2)).needByEye())
                .contains(RepairNeed.PATCH);
        assertThat(spareWell(seen("spare-well", Condition.RUSTED_THROUGH, 25.3)).needByEye())
                .contains(RepairNeed.STRUCTURAL);
        assertThat(spareWell(seen("spare-well", Condition.RUSTED_THROUGH, null)).needByEye())
                .contains(RepairNeed.STRUCTURAL);
    }

    @Test
    void onlyRustOfTheZoneItselfIsSeenThere() {
        ZoneRust well = spareWell(
                seen("spare-well", Condition.WORN, null),
                seen("spare-well", Condition.SURFACE_RUST, null),
                seen("hood", Condition.PITTED, null));
        assertThat(well.byEye()).singleElement().satisfies(one -> {
            assertThat(one.statement().zone()).isEqualTo(SPARE_WELL);
            assertThat(one.advice().need()).contains(RepairNeed.REFINISH);
        });
        assertThat(spareWell(seen("hood", Condition.PITTED, null)).lookedAt()).isFalse();
    }

    @Test
    void zonesOfTheCarAreListedAndOthersOnlyWhereATraceLies() {
        RustReport bare = RustReport.of(TestVisits.coupe(List.of(), List.of()), ZoneTable.load(), Map.of());
        ZoneId bed = new ZoneId("bed-floor");
        assertThat(bare.zone(SPARE_WELL)).isPresent();
        assertThat(bare.zone(bed)).isEmpty();
        assertThat(bare.zone(new ZoneId("whole-car"))).isEmpty();
        Trace stray = trace(new KnownLength(p(0, 0), p(100, 0), 100), square(10, 10, 100), bed);
        assertThat(RustReport.of(TestVisits.coupe(List.of(stray), List.of()), ZoneTable.load(), Map.of())
                        .zone(bed))
                .isPresent();
    }

    private static PixelPoint p(double x, double y) {
        return new PixelPoint(x, y);
    }

    private static Outline square(double x, double y, double side) {
        return new Outline(List.of(p(x, y), p(x + side, y), p(x + side, y + side), p(x, y + side)), List.of());
    }

    private static Trace trace(PhotoScale scale, Outline outline, ZoneId zone) {
        return new Trace(new PhotoId(1), TraceKind.SURFACE, outline, scale, zone, Optional.empty(), Optional.empty());
    }

    private static List<String> remarks(PhotoScale scale, Outline outline) {
        return RustReport.of(
                        TestVisits.coupe(List.of(trace(scale, outline, SPARE_WELL)), List.of()),
                        ZoneTable.load(),
                        Map.of())
                .traces()
                .get(0)
                .remarks();
    }

    /** A card of 856 by 540 pixels has a size of 680 (the root of its area); three of them are 2,040. */
    @Test
    void anOutlineFarFromItsCardIsRemarkedOnBeyondThreeOfItsSizes() {
        KnownRectangle card = new KnownRectangle(List.of(p(100, 100), p(956, 100), p(956, 640), p(100, 640)), 85.6, 54);
        assertThat(remarks(card, square(2400, 320, 100))).isEmpty();
        assertThat(remarks(card, square(2480, 320, 100)))
                .singleElement()
                .asString()
                .contains("far beyond the rectangle");
        KnownRectangle called = new KnownRectangle(card.corners(), 297, 210);
        assertThat(remarks(called, square(1000, 320, 100)).get(0)).contains("No usual camera", "297 x 210 mm");
    }

    /** A ruler leaves a quarter open for its tilt, which is more than a fifth; a card beside a large patch does not. */
    @Test
    void anAreaThatTheMarksLeaveOpenByMoreThanAFifthSaysByHowMuch() {
        List<String> ruler = remarks(new KnownLength(p(0, 0), p(1000, 0), 100), square(0, 10, 1000));
        assertThat(ruler).hasSize(2);
        assertThat(ruler.get(0)).contains("known length", "45 degrees");
        assertThat(ruler.get(1)).contains("open by 3", "%");
        KnownRectangle card = new KnownRectangle(List.of(p(100, 100), p(956, 100), p(956, 640), p(100, 640)), 85.6, 54);
        // marks off by 1.5 pixels move a square of side s by 1.5 times the root of 2 s2: more than a fifth below 10.6
        // pixels
        assertThat(remarks(card, square(960, 320, 10))).anyMatch(text -> text.contains("leave the area open by 21 %"));
        assertThat(remarks(card, square(960, 320, 11))).isEmpty();
    }
}
