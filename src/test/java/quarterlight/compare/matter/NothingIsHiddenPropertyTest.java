package quarterlight.compare.matter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import quarterlight.car.Zone;
import quarterlight.compare.RandomCars;
import quarterlight.compare.TestCar;
import quarterlight.compare.place.Place;
import quarterlight.compare.said.ComparisonSheet;
import quarterlight.findings.Findings;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.statement.Statement;

/**
 * Cars by chance: whatever is grave or major on any of them stands in the first part, with the right class for the others. What the class must be is
 * worked out here from the rows of the visits alone.
 */
class NothingIsHiddenPropertyTest {
    private static final int RUNS = Integer.getInteger("quarterlight.rounds", 12);
    private static final Set<Condition> RUST =
            Set.of(Condition.SURFACE_RUST, Condition.SCALE, Condition.PITTED, Condition.RUSTED_THROUGH);

    @Test
    void everyGraveOrMajorMatterOfAnyCarStandsInTheFirstPartWithTheRightClassForTheOthers() {
        int heavy = 0;
        for (long seed = 1; seed <= RUNS; seed++) {
            RandomCars chance = new RandomCars(seed);
            List<TestCar> cars = new ArrayList<>();
            int count = 2 + chance.upTo(3);
            for (int car = 0; car < count; car++) {
                cars.add(chance.next(MatterRow.letter(car)));
            }
            ComparisonSheet sheet = TestCar.sheet(Care.NONE, cars.toArray(TestCar[]::new));
            heavy += check(sheet, "seed " + seed);
        }
        assertThat(heavy).as("the cars by chance have matters to hide").isGreaterThan(RUNS);
    }

    private static int check(ComparisonSheet sheet, String seed) {
        MatterTable table = sheet.table();
        int heavy = 0;
        for (int car = 0; car < table.cars().size(); car++) {
            for (FoundMatter matter : table.cars().get(car).matters()) {
                if (matter.severity().compareTo(Severity.MAJOR) >= 0) {
                    heavy++;
                    stands(table, car, matter, seed);
                }
            }
        }
        assertThat(table.rows()).as(seed).allSatisfy(row -> {
            assertThat(row.cells()).hasSize(table.cars().size());
            row.cells().forEach(cell -> assertThat(cell.text()).isNotBlank());
        });
        List<Severity> order = table.rows().stream().map(MatterRow::severity).toList();
        assertThat(order).as(seed + ": most severe first").isSortedAccordingTo((a, b) -> b.compareTo(a));
        return heavy;
    }

    private static void stands(MatterTable table, int car, FoundMatter matter, String seed) {
        String what = seed + ", " + MatterRow.letter(car) + ": " + matter.text();
        Optional<MatterRow> row = table.heavy().stream()
                .filter(one -> one.cells().get(car).text().contains(matter.text()))
                .findFirst();
        assertThat(row).as(what).isPresent();
        assertThat(row.get().severity().compareTo(matter.severity())).as(what).isNotNegative();
        assertThat(row.get().cells().get(car).kind())
                .as(what)
                .isEqualTo(matter.looked() ? CellClass.FOUND : CellClass.NOT_LOOKED_AT);
        for (int other = 0; other < table.cars().size(); other++) {
            if (other == car) {
                continue;
            }
            Optional<CellClass> expected = expected(table, other, row.get());
            CellClass shown = row.get().cells().get(other).kind();
            String cell = what + ", on " + MatterRow.letter(other) + ": "
                    + row.get().cells().get(other).text();
            expected.ifPresent(kind -> assertThat(shown).as(cell).isEqualTo(kind));
        }
    }

    /** What a car must show of a matter of rust, from its statements alone; empty for other matters, which have tests of their own. */
    private static Optional<CellClass> expected(MatterTable table, int car, MatterRow row) {
        if (row.subject().topic() != Topic.RUST || row.subject().places().size() != 1) {
            return Optional.empty();
        }
        Findings findings = table.cars().get(car).findings();
        Place place = row.subject().places().get(0);
        Set<String> here =
                place.on(car).stream().map(Zone::id).map(Object::toString).collect(Collectors.toSet());
        List<Statement> said = findings.visit().standing().stream()
                .filter(one -> here.contains(one.zone().toString()))
                .toList();
        if (here.isEmpty()) {
            // a statement may name a zone that the body does not have: what was found stays found
            boolean stray = findings.visit().standing().stream().anyMatch(one -> place.holds(one.zone()));
            return stray ? Optional.empty() : Optional.of(CellClass.NOT_ON_THIS_CAR);
        }
        if (said.stream().anyMatch(one -> one.is(Condition.MISSING) || one.is(Condition.DAMAGED))) {
            return Optional.empty();
        }
        if (said.stream()
                .anyMatch(one -> one.what().condition().filter(RUST::contains).isPresent())) {
            return Optional.of(CellClass.FOUND);
        }
        long clean = here.stream()
                .filter(zone ->
                        said.stream().anyMatch(one -> one.zone().toString().equals(zone) && one.is(Condition.NO_RUST)))
                .count();
        return Optional.of(clean == here.size() ? CellClass.CLEAN : CellClass.NOT_LOOKED_AT);
    }
}
