package quarterlight.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.car.ZoneId;
import quarterlight.edit.row.RowEdits;
import quarterlight.store.SampleVisit;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.OpenedVisit;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.Station;
import quarterlight.ui.kit.visit.StationScreen;
import quarterlight.visit.VisitParts;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.statement.Claim;
import quarterlight.visit.statement.Claimant;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Statement;

/** While a visit is being worked out no station claims what it cannot know yet. */
@Timeout(60)
class WhileWorkingOutTest {
    private static final ZoneId HOOD = new ZoneId("hood");

    /** Sentences that are false or empty before the findings have come, of a visit that has rust, claims, readings and pins. */
    private static final List<String> NOT_YET = List.of(
            "rust.none",
            "rust.not-looked.why",
            "notes.claim.nothing",
            "panels.scatter.none",
            "pages.matters.none",
            "photos.pin.no-suggestion",
            "gauge.no-readings",
            "history.no-evidence",
            "history.next.none",
            "doubt.none",
            "lens.nothing");

    @TempDir
    Path folder;

    private final Map<Station, List<String>> said = new EnumMap<>(Station.class);

    @Test
    void noStationClaimsWhatIsNotWorkedOut() throws Exception {
        List<String> never = new ArrayList<>();
        List<String> course = new CopyOnWriteArrayList<>();
        try (OpenedVisit opened = OpenedVisit.coupe(folder, WhileWorkingOutTest::fill, (parts, visit) -> {
            assertThat(visit.findings()).isEmpty();
            visit.onMeasured(() -> course.add("measured " + visit.measured().isPresent() + ", judged "
                    + visit.findings().isPresent()));
            visit.onFindings(() -> course.add("judged"));
            NOT_YET.forEach(key -> never.add(parts.texts().get(key)));
            for (Station station : Station.values()) {
                said.put(station, words(station, parts, visit));
            }
            never.add(parts.texts().get("working.out"));
        })) {
            assertThat(opened.visit().visit().claims()).hasSize(1);
            OpenedVisit.until(() -> course.contains("judged"));
        }
        assertThat(course.get(0)).as("values do not wait for the judging").isEqualTo("measured true, judged false");
        assertThat(course).filteredOn(told -> told.startsWith("measured")).hasSize(1);
        String working = never.remove(never.size() - 1);
        said.forEach((station, words) -> assertThat(words)
                .as(station.name())
                .isNotEmpty()
                .noneMatch(sentence -> never.stream().anyMatch(sentence::contains))
                .noneMatch(sentence -> sentence.startsWith("Checked: 0 ")));
        for (Station station : Set.of(Station.GAUGE, Station.RUST, Station.MARKS, Station.NOTES)) {
            assertThat(said.get(station))
                    .as(station + " says that it is at work")
                    .anyMatch(working::equals);
        }
    }

    private static void fill(quarterlight.store.VisitStore store) throws Exception {
        PhotoId photo = store.edit("take in", tx -> tx.addPhoto(SampleVisit.fullPhoto(231)));
        RowEdits edits = new RowEdits(store);
        edits.add(RecordKind.PINS, List.of(VisitParts.pin(photo, HOOD)));
        edits.add(RecordKind.READINGS, List.of(SampleVisit.reading(HOOD, "105")));
        edits.add(RecordKind.MARKS, List.of(VisitParts.stamp("Hood stamp", "H7", HOOD, photo)));
        edits.add(
                RecordKind.STATEMENTS,
                List.of(new Statement(
                        HOOD,
                        Facets.of(Condition.SURFACE_RUST),
                        "rust at the seam",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty())));
        edits.add(
                RecordKind.CLAIMS,
                List.of(new Claim(
                        "no rust anywhere",
                        Claimant.SELLER,
                        Optional.of(HOOD),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of("rust"),
                        Optional.empty(),
                        Optional.empty(),
                        false)));
    }

    /** What a station says with a zone and a photo in hand, and the first row of every table chosen. */
    private static List<String> words(Station station, UiContext parts, OpenVisit visit) {
        StationScreen screen =
                Stations.screen(station, parts, visit, Command.of(parts.texts(), "do.take-in", () -> {}));
        screen.shown();
        visit.tellAll();
        visit.selection().zones(Set.of(HOOD));
        WindowParts.within(screen.side(), JTable.class).stream()
                .filter(table -> table.getRowCount() > 0)
                .forEach(table -> table.setRowSelectionInterval(0, 0));
        visit.tellAll();
        List<String> words = new ArrayList<>();
        collect(screen.side(), words);
        return words;
    }

    /** What stands in tabs behind counts too. */
    private static void collect(Component at, List<String> words) {
        if (at instanceof JLabel label && label.getText() != null) {
            words.add(label.getText());
        } else if (at instanceof JTextComponent text) {
            words.add(text.getText());
        } else if (at instanceof JTable table) {
            for (int row = 0; row < table.getRowCount(); row++) {
                for (int column = 0; column < table.getColumnCount(); column++) {
                    words.add(String.valueOf(table.getValueAt(row, column)));
                }
            }
        }
        if (at instanceof Container more) {
            for (Component child : more.getComponents()) {
                collect(child, words);
            }
        }
    }
}
