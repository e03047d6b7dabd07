package quarterlight.compare.matter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quarterlight.car.body.BodyStyle;
import quarterlight.compare.TestCar;
import quarterlight.compare.said.ComparisonSheet;
import quarterlight.compare.said.RowText;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.trial.TrialResult;

/** Pairs of cars made for it: what stands first, and what each cell says of the other car. */
class MatterTableTest {
    private static RowText row(ComparisonSheet sheet, String part) {
        return sheet.heavy().stream()
                .filter(row -> row.cells().stream().anyMatch(cell -> cell.text().contains(part)))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no row says " + part + ": " + sheet.heavy()));
    }

    private static List<CellClass> classes(RowText row) {
        return row.cells().stream().map(RowText.CellText::kind).toList();
    }

    @Test
    void theRottenTruckBesideTheCleanCoupeHidesNothing() {
        ComparisonSheet sheet = TestCar.sheet(Care.NONE, TestCar.rottenTruck(), TestCar.cleanCoupe());
        RowText rail = row(sheet, "Rail rotted through");
        assertThat(sheet.heavy().get(0)).isEqualTo(rail);
        assertThat(rail.severity()).isEqualTo("grave");
        assertThat(rail.place()).isEqualTo("Side member, left");
        assertThat(rail.why()).isPresent();
        assertThat(classes(rail)).containsExactly(CellClass.FOUND, CellClass.NOT_LOOKED_AT);
        assertThat(rail.contrast()).isEqualTo("Found on A, not looked at on B");
        assertThat(rail.row().isOpen()).isTrue();
        RowText stamp = row(sheet, "R7114C");
        assertThat(classes(stamp)).containsExactly(CellClass.FOUND, CellClass.CLEAN);
        RowText gauge = row(sheet, "gauge check");
        assertThat(classes(gauge)).containsExactly(CellClass.FOUND, CellClass.CLEAN);
        assertThat(sheet.cars().get(0).safety())
                .anySatisfy(line -> assertThat(line).contains("Rail rotted through"));
        assertThat(sheet.hours().get(1))
                .anySatisfy(look -> assertThat(look.what()).contains("rail"));
    }

    @Test
    void theGravestFindingInAZoneThatTheOtherLacksStaysAndSaysSo() {
        ComparisonSheet sheet = TestCar.sheet(Care.NONE, TestCar.cleanCoupe(), TestCar.rottenTruck());
        RowText corner = row(sheet, "Cab corner open");
        assertThat(classes(corner)).containsExactly(CellClass.NOT_ON_THIS_CAR, CellClass.FOUND);
        assertThat(corner.cells().get(0).text()).contains("has no cab corner, right");
        assertThat(corner.contrast()).isEqualTo("Found on B, not there on A");
        assertThat(sheet.pair().apart()).anySatisfy(place -> {
            assertThat(place.label()).isEqualTo("Cab corner, right");
            assertThat(place.b().lines()).anyMatch(line -> line.contains("Cab corner open"));
            assertThat(place.a().lines()).singleElement().asString().contains("it has no cab corner");
        });
    }

    @Test
    void aCarNeverMeasuredIsNotCleanBesideOneThatWasMeasured() {
        TestCar thick = TestCar.cleanCoupe().measured("fender-left", 900, 950, 1000, 980);
        ComparisonSheet sheet = TestCar.sheet(Care.NONE, thick, TestCar.of(BodyStyle.COUPE));
        RowText fender = sheet.heavy().stream()
                .filter(row -> row.row().subject().topic() == Topic.FINISH
                        && row.place().contains("fender"))
                .findFirst()
                .orElseThrow();
        assertThat(classes(fender)).containsExactly(CellClass.FOUND, CellClass.NOT_LOOKED_AT);
        assertThat(sheet.pair().comparison().counted()).isEmpty();
        assertThat(sheet.pair().levels()).contains("B was not measured.");
        assertThat(sheet.table().rows())
                .as("a prior is never a finding")
                .allSatisfy(row -> assertThat(row.cells().get(1).text()).doesNotContain("refinish likelihood"));
    }

    @Test
    void readingsOfAGaugeWhoseCheckFailedMakeNothingClean() {
        TestCar thick = TestCar.cleanCoupe().measured("fender-left", 900, 950, 1000, 980);
        TestCar suspect = TestCar.of(BodyStyle.COUPE).checked(100, 140);
        for (String zone : List.of("hood", "roof", "decklid", "fender-left", "fender-right")) {
            suspect.measured(zone, 108, 112, 115);
        }
        ComparisonSheet sheet = TestCar.sheet(Care.NONE, thick, suspect);
        assertThat(sheet.heavy().stream()
                        .filter(row -> row.row().subject().topic() == Topic.FINISH)
                        .map(MatterTableTest::classes))
                .isNotEmpty()
                .allSatisfy(kinds -> assertThat(kinds.get(1)).isNotEqualTo(CellClass.CLEAN));
        assertThat(sheet.pair().counts()).isEmpty();
        assertThat(sheet.pair().comparison().refinished()).isEmpty();
        assertThat(sheet.pair().compared()).contains("A gauge check failed on B");
    }

