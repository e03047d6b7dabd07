package quarterlight.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.capture.Companions;
import quarterlight.capture.CorrectedTimes;
import quarterlight.edit.fact.FactEdits;
import quarterlight.edit.intake.Intake;
import quarterlight.photo.MediaType;
import quarterlight.store.VisitStore;
import quarterlight.table.ZoneTable;
import quarterlight.task.Progress;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;

/** A photo and its short film as files, their identifiers written by general tools: taken in, they are tied though names and times differ. */
class CompanionIntakeTest {
    @TempDir
    Path folder;

    @Test
    void aPairOfFilesIsTiedByItsIdentifier() throws Exception {
        Path card = Files.createDirectories(folder.resolve("card"));
        for (String name : List.of("IMG_0042.JPG", "clip.MOV")) {
            Files.copy(
                    Path.of(Objects.requireNonNull(MediaType.class.getResource("pair/" + name))
                            .toURI()),
                    card.resolve(name));
        }
        try (VisitStore store = VisitStore.create(
                folder.resolve("visit"),
                new FactEdits(ZoneTable.load()).start(Map.of("car", "Tamarisk", "style", "coupe"), ZoneOffset.UTC),
                Clock.systemUTC())) {
            assertThat(new Intake(store, Clock.systemUTC(), (photo, jpeg) -> {})
                            .run(List.of(card), Progress.NONE)
                            .added())
                    .isEqualTo(2);
            VisitRecord visit = store.read();
            assertThat(visit.photos())
                    .allSatisfy(photo ->
                            assertThat(photo.file().contentId()).hasValue("5C6F2D0E-3A41-4B77-9E0B-0D1F6A7C9B21"));
            Photo film = of(visit, MediaKind.FILM);
            Photo photo = of(visit, MediaKind.PHOTO);
            Companions companions = Companions.of(visit, CorrectedTimes.of(visit));
            assertThat(companions.of(photo.id())).hasValue(film.id());
            assertThat(companions.of(film.id())).hasValue(photo.id());
        }
    }

    private static Photo of(VisitRecord visit, MediaKind kind) {
        return visit.photos().stream()
                .filter(photo -> photo.file().kind() == kind)
                .findFirst()
                .orElseThrow();
    }
}
