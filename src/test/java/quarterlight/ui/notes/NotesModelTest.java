package quarterlight.ui.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.car.body.BodyStyle;
import quarterlight.coverage.TrialGroup;
import quarterlight.coverage.TrialItem;
import quarterlight.coverage.TrialList;
import quarterlight.coverage.TrialNature;
import quarterlight.language.Language;
import quarterlight.rust.TestVisits;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.trial.Trial;
import quarterlight.visit.trial.TrialResult;

/** What the pages of the Notes station show: functions to try with what was found, and sentences to offer. */
class NotesModelTest {
    private static final List<ZoneId> ZONES = List.of(new ZoneId("engine"), new ZoneId("dash"));
    private static final TrialList LIST = new TrialList(List.of(
            item(TrialGroup.ENGINE, "Starts from cold", "engine", true),
            item(TrialGroup.ENGINE, "Oil level", "engine", false),
            item(TrialGroup.CABIN, "Radio", "dash", false),
            item(TrialGroup.BODY, "Convertible top", "soft-top", false),
            item(TrialGroup.RUNNING, "Every gear", "engine", true)));

    private final NotesModel model = new NotesModel();

    private static TrialItem item(TrialGroup group, String name, String zone, boolean running) {
        return new TrialItem(
                group, name, Optional.of("psi"), new ZoneId(zone), running, TrialNature.FUNCTION, Optional.empty());
    }

    private static Trial trial(String item, TrialResult result) {
        return new Trial(
                item,
                result,
                Optional.of(new BigDecimal("4.5")),
                Optional.of("bar"),
                Optional.empty(),
                Optional.empty());
    }

    private static VisitRecord visit(Trial... trials) {
        return new VisitParts(TestVisits.facts(BodyStyle.COUPE))
                .trials(TestVisits.rows(List.of(trials)))
                .statements(TestVisits.rows(List.of(
                        said("hood", Facets.of(Condition.DAMAGED), "dented at the lip"),
                        said("rear-seat", Facets.of(Condition.NOT_LOOKED_AT), "rear seat not removed"))))
                .record();
    }

    private static Statement said(String zone, Facets kind, String text) {
        return new Statement(
                new ZoneId(zone), kind, text, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    private List<String> items(VisitRecord visit) {
        return model.trials(visit, ZONES).stream()
                .map(NotesModel.TrialLine::item)
                .toList();
    }

    @Test
    void functionsOfZonesTheCarHasStandInTheirGroupsAndOthersBelow() {
        model.lists(new NotesModel.Lists(LIST, List.of()));
        VisitRecord visit = visit(trial("Cigar lighter", TrialResult.WORKS), trial("oil LEVEL", TrialResult.WORKS));
        assertThat(items(visit))
                .containsExactly("Starts from cold", "Oil level", "Radio", "Every gear", "Cigar lighter");
        assertThat(model.trials(visit, ZONES).get(1).kept()).isPresent();
        assertThat(model.trials(visit, ZONES).get(1).listed().orElseThrow().unit())
                .contains("psi");
        assertThat(model.trials(visit, ZONES).get(4).listed()).isEmpty();
    }

    @Test
    void aFunctionTypedInGermanAnswersTheLineOfTheList() throws Exception {
        model.lists(new NotesModel.Lists(LIST, List.of()));
        assertThat(Language.GERMAN.during(() -> model.named(" kaltstart "))).isEqualTo("Starts from cold");
        assertThat(Language.GERMAN.during(() -> model.named("starts from cold")))
                .isEqualTo("Starts from cold");
        assertThat(Language.GERMAN.during(() -> model.named(" Zigarettenanzünder ")))
                .isEqualTo("Zigarettenanzünder");
        assertThat(model.named("Kaltstart")).as("in an English window").isEqualTo("Kaltstart");
    }

    @Test
    void whatNeedsARunningCarFoldsAwayAsTheTrialsTellAndAsTheUserChooses() {
        model.lists(new NotesModel.Lists(LIST, List.of()));
        VisitRecord still = visit(trial("Starts from cold", TrialResult.DOES_NOT));
        assertThat(model.runs(still)).isFalse();
        assertThat(items(still)).as("what was tried stays").containsExactly("Oil level", "Radio", "Starts from cold");
        model.runs(true);
        assertThat(items(still)).contains("Every gear");
        model.runs(false);
        assertThat(items(visit())).containsExactly("Oil level", "Radio");
    }

    @Test
    void sentencesOfEarlierVisitsAndOfTheSameSortAreOffered() {
        model.lists(new NotesModel.Lists(LIST, List.of("gap wider at the front")));
        assertThat(model.phrases(visit(), "", false))
                .containsExactlyInAnyOrder("gap wider at the front", "dented at the lip");
        assertThat(model.phrases(visit(), "re", true)).containsExactly("rear seat not removed");
        model.wrote("dull all over");
        assertThat(model.phrases(visit(), "du", false)).containsExactly("dull all over");
    }
}
