package quarterlight.store.schema;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static quarterlight.store.SampleVisit.CLOCK;
import static quarterlight.store.SampleVisit.HOOD;
import static quarterlight.store.SampleVisit.bareFacts;
import static quarterlight.store.SampleVisit.reading;

import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.store.EditGroup;
import quarterlight.store.RandomEdits;
import quarterlight.store.SampleVisit;
import quarterlight.store.StoreAudit;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitUnreadable;
import quarterlight.visit.row.RecordKind;

/** Laws of undo: undoing every step gives the start, redoing every step gives the end, cell for cell. */
class UndoPropertyTest {
    private static final int EDITS = 60;

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void undoingAllGivesTheStartAndRedoingAllTheEnd(long seed) throws Exception {
        Random random = new Random(seed);
        try (VisitStore store = VisitStore.create(folder.resolve("v"), SampleVisit.fullFacts(), CLOCK)) {
            List<String> states = new ArrayList<>(List.of(dump(store)));
            RandomEdits edits = new RandomEdits(random);
            while (states.size() <= EDITS) {
                if (edits.oneOf(store)) {
                    states.add(dump(store));
                }
            }
            for (int i = states.size() - 2; i >= 0; i--) {
                assertThat(store.undo())
                        .as("seed %d, undo to state %d", seed, i)
                        .isPresent();
                assertThat(dump(store)).as("seed %d, state %d", seed, i).isEqualTo(states.get(i));
            }
            assertThat(store.undo()).as("seed %d", seed).isEmpty();
            for (int i = 1; i < states.size(); i++) {
                assertThat(store.redo())
                        .as("seed %d, redo to state %d", seed, i)
                        .isPresent();
                assertThat(dump(store)).as("seed %d, state %d", seed, i).isEqualTo(states.get(i));
            }
            assertThat(store.redo()).as("seed %d", seed).isEmpty();
            assertThat(StoreAudit.of(store)).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void walkingBackAndForthBetweenEditsKeepsTheLine(long seed) throws Exception {
        Random random = new Random(seed);
        try (VisitStore store = VisitStore.create(folder.resolve("v"), bareFacts(), CLOCK)) {
            List<String> line = new ArrayList<>(List.of(dump(store)));
            int at = 0;
            RandomEdits edits = new RandomEdits(random);
            for (int i = 0; i < 150; i++) {
                int way = random.nextInt(3);
                if (way == 0 && at > 0) {
                    store.undo();
                    at--;
                } else if (way == 1 && at < line.size() - 1) {
                    store.redo();
                    at++;
                } else if (edits.oneOf(store)) {
                    line.subList(at + 1, line.size()).clear();
                    line.add(dump(store));
                    at++;
                }
                assertThat(dump(store)).as("seed %d, move %d", seed, i).isEqualTo(line.get(at));
            }
        }
    }

    @Test
    void aFailedEditKeepsWhatCanBeRedone() throws Exception {
        try (VisitStore store = VisitStore.create(folder.resolve("v"), bareFacts(), CLOCK)) {
            store.edit("one", tx -> tx.add(RecordKind.READINGS, reading(HOOD, "101")));
            store.undo();
            assertThatThrownBy(() -> store.change("bad", tx -> {
                        throw new IllegalArgumentException("no");
                    }))
                    .hasMessage("no");
            assertThat(store.redoLabel()).contains("one");
            assertThat(store.redo()).contains("one");
            assertThat(store.read().readings()).hasSize(1);
        }
    }

    @Test
    void editsOfOneGroupAreOneStepUnlessAnotherComesBetween() throws Exception {
        EditGroup group = new EditGroup();
        try (VisitStore store = VisitStore.create(folder.resolve("v"), bareFacts(), CLOCK)) {
            store.edit("take in 1", group, tx -> tx.add(RecordKind.READINGS, reading(HOOD, "1")));
            store.edit("take in 2", group, tx -> tx.add(RecordKind.READINGS, reading(HOOD, "2")));
            assertThat(store.undoLabel()).contains("take in 2");
            store.edit("other", tx -> tx.add(RecordKind.READINGS, reading(HOOD, "3")));
            store.edit("take in 3", group, tx -> tx.add(RecordKind.READINGS, reading(HOOD, "4")));
            assertThat(store.undo()).contains("take in 3");
            assertThat(store.read().readings()).hasSize(3);
            assertThat(store.undo()).contains("other");
            assertThat(store.undo()).contains("take in 2");
            assertThat(store.read().readings()).isEmpty();
            assertThat(store.undo()).isEmpty();
            assertThat(store.redo()).contains("take in 2");
            assertThat(store.read().readings()).hasSize(2);
        }
    }

    @Test
    void stepsEndWithTheSession() throws Exception {
        Path path = folder.resolve("v");
        try (VisitStore store = VisitStore.create(path, bareFacts(), CLOCK)) {
            store.edit("one", tx -> tx.add(RecordKind.READINGS, reading(HOOD, "101")));
        }
        try (VisitStore store = VisitStore.openForEditing(path, CLOCK)) {
            assertThat(store.undoLabel()).isEmpty();
            assertThat(store.undo()).isEqualTo(Optional.empty());
            assertThat(store.read().readings()).hasSize(1);
        }
    }

    @Test
    void everyTableIsTrackedOrListedWithAReason() throws Exception {
        try (VisitStore store = VisitStore.create(folder.resolve("v"), bareFacts(), CLOCK)) {
            List<String> untracked = store.query(connection -> {
                List<String> tables = new ArrayList<>(UndoJournal.tables(connection));
                tables.removeIf(table -> {
                    try {
                        return Database.askNumber(
                                        connection,
                                        "SELECT count(*) FROM temp.sqlite_schema WHERE type = 'trigger' AND tbl_name = '"
                                                + table + "'")
                                == 3;
                    } catch (java.sql.SQLException e) {
                        throw new AssertionError(e);
                    }
                });
                return tables;
            });
            assertThat(untracked).containsExactlyInAnyOrderElementsOf(UndoJournal.UNTRACKED.keySet());
            assertThat(UndoJournal.UNTRACKED.values())
                    .allSatisfy(reason -> assertThat(reason).isNotBlank());
        }
    }

    /** Every cell of every tracked table, with its storage class. */
    private static String dump(VisitStore store) throws VisitUnreadable {
        return store.query(connection -> {
            StringBuilder text = new StringBuilder();
            for (String table : UndoJournal.tables(connection)) {
                if (UndoJournal.UNTRACKED.containsKey(table)) {
                    continue;
                }
                try (Statement statement = connection.createStatement();
                        ResultSet rows = statement.executeQuery("SELECT * FROM " + table + " ORDER BY id")) {
                    int columns = rows.getMetaData().getColumnCount();
                    while (rows.next()) {
                        text.append(table);
                        for (int c = 1; c <= columns; c++) {
                            Object cell = rows.getObject(c);
                            text.append('|')
                                    .append(cell == null ? "" : cell.getClass().getSimpleName())
                                    .append(cell);
                        }
                        text.append('\n');
                    }
                }
            }
            return text.toString();
        });
    }
}
