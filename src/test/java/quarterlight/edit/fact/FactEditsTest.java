package quarterlight.edit.fact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.car.Car;
import quarterlight.car.FinishProfile;
import quarterlight.car.Substrate;
import quarterlight.car.body.Construction;
import quarterlight.car.body.Dimensions;
import quarterlight.car.body.DriveSide;
import quarterlight.car.body.EnginePlace;
import quarterlight.edit.EditRefused;
import quarterlight.store.VisitStore;
import quarterlight.table.ZoneTable;
import quarterlight.visit.ReportLength;
import quarterlight.visit.VisitChoices;
import quarterlight.visit.VisitFacts;

class FactEditsTest {
    private static final ZoneId DENVER = ZoneId.of("America/Denver");
    private static final quarterlight.car.ZoneId HOOD = new quarterlight.car.ZoneId("hood");

    private final FactEdits edits = new FactEdits(ZoneTable.load());

    @TempDir
    Path folder;

    private VisitFacts coupe() throws EditRefused {
        return edits.start(Map.of("car", "Tamarisk", "style", "coupe"), DENVER);
    }

    private VisitFacts with(String... words) throws EditRefused {
        return edits.apply(coupe(), FactEdits.assignments(List.of(words)));
    }

    @Test
    void aNewVisitHasTheUsualWhereNothingIsSaid() throws Exception {
        VisitFacts facts = coupe();
        Car car = facts.car();
        assertThat(car.name()).isEqualTo("Tamarisk");
        assertThat(car.finish()).isEqualTo(FinishProfile.UNKNOWN);
        assertThat(car.substrate()).isEqualTo(Substrate.STEEL);
        assertThat(car.drive()).isEqualTo(DriveSide.LEFT);
        assertThat(car.body().construction()).isEqualTo(Construction.UNIBODY);
        assertThat(car.body().engine()).isEqualTo(EnginePlace.FRONT);
        assertThat(car.dimensions()).isEqualTo(Dimensions.NOT_GIVEN);
        assertThat(facts.timezone()).isEqualTo(DENVER);
        assertThat(facts.gaugeRange().um()).isEqualTo(2000);
        assertThat(facts.inspector()).isEmpty();
    }

    @Test
    void constructionFollowsTheStyleUntilItIsSet() throws Exception {
        assertThat(with("style=pickup").car().body().construction()).isEqualTo(Construction.BODY_ON_FRAME);
        VisitFacts set = with("construction=subframe");
        assertThat(edits.apply(set, Map.of("style", "sedan")).car().body().construction())
                .isEqualTo(Construction.SUBFRAME);
        assertThat(edits.apply(set, Map.of("construction", "")).car().body().construction())
                .isEqualTo(Construction.UNIBODY);
    }

    @Test
    void everyKeyIsTaken() throws Exception {
        VisitFacts facts = with(
                "car=Tamarisk Ridge",
                "year=1971",
                "built=April 1971",
                "finish=lacquer",
                "engine=rear",
                "substrate=fiberglass",
                "drive=right",
                "timezone=Europe/Lisbon",
                "inspector=N. Example",
                "client=a buyer",
                "date=March 2, 2026",
                "place=a barn",
                "odometer=81,240 mi",
                "light=overcast",
                "lifted=on a lift",
                "taken-apart=carpets",
                "claimed=never painted",
                "wheelbase-mm=2740",
                "length-mm=4650 mm",
                "width-mm=1820",
                "height-mm=1310",
                "gauge-range=1500",
                "gauge-correction=yes",
                "terms=as agreed",
                "limits=rain",
                "report=short",
                "substrate.roof=steel");
        Car car = facts.car();
        assertThat(car.modelYear()).hasValue(1971);
        assertThat(car.built().orElseThrow().last()).isEqualTo(LocalDate.of(1971, 4, 30));
        assertThat(car.body().engine()).isEqualTo(EnginePlace.REAR);
        assertThat(car.substrateOf(new quarterlight.car.ZoneId("roof"))).isEqualTo(Substrate.STEEL);
        assertThat(car.substrateOf(HOOD)).isEqualTo(Substrate.FIBERGLASS);
        assertThat(car.dimensions().lengthMm()).hasValue(4650);
        assertThat(facts.date()).contains(LocalDate.of(2026, 3, 2));
        assertThat(facts.takenApart()).contains("carpets");
        assertThat(facts.gaugeRange().um()).isEqualTo(1500);
        assertThat(facts.choices())
                .isEqualTo(new VisitChoices(
                        true, Optional.empty(), Optional.of("as agreed"), Optional.of("rain"), ReportLength.SHORT));
        assertThat(edits.apply(facts, Map.of("gauge-correction", "", "terms", "", "limits", " ", "report", ""))
                        .choices())
                .isEqualTo(VisitChoices.USUAL);
    }

    @Test
    void anEmptyValueClearsAFactOrBringsBackTheUsual() throws Exception {
        VisitFacts filled = with(
                "inspector=N",
                "year=1971",
                "built=1971",
                "finish=enamel",
                "gauge-range=900",
                "substrate.hood=aluminum",
                "width-mm=1800",
                "date=2026-03-02",
                "place=x");
        VisitFacts cleared = edits.apply(
                filled,
                FactEdits.assignments(List.of(
                        "inspector=",
                        "year= ",
                        "built=",
                        "finish=",
                        "gauge-range=",
                        "substrate.hood=",
                        "width-mm=",
                        "date=",
                        "place=")));
        assertThat(cleared).isEqualTo(coupe());
    }