    @Test
    void whatWasLookedAtAndIsNotThereIsClean() {
        TestCar rust = TestCar.of(BodyStyle.COUPE)
                .stated("floor-front-left", Condition.RUSTED_THROUGH, "Hole under the seat.", Severity.GRAVE)
                .tried("Brake pedal holds", TrialResult.DOES_NOT);
        TestCar clean =
                TestCar.of(BodyStyle.COUPE).noRust("floor-front-left").tried("brake pedal holds ", TrialResult.WORKS);
        ComparisonSheet sheet = TestCar.sheet(Care.NONE, rust, clean);
        assertThat(classes(row(sheet, "Hole under the seat"))).containsExactly(CellClass.FOUND, CellClass.CLEAN);
        assertThat(classes(row(sheet, "Brake pedal holds"))).containsExactly(CellClass.FOUND, CellClass.CLEAN);
        ComparisonSheet open = TestCar.sheet(Care.NONE, rust, TestCar.of(BodyStyle.COUPE));
        assertThat(classes(row(open, "Hole under the seat"))).containsExactly(CellClass.FOUND, CellClass.NOT_LOOKED_AT);
        assertThat(classes(row(open, "Brake pedal holds"))).containsExactly(CellClass.FOUND, CellClass.NOT_LOOKED_AT);
    }

    @Test
    void equalCarsShowTheSameInEveryRowAndNeitherIsCalledFewer() {
        ComparisonSheet sheet = TestCar.sheet(
                Care.NONE,
                TestCar.cleanCoupe().stated("roof", Condition.DAMAGED, "Dented.", Severity.MAJOR),
                TestCar.cleanCoupe().stated("roof", Condition.DAMAGED, "Dented.", Severity.MAJOR));
        assertThat(sheet.heavy()).isNotEmpty().allSatisfy(row -> {
            assertThat(row.cells().get(0).kind()).isEqualTo(row.cells().get(1).kind());
            assertThat(row.cells().get(0).text()).isEqualTo(row.cells().get(1).text());
        });
        assertThat(sheet.pair().counts()).isNotEmpty().allSatisfy(count -> assertThat(count.aFewer())
                .isEqualTo(count.bFewer()));
        assertThat(sheet.pair().places())
                .allSatisfy(place -> assertThat(place.differences()).isEmpty());
    }

    @Test
    void sixCarsStandInOneTableWithSixCells() {
        ComparisonSheet sheet = TestCar.sheet(
                Care.NONE,
                TestCar.rottenTruck(),
                TestCar.cleanCoupe(),
                TestCar.of(BodyStyle.WAGON).noRust("roof"),
                TestCar.of(BodyStyle.SEDAN).stated("roof", Condition.RUSTED_THROUGH, "Roof open.", Severity.MAJOR),
                TestCar.of(BodyStyle.CONVERTIBLE),
                TestCar.of(BodyStyle.PICKUP).noRust("frame-side-rail-left"));
        assertThat(sheet.heavy()).allSatisfy(row -> assertThat(row.cells()).hasSize(6));
        assertThat(classes(row(sheet, "Roof open.")))
                .containsExactly(
                        CellClass.NOT_LOOKED_AT,
                        CellClass.NOT_LOOKED_AT,
                        CellClass.CLEAN,
                        CellClass.FOUND,
                        CellClass.NOT_ON_THIS_CAR,
                        CellClass.NOT_LOOKED_AT);
        assertThat(row(sheet, "Roof open.").contrast())
                .isEqualTo("Found on D, clean on C, not looked at on A, B and F, not there on E");
        assertThat(row(sheet, "Rail rotted through").cells().get(5).kind()).isEqualTo(CellClass.CLEAN);
        assertThat(sheet.hours()).hasSize(6);
    }

    @Test
    void whatTheBuyerCaresAboutOrdersWithinASeverityAndNeverLiftsALesserOne() {
        TestCar car = TestCar.of(BodyStyle.COUPE)
                .stated("floor-front-left", Condition.RUSTED_THROUGH, "Hole.", Severity.GRAVE)
                .stated("seat-rear", Condition.WORN, "Worn through.", Severity.MAJOR)
                .stamped("Engine stamp", "engine", "R7114C", "R7114D");
        ComparisonSheet none = TestCar.sheet(Care.NONE, car, TestCar.cleanCoupe());
        Care originality = new Care(Map.of(Concern.ORIGINALITY, 10));
        ComparisonSheet asked = TestCar.sheet(originality, car, TestCar.cleanCoupe());
        assertThat(asked.heavy().get(0).severity()).isEqualTo("grave");
        List<Concern> major = asked.heavy().stream()
                .filter(row -> row.severity().equals("major") && !row.row().safety())
                .map(row -> row.row().concern())
                .toList();
        assertThat(major.get(0)).isEqualTo(Concern.ORIGINALITY);
        assertThat(asked.heavy()).hasSameSizeAs(none.heavy());
        assertThat(asked.care()).contains("originality 10");
        assertThat(none.care()).contains("nothing was asked");
    }

    @Test
    void weightsAreReadAsTypedAndRefusedWithWhatWasExpected() {
        assertThat(Care.parse("structure=5, running=2"))
                .isEqualTo(new Care(Map.of(Concern.STRUCTURE, 5, Concern.RUNNING_AND_DRIVING, 2)));
        assertThat(Care.parse("finish=0")).isEqualTo(Care.NONE);
        for (String wrong : List.of("", "price=3", "structure", "structure=11", "structure=-1", "finish=1,finish=2")) {
            assertThatThrownBy(() -> Care.parse(wrong)).isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> Care.parse("price=3"))
                .hasMessageContaining("originality, structure, running and driving");
    }
}
