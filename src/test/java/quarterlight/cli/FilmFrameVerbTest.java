package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.photo.MediaType;
import quarterlight.photo.film.FilmFrames;

/** {@code intake --frame-of}: a film's frame is kept as a photo with the film's time and the moment. */
class FilmFrameVerbTest {
    @TempDir
    Path folder;

    private Bench bench;
    private String visit;

    @BeforeEach
    void takeAFilmIn() throws Exception {
        assumeTrue(FilmFrames.available(), "built without native parts");
        bench = new Bench(folder);
        Path card = Files.createDirectories(folder.resolve("card"));
        Files.copy(
                Path.of(Objects.requireNonNull(MediaType.class.getResource("numbered-dated.mp4"))
                        .toURI()),
                card.resolve("VID_0007.MP4"));
        visit = folder.resolve("visit").toString();
        bench.run("new", visit, "--car", "Tamarisk", "--style", "coupe", "--timezone", "UTC")
                .done();
        bench.run("intake", visit, card.toString()).done();
    }

    @Test
    void theFrameIsAPhotoOfItsMoment() {
        JsonNode made = bench.run("intake", visit, "--frame-of", "VID_0007.MP4", "--at", "1,29", "--json")
                .done()
                .json();
        assertThat(made.path("added").asInt()).isEqualTo(1);
        JsonNode photo = bench.run("photos", visit, "--json")
                .done()
                .json()
                .path("photos")
                .path(1);
        assertThat(photo.path("file").asText()).isEqualTo("VID_0007.MP4 at 1.280 s.png");
        assertThat(photo.path("captured").asText()).isEqualTo("2026-02-28T10:02:01.280+00:00");
        assertThat(photo.path("captured_source").asText()).isEqualTo("film");
        assertThat(photo.path("kind").asText()).isEqualTo("photo");
        assertThat(bench.run("intake", visit, "--frame-of", "VID_0007.MP4", "--at", "1.29")
                        .done()
                        .out())
                .contains("kept already");
        bench.run("audit", visit).done();
    }

    @Test
    void aCallThatCannotBeMeantChangesNothing() {
        String before = bench.state(visit);
        bench.run("intake", visit, "--frame-of", "VID_0007.MP4", "--at", "2.5").complains(2, "2.0 s long");
        bench.run("intake", visit, "--frame-of", "VID_0007.MP4", "--at", "soon").complains(2, "soon");
        bench.run("intake", visit, "--frame-of", "VID_0007.MP4").complains(2, "--at");
        bench.run("intake", visit, "--frame-of", "VID_0008.MP4", "--at", "1").complains(2, "VID_0008.MP4");
        bench.run("intake", visit).complains(2, "FOLDER");
        assertThat(bench.state(visit)).isEqualTo(before);
    }
}