    @Test
    void aRangeInMilsIsConverted() throws Exception {
        assertThat(with("gauge-range=80 mil").gaugeRange().um()).isCloseTo(2032, Offset.offset(1e-9));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "car=|Give a name",
                "style=|one of coupe, sedan, convertible, wagon, pickup",
                "style=spaceship|one of coupe, sedan, convertible, wagon, pickup",
                "year=71|4 digits",
                "year=1492|from 1880 to 2100",
                "built=1971-02-30|real day",
                "built=spring|real day",
                "date=2026-03|YYYY-MM-DD",
                "date=2026-02-29|real day",
                "date=1870-01-01|from 1970",
                "finish=shiny|one of lacquer, enamel, modern, unknown",
                "construction=clay|one of unibody, body-on-frame, subframe",
                "engine=middle|one of front, rear",
                "substrate=cheese|one of steel, aluminum, fiberglass, plastic, wood",
                "drive=middle|one of left, right",
                "timezone=|time zone",
                "timezone=Atlantis/Main|time zone",
                "wheelbase-mm=2.74|from 1000 to 6000",
                "wheelbase-mm=110 in|whole millimeters",
                "length-mm=465|from 1500 to 9000",
                "width-mm=-1800|from 900 to 3000",
                "height-mm=99999999999|from 700 to 3500",
                "gauge-range=0|above 0",
                "gauge-range=2 mm|such as 80 mil",
                "gauge-range=NaN|above 0",
                "gauge-correction=maybe|yes or no",
                "report=long|one of full, short",
                "substrate.nowhere=steel|no zone \"nowhere\"",
                "substrate.bed-left=steel|no zone",
                "substrate.hood=cheese|one of steel",
            })
    void aValueThatCannotBeIsRefusedInASentence(String word, String said) throws Exception {
        String key = word.substring(0, word.indexOf('='));
        EditRefused e = catchThrowableOfType(EditRefused.class, () -> with(word));
        assertThat(e).as(word).isNotNull();
        assertThat(e.subject()).isEqualTo(key);
        assertThat(e.getMessage()).contains(key).contains(said).endsWith(".");
    }

    @Test
    void anUnknownKeyIsRefusedWithTheList() {
        assertThatThrownBy(() -> with("colour=red"))
                .isInstanceOf(EditRefused.class)
                .hasMessageContaining("\"colour\"")
                .hasMessageContaining("car, style, year")
                .hasMessageContaining("substrate.ZONE");
    }

    @Test
    void carAndStyleAreNeeded() {
        assertThatThrownBy(() -> edits.start(Map.of("car", "T"), DENVER)).hasMessageContaining("style");
        assertThatThrownBy(() -> edits.start(Map.of("style", "coupe"), DENVER)).hasMessageContaining("car");
    }

    @Test
    void wordsThatSetNothingAreRefused() throws Exception {
        assertThatThrownBy(() -> FactEdits.assignments(List.of("inspector"))).hasMessageContaining("KEY=VALUE");
        assertThatThrownBy(() -> FactEdits.assignments(List.of("=x"))).isInstanceOf(EditRefused.class);
        assertThatThrownBy(() -> FactEdits.assignments(List.of("year=1970", "year=1971")))
                .hasMessageContaining("twice");
        assertThat(FactEdits.assignments(List.of("claimed=a=b"))).containsEntry("claimed", "a=b");
    }

    @Test
    void settingIsOneStepAndRemarksOnRowsThatLoseTheirZone() throws Exception {
        Clock clock = Clock.fixed(Instant.EPOCH, ZoneOffset.UTC);
        try (VisitStore store = VisitStore.create(folder.resolve("v"), coupe(), clock)) {
            assertThat(edits.set(store, Map.of("substrate.hood", "aluminum"))).isEmpty();
            assertThat(store.undoLabel()).contains("set substrate of hood to aluminum");
            edits.set(
                    store,
                    Map.of("client", "R. Birch", "taken-apart", "kick panels", "light", "dusk", "place", "yard"));
            assertThat(store.undoLabel()).contains("set client, light, place and 1 more");
            edits.set(store, Map.of("taken-apart", "", "wheelbase-mm", ""));
            assertThat(store.undoLabel()).contains("set taken apart and wheelbase");
            edits.set(store, Map.of("client", "Birch & Daughters"));
            assertThat(store.undoLabel()).contains("set client to \"Birch & Daughters\"");
            edits.set(store, Map.of("client", ""));
            assertThat(store.undoLabel()).contains("clear client");
            assertThat(edits.set(store, Map.of("engine", "rear")))
                    .singleElement()
                    .satisfies(remark -> assertThat(remark)
                            .isEqualTo("1 row lies in zone hood, which a car of this body does not have."));
            assertThat(store.undoLabel()).isEqualTo(Optional.of("set engine to rear"));
            store.undo();
            assertThat(store.read().facts().car().body().engine()).isEqualTo(EnginePlace.FRONT);
        }
    }
}
