package quarterlight.cli.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.OwnProcess;
import quarterlight.cli.Bench;
import quarterlight.cli.TestPhotos;

class IntakeVerbTest {
    @TempDir
    private Path folder;

    private Bench bench;
    private String visit;
    private Path card;

    @BeforeEach
    void makeAVisitAndACard() {
        bench = new Bench(folder);
        visit = folder.resolve("v").toString();
        card = folder.resolve("card");
        bench.run("new", visit, "--car", "test car", "--style", "coupe", "--timezone", "America/Denver")
                .done();
        TestPhotos.write(card.resolve("a/one.jpg"), 1, "2026:05:02 10:00:00");
        TestPhotos.write(card.resolve("b/two.jpg"), 2, "2026:05:02 10:05:00");
    }

    @Test
    void photosAreTakenInOnceAndTheRestIsNamed() throws IOException {
        Files.writeString(card.resolve("notes.txt"), "not a photo");
        Files.write(card.resolve("empty.jpg"), new byte[0]);
        JsonNode first = bench.run("intake", visit, card.toString(), "--json")
                .complains(1, "1 file was not added", "empty.jpg")
                .json();
        assertThat(first.get("added").asInt()).isEqualTo(2);
        assertThat(first.get("already_present").asInt()).isZero();
        assertThat(first.get("refused").get(0).get("file").asText()).endsWith("empty.jpg");
        assertThat(first.get("refused").get(0).get("reason").asText()).contains("empty");
        assertThat(first.get("not_photos").get(0).asText()).endsWith("notes.txt");
        Files.delete(card.resolve("empty.jpg"));
        JsonNode again =
                bench.run("intake", visit, card.toString(), "--json").done().json();
        assertThat(again.get("added").asInt()).isZero();
        assertThat(again.get("already_present").asInt()).isEqualTo(2);
        assertThat(bench.run("audit", visit, "--json").done().json().get("ok").asBoolean())
                .isTrue();
    }

    @Test
    void filesThatAreNoPhotosAreNamed() throws IOException {
        Files.writeString(card.resolve("notes.txt"), "not a photo");
        assertThat(bench.run("intake", visit, card.toString()).done().out())
                .contains("2 photos and films added.", "Skipped", "1 file\n", "notes.txt")
                .doesNotContain("--json");
    }

    @Test
    void aChangedOriginalIsFoundByTheAudit() throws IOException {
        bench.run("intake", visit, card.toString()).done();
        try (Stream<Path> originals = Files.list(Path.of(visit, "originals"))) {
            Path original = originals.sorted().findFirst().orElseThrow();
            byte[] bytes = Files.readAllBytes(original);
            bytes[bytes.length / 2] ^= 1;
            original.toFile().setWritable(true);
            Files.write(original, bytes);
        }
        JsonNode json = bench.run("audit", visit, "--json")
                .complains(1, "1 original changed")
                .json();
        assertThat(json.get("changed")).hasSize(1);
    }

    @Test
    void aFolderThatCannotBeTakenInChangesNothing() {
        String before = bench.state(visit);
        bench.run("intake", visit, folder.resolve("nowhere").toString()).complains(2, "no such folder");
        bench.run("intake", visit, visit).complains(2, "part of the visit itself");
        bench.run("intake", visit).complains(2, "FOLDER is missing");
        bench.run("intake", folder.resolve("nowhere").toString(), card.toString())
                .complains(3, "no visit at");
        assertThat(bench.state(visit)).isEqualTo(before);
    }

