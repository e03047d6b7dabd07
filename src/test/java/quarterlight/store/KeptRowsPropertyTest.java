package quarterlight.store;

import static org.assertj.core.api.Assertions.assertThat;
import static quarterlight.store.SampleVisit.CLOCK;

import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.store.problem.VisitProblem;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.row.RecordKind;

/** What a store keeps of an earlier reading never differs from what stands in the database. */
class KeptRowsPropertyTest {
    private static final int EDITS = 60;

    @TempDir
    Path folder;

    /** The yardstick is a store opened for this reading alone, which has nothing to keep. */
    private VisitRecord readByAnother() throws VisitProblem {
        try (VisitStore fresh = VisitStore.openForReading(folder.resolve("v"))) {
            return fresh.read();
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33, 34})
    void everyEditUndoAndRedoIsSeenByTheEditorAndByAReaderThatStaysOpen(long seed) throws Exception {
        Random random = new Random(seed);
        try (VisitStore store = VisitStore.create(folder.resolve("v"), SampleVisit.fullFacts(), CLOCK);
                VisitStore reader = VisitStore.openForReading(folder.resolve("v"))) {
            RandomEdits edits = new RandomEdits(random);
            for (int i = 0; i < EDITS; i++) {
                switch (random.nextInt(6)) {
                    case 0 -> store.undo();
                    case 1 -> store.redo();
                    default -> edits.oneOf(store);
                }
                VisitRecord held = readByAnother();
                assertThat(store.read()).as("seed %d, step %d, editor", seed, i).isEqualTo(held);
                if (random.nextBoolean()) {
                    assertThat(reader.read())
                            .as("seed %d, step %d, reader", seed, i)
                            .isEqualTo(held);
                }
            }
        }
    }

    @Test
    void aListThatDidNotChangeIsTheSameListAsBefore() throws Exception {
        try (VisitStore store = VisitStore.create(folder.resolve("v"), SampleVisit.fullFacts(), CLOCK)) {
            store.change("add", tx -> tx.addPhoto(SampleVisit.fullPhoto(1)));
            VisitRecord before = store.read();
            store.change(
                    "add a reading", tx -> tx.add(RecordKind.READINGS, SampleVisit.reading(SampleVisit.HOOD, "120")));
            VisitRecord after = store.read();
            assertThat(after.photos()).isSameAs(before.photos());
            assertThat(after.readings()).hasSize(before.readings().size() + 1);
        }
    }

    @Test
    void anEditThatFailsLeavesTheReadingAsItWas() throws Exception {
        try (VisitStore store = VisitStore.create(folder.resolve("v"), SampleVisit.fullFacts(), CLOCK)) {
            VisitRecord before = store.read();
            try {
                store.change("fail", tx -> {
                    tx.addPhoto(SampleVisit.fullPhoto(1));
                    tx.read();
                    throw new IllegalStateException("on purpose");
                });
            } catch (IllegalStateException expected) {
                assertThat(expected).hasMessage("on purpose");
            }
            assertThat(store.read()).isEqualTo(before);
        }
    }
}
