package quarterlight.cli.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.cli.Bench;
import quarterlight.photo.MediaSamples;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.VisitFixture;
import quarterlight.visit.photo.CaptureSource;
import quarterlight.visit.photo.CaptureTime;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.MediaHeader;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.Sha256;

/** What {@code suggest} says, and what it learns from earlier visits. */
class SuggestVerbTest {
    @TempDir
    Path folder;

    private Bench bench;

    @BeforeEach
    void open() {
        bench = new Bench(folder);
    }

    @Test
    void aPhotoRightAfterAPinnedOneLikelyShowsTheSameZone() throws VisitProblem {
        String visit = visit("one", "a", 20);
        pins(visit, "photo,zone", "a5.jpg,hood", "a15.jpg,roof");

        JsonNode photos = bench.run("suggest", visit, "--json").done().json().get("photos");

        assertThat(photos).hasSize(18);
        JsonNode after = photos.get(5);
        assertThat(after.get("file").asText()).isEqualTo("a6.jpg");
        assertThat(after.get("suggestions")).hasSize(5);
        assertThat(after.get("suggestions").get(0).get("zone").asText()).isEqualTo("hood");
    }

    @Test
    void aHabitOfAnEarlierVisitIsSuggestedInTheNext() throws VisitProblem {
        // from the hood this inspector always goes to the spare wheel, which is not next door
        String earlier = visit("one", "a", 20);
        pins(
                earlier,
                "photo,zone",
                rows("a", 0, 5, "hood"),
                rows("a", 5, 10, "spare-wheel"),
                rows("a", 10, 20, "roof"));
        String visit = visit("two", "b", 20);
        pins(visit, "photo,zone", "b4.jpg,hood", "b10.jpg,roof");

        JsonNode learnt = bench.run("suggest", visit, "--json").done().json();
        assertThat(learnt.get("earlier_visits").asInt()).isEqualTo(1);
        assertThat(zones(learnt, "b7.jpg")).contains("spare-wheel");
        assertThat(bench.run("suggest", visit).done().out()).contains("Learnt from 1 earlier visit.");

        assertThat(zones(bench.run("suggest", earlier, "--json").done().json(), "none"))
                .isEmpty();
        assertThat(bench.run("suggest", earlier, "--json")
                        .done()
                        .json()
                        .get("earlier_visits")
                        .asInt())
                .as("the visit itself does not count")
                .isEqualTo(1);
    }

    @Test
    void aDamagedMemoryCostsASentenceAndNotTheVisit() throws VisitProblem, IOException {
        String earlier = visit("one", "a", 20);
        pins(earlier, "photo,zone", rows("a", 0, 20, "hood"));
        String visit = visit("two", "b", 20);
        pins(visit, "photo,zone", "b4.jpg,hood");
        try (Stream<Path> files = Files.list(folder.resolve("walks"))) {
            for (Path file : files.toList()) {
                Files.writeString(file, "nonsense");
            }
        }

        JsonNode document = bench.run("suggest", visit, "--json").done().json();

        assertThat(document.get("earlier_visits").asInt()).isZero();
        assertThat(document.get("remarks")).hasSize(1);
        assertThat(document.get("photos")).hasSize(19);
        assertThat(bench.run("suggest", visit).done().out()).contains("is passed over", "Delete the file");
    }

    @Test
    void whatWasSaidAtAPhotoSaysItsZoneByTheTimeOfTheRecording() throws VisitProblem, IOException {
        String visit = visit("one", "a", 20);
        assertThat(zones(bench.run("suggest", visit, "--json").done().json(), "a6.jpg"))
                .isEmpty();
        Path card = Files.createDirectories(folder.resolve("card"));
        MediaSamples.wavWithTime(card.resolve("memo.wav"), 90, "2026-04-18", "09:00:30");
        bench.run("intake", visit, card.toString()).done();
        bench.run(
                        "words",
                        visit,
                        bench.file(
                                "memo.txt",
                                "[0:30] The roof is dented.\n[0:35] These always rust at the cowl.\n[1:20] Right rocker.\n"),
                        "--of",
                        "memo.wav")
                .done();
        JsonNode heard = bench.run("suggest", visit, "--json").done().json();
        assertThat(heard.get("spoken_places").asInt()).isPositive();
        assertThat(zones(heard, "a6.jpg").get(0)).isEqualTo("roof");
        assertThat(zones(heard, "a11.jpg").get(0)).isEqualTo("rocker-right");
        assertThat(bench.run("suggest", visit).done().out()).contains("What was said at");
    }

    private static List<String> zones(JsonNode document, String file) {
        return document.get("photos").findParents("file").stream()
                .filter(photo -> photo.get("file").asText().equals(file))
                .flatMap(photo -> photo.get("suggestions").findValuesAsText("zone").stream())
                .toList();
    }

    private void pins(String visit, String... lines) {
        bench.run("add", "pins", visit, bench.file("pins.csv", String.join("\n", lines) + "\n"))
                .done();
    }

    private static String rows(String name, int from, int to, String zone) {
        StringBuilder rows = new StringBuilder();
        for (int i = from; i < to; i++) {
            rows.append(i == from ? "" : "\n").append(name + i + ".jpg," + zone);
        }
        return rows.toString();
    }

    /** A visit with photos ten seconds apart. */
    private String visit(String path, String name, int photos) throws VisitProblem {
        try (VisitStore store = VisitStore.create(folder.resolve(path), VisitFixture.facts(), Bench.CLOCK)) {
            store.change("fill", tx -> {
                for (int i = 0; i < photos; i++) {
                    tx.addPhoto(photo(name, i));
                }
            });
        }
        return folder.resolve(path).toString();
    }

    private static PhotoFile photo(String name, int number) {
        String start = name + String.format("%07x", number);
        LocalDateTime time = LocalDateTime.of(2026, 4, 18, 9, 0).plusSeconds(10L * number);
        return new PhotoFile(
                name + number + ".jpg",
                "originals/" + start + ".jpg",
                new Sha256(VisitFixture.hash(start)),
                1000,
                MediaKind.PHOTO,
                "JPEG",
                MediaHeader.NONE
                        .withCaptured(
                                Optional.of(new CaptureTime(time, "", Optional.empty(), CaptureSource.ORIGINAL, false)))
                        .withSize(OptionalInt.of(1600), OptionalInt.of(1200), 1),
                OptionalDouble.empty(),
                List.of(),
                MediaFacts.NONE);
    }
}