    @Test
    void aClockIsSetByAShiftAndTheRecordedTimeStays() {
        bench.run("intake", visit, card.toString()).done();
        bench.run("clock", visit, "--camera", "orrin-fieldview", "--shift", "-01:00:30")
                .done();
        JsonNode photo =
                bench.run("photos", visit, "--json").done().json().get("photos").get(0);
        assertThat(photo.get("captured").asText()).isEqualTo("2026-05-02T10:00:00");
        assertThat(photo.get("captured_source").asText()).isEqualTo("original");
        assertThat(photo.get("captured_corrected").asText()).isEqualTo("2026-05-02T08:59:30-06:00");
        assertThat(photo.get("captured_utc").asText()).isEqualTo("2026-05-02T14:59:30+00:00");
        assertThat(photo.get("offset").asText()).isEqualTo("-06:00");
        assertThat(photo.get("offset_source").asText()).isEqualTo("visit");
        assertThat(photo.get("camera").asText()).isEqualTo("orrin-fieldview");
    }

    @Test
    void aClockIsSetByAPhotoOfAClock() {
        bench.run("intake", visit, card.toString()).done();
        for (String photo : List.of("1", "one.jpg")) {
            JsonNode json = bench.run(
                            "clock",
                            visit,
                            "--camera",
                            "orrin-fieldview",
                            "--photo",
                            photo,
                            "--shows",
                            "2026-05-02T10:07:33",
                            "--json")
                    .done()
                    .json();
            assertThat(json.get("shift_s").asDouble()).isEqualTo(453);
            assertThat(json.get("photos").asInt()).isEqualTo(2);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            --shift +01:00:00 | --camera must be given
            --camera nobody --shift +01:00:00 | orrin-fieldview
            --camera orrin-fieldview | either --shift, or --photo
            --camera orrin-fieldview --shift 1h | 1h
            --camera orrin-fieldview --shift +01:00:00 --photo 1 --shows 2026-05-02T10:00 | either --shift, or --photo
            --camera orrin-fieldview --photo 1 | go together
            --camera orrin-fieldview --photo 9 --shows 2026-05-02T10:00 | no photo "9"
            --camera orrin-fieldview --photo 1 --shows 2026-02-30T10:00 | does not exist
            --camera orrin-fieldview --shift +01:00:00 --timezone Nowhere/Else | no time zone "Nowhere/Else"
            """)
    void aClockThatCannotBeSetIsLeftAlone(String options, String reason) {
        bench.run("intake", visit, card.toString()).done();
        String before = bench.state(visit);
        bench.run(("clock " + visit + " " + options).split(" "))
                .complains(2, reason.replace("does not exist", "that exists"));
        assertThat(bench.state(visit)).isEqualTo(before);
    }

    @Test
    void anIntakeThatIsBrokenOffLeavesAVisitThatOpensAndCanGoOn() throws IOException, InterruptedException {
        int photos = 120;
        for (int i = 3; i <= photos; i++) {
            TestPhotos.write(card.resolve("c/p" + i + ".jpg"), i, "2026:05:02 11:00:00");
        }
        Process child = new ProcessBuilder(OwnProcess.program(folder, "intake", visit, card.toString()))
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("child.txt").toFile())
                .start();
        Path originals = Path.of(visit, "originals");
        while (child.isAlive() && !holdsSome(originals)) {
            Thread.sleep(10);
        }
        child.destroy();
        assertThat(child.waitFor(60, TimeUnit.SECONDS)).isTrue();
        int kept =
                bench.run("photos", visit, "--json").done().json().get("photos").size();
        assertThat(bench.run("audit", visit, "--json").done().json().get("ok").asBoolean())
                .isTrue();
        JsonNode rest =
                bench.run("intake", visit, card.toString(), "--json").done().json();
        assertThat(rest.get("already_present").asInt()).isEqualTo(kept);
        assertThat(rest.get("added").asInt()).isEqualTo(photos - kept);
        assertThat(Files.readString(folder.resolve("child.txt"))).doesNotContain("Exception");
    }

    private static boolean holdsSome(Path originals) throws IOException {
        if (!Files.isDirectory(originals)) {
            return false;
        }
        try (Stream<Path> files = Files.list(originals)) {
            return files.count() > 3;
        }
    }
}
