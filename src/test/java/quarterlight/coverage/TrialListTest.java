package quarterlight.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.rust.TestVisits;
import quarterlight.table.TableUnreadable;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.TrialTable;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.trial.Trial;
import quarterlight.visit.trial.TrialResult;

class TrialListTest {
    private static final TrialList LIST = TrialTable.load();

    private static VisitRecord visit(Trial... trials) {
        return new VisitParts(TestVisits.facts(BodyStyle.COUPE))
                .trials(TestVisits.rows(List.of(trials)))
                .record();
    }

    private static Trial trial(String item, TrialResult result) {
        return new Trial(item, result, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static Set<ZoneId> coupe() {
        return ZoneTable.load().zonesOf(Body.usual(BodyStyle.COUPE)).stream()
                .map(Zone::id)
                .collect(Collectors.toSet());
    }

    @Test
    void everyZoneOfTheListIsAZoneOfSomeCar() {
        Set<ZoneId> all = java.util.Arrays.stream(BodyStyle.values())
                .flatMap(style -> ZoneTable.load().zonesOf(Body.usual(style)).stream())
                .map(Zone::id)
                .collect(Collectors.toSet());
        assertThat(all).containsAll(LIST.items().stream().map(TrialItem::zone).toList());
    }

    @Test
    void theGroupsOfACarThatRunsFoldAwayForOneThatDoesNot() {
        assertThat(LIST.groups(true)).containsOnlyKeys(TrialGroup.values());
        assertThat(LIST.groups(false)).doesNotContainKey(TrialGroup.RUNNING);
        assertThat(LIST.groups(false).get(TrialGroup.ENGINE))
                .noneMatch(TrialItem::onlyRunning)
                .isNotEmpty();
    }

    @Test
    void whetherACarRunsIsToldByItsTrials() {
        assertThat(LIST.runs(visit())).isEmpty();
        assertThat(LIST.runs(visit(trial("starts FROM cold", TrialResult.NOT_TRIED))))
                .contains(false);
        assertThat(LIST.runs(visit(trial("Starts from cold", TrialResult.WORKS_WITH_A_FAULT))))
                .contains(true);
        assertThat(LIST.runs(visit(trial("Horn", TrialResult.WORKS))))
                .as("the horn needs no engine")
                .isEmpty();
    }

    @Test
    void whatNoTrialSpeaksOfIsUntried() {
        List<TrialItem> open = LIST.untried(visit(trial("horn", TrialResult.NOT_TRIED)), coupe(), true);
        assertThat(open).extracting(TrialItem::item).contains("Headlamps").doesNotContain("Horn", "Soft top");
        assertThat(open).hasSize(LIST.items().size() - 2);
    }

    @Test
    void anOwnListTakesThePlaceOfOurs(@TempDir Path settings) throws Exception {
        assertThat(TrialTable.load(settings)).isEqualTo(LIST);
        Files.writeString(
                settings.resolve("trials.csv"), "group,item,unit,zone,running\nbrakes,Hill hold,,pedals,yes\n");
        assertThat(TrialTable.load(settings).items())
                .extracting(TrialItem::item)
                .containsExactly("Hill hold");
        Files.writeString(
                settings.resolve("trials.csv"), "group,item,unit,zone,running\nbreaks,Hill hold,,pedals,yes\n");
        assertThatThrownBy(() -> TrialTable.load(settings))
                .isInstanceOf(TableUnreadable.class)
                .hasMessageContaining("line 2", "breaks", "trials.csv");
    }

    @Test
    void anItemSaysHowItIsAnswered() {
        List<TrialItem> items = TrialTable.load().items();
        assertThat(items)
                .filteredOn(item -> item.item().startsWith("Smoke"))
                .allMatch(item -> item.nature() == TrialNature.OBSERVATION)
                .isNotEmpty();
        assertThat(items)
                .filteredOn(item -> item.item().startsWith("Tread"))
                .allMatch(item ->
                        item.nature() == TrialNature.MEASURE && item.unit().isPresent())
                .hasSize(4);
        assertThat(items)
                .extracting(TrialItem::item)
                .contains("Water test", "Heater", "Cranks", "Reversing lamps", "Plate lamp", "Rear window", "Soft top");
        assertThat(TrialNature.FUNCTION.answers()).startsWith(TrialResult.WORKS).doesNotContain(TrialResult.HEAVY);
    }
}
