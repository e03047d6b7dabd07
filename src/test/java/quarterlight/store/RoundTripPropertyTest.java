package quarterlight.store;

import static org.assertj.core.api.Assertions.assertThat;
import static quarterlight.store.SampleVisit.CLOCK;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.store.problem.VisitProblem;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;

/** What goes in comes out: every kind of row, with its optional parts here and absent there. */
class RoundTripPropertyTest {
    private static final long SEED = 20260302;

    @TempDir
    Path folder;

    @Test
    void everyKindOfRowComesBackEqual() throws Exception {
        RandomEdits random = new RandomEdits(new Random(SEED));
        Path path = folder.resolve("v");
        List<List<?>> written = new ArrayList<>();
        try (VisitStore store = VisitStore.create(path, SampleVisit.fullFacts(), CLOCK)) {
            store.change("photos", tx -> {
                tx.addPhoto(SampleVisit.fullPhoto(1));
                tx.addPhoto(SampleVisit.barePhoto(2));
            });
            for (RecordKind<?> kind : RecordKind.all()) {
                written.add(fill(store, kind, random));
            }
        }
        try (VisitStore store = VisitStore.openForReading(path)) {
            VisitRecord visit = store.read();
            for (int i = 0; i < written.size(); i++) {
                RecordKind<?> kind = RecordKind.all().get(i);
                assertThat(values(kind, visit)).as("seed %d, %s", SEED, kind).isEqualTo(written.get(i));
            }
        }
    }

    private static <T> List<T> fill(VisitStore store, RecordKind<T> kind, RandomEdits random) throws VisitProblem {
        VisitRecord visit = store.read();
        List<T> rows = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            rows.add(random.value(kind, visit).orElseThrow());
        }
        store.edit("fill", tx -> tx.addAll(kind, rows));
        return rows;
    }

    private static <T> List<T> values(RecordKind<T> kind, VisitRecord visit) {
        return kind.of(visit).stream().map(Recorded::value).toList();
    }
}
