package quarterlight.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import quarterlight.edit.fact.FactEdits;
import quarterlight.edit.intake.Intake;
import quarterlight.edit.intake.IntakeResult;
import quarterlight.photo.originals.OriginalsAudit;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.store.VisitStore;
import quarterlight.table.ZoneTable;
import quarterlight.task.Progress;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;

/** A visit without photos, and the folder of a card beside it. */
record VisitAndCard(Path visit, Path card) {
    static VisitAndCard in(Path folder) throws Exception {
        Path visit = folder.resolve("a visit");
        VisitStore.create(
                        visit,
                        new FactEdits(ZoneTable.load())
                                .start(Map.of("car", "Tamarisk", "style", "coupe"), ZoneOffset.UTC),
                        Clock.systemUTC())
                .close();
        return new VisitAndCard(visit, Files.createDirectories(folder.resolve("card")));
    }

    IntakeResult takeIn(DecodingWorkers workers, Progress progress) throws Exception {
        try (VisitStore store = VisitStore.openForEditing(visit, Clock.systemUTC())) {
            return new Intake(store, Clock.systemUTC(), (photo, jpeg) -> {}, workers).run(List.of(card), progress);
        }
    }

    IntakeResult takeIn(Progress progress) throws Exception {
        try (DecodingWorkers workers = new DecodingWorkers()) {
            return takeIn(workers, progress);
        }
    }

    /** The photos of the visit: it opens, every photo that it names is there byte for byte, and nothing else lies among them. */
    List<PhotoFile> sound() throws Exception {
        try (VisitStore store = VisitStore.openForReading(visit)) {
            List<PhotoFile> files =
                    store.read().photos().stream().map(Photo::file).toList();
            assertThat(OriginalsAudit.of(visit, files, Progress.NONE))
                    .isEqualTo(new OriginalsAudit(List.of(), List.of(), List.of(), List.of()));
            return files;
        }
    }
}
