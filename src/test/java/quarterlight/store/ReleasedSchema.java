package quarterlight.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import quarterlight.car.ZoneId;
import quarterlight.store.problem.VisitProblem;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.CameraId;
import quarterlight.visit.photo.ClockSetting;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.statement.StatementDetails;

/** Writes the small visit that is stored when a schema is released; run by hand, once a schema. */
final class ReleasedSchema {
    private ReleasedSchema() {}

    /** @param args a new folder for the visit, and the file that its database goes to */
    public static void main(String[] args) throws Exception {
        Path visit = Path.of(args[0]);
        RandomEdits random = new RandomEdits(new Random(1));
        try (VisitStore store = VisitStore.create(visit, SampleVisit.fullFacts(), SampleVisit.CLOCK)) {
            store.change("two photos", tx -> {
                tx.addPhoto(SampleVisit.fullPhoto(1));
                tx.setAside(tx.addPhoto(SampleVisit.barePhoto(2)), Optional.of("blurred"));
                tx.setClock(new ClockSetting(
                        new CameraId("alder-pocket-3"),
                        Duration.ofHours(-1),
                        Optional.of(java.time.ZoneId.of("Europe/Lisbon"))));
            });
            for (RecordKind<?> kind : RecordKind.all()) {
                fill(store, kind, random);
            }
            Statement twice = new Statement(
                    new ZoneId("roof"),
                    Facets.of(Condition.PITTED),
                    "shown by both photos",
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(new PhotoId(2)),
                    Optional.empty(),
                    List.of(new PhotoId(1)),
                    StatementDetails.NONE);
            store.edit("add a statement of two photos", tx -> tx.add(RecordKind.STATEMENTS, twice));
        }
        Files.copy(visit.resolve("visit.db"), Path.of(args[1]));
    }

    private static <T> void fill(VisitStore store, RecordKind<T> kind, RandomEdits random) throws VisitProblem {
        VisitRecord visit = store.read();
        List<T> rows = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            rows.add(random.value(kind, visit).orElseThrow());
        }
        store.edit("add " + kind.count(rows.size()), tx -> tx.addAll(kind, rows));
    }
}
