package quarterlight.cli.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static quarterlight.cli.WalkedVisit.record;
import static quarterlight.cli.WalkedVisit.visit;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.cli.Bench;
import quarterlight.cli.call.Exit;
import quarterlight.photo.MediaSamples;
import quarterlight.photo.speech.RecognizerModel;

/** {@code listen --recognize} says in a sentence what is wrong with a model, and then changes nothing. */
class RecognizeCallTest {
    @TempDir
    private Path folder;

    private String withMemo(Bench bench) throws Exception {
        String visit = visit(bench);
        Path card = Files.createDirectories(folder.resolve("card"));
        MediaSamples.wav(card.resolve("memo.wav"), 2);
        Files.copy(Path.of(MediaSamples.class.getResource("numbered.mp4").toURI()), card.resolve("mute.mp4"));
        bench.run("intake", visit, card.toString()).done();
        return visit;
    }

    @Test
    void aModelThatIsMissingOrNoneOrDamagedIsOneSentence() throws Exception {
        Bench bench = new Bench(folder);
        String visit = withMemo(bench);
        int before = record(visit).photos().size();
        bench.run("listen", visit, "--recognize", folder.resolve("none.bin").toString())
                .complains(Exit.UNUSABLE, "none.bin", "cannot be read");
        bench.run("listen", visit, "--recognize", bench.file("text.bin", "no model at all"))
                .complains(Exit.UNUSABLE, "text.bin", "not a model");
        String damaged = RecognizerModel.damaged(folder.resolve("damaged.bin")).toString();
        bench.run("listen", visit, "--recognize", damaged).complains(Exit.UNUSABLE, "damaged.bin", "damaged");
        assertThat(record(visit).photos()).hasSize(before);
    }

    @Test
    void theUntrainedModelHearsNothingAndAFilmWithoutSoundIsNamed() throws Exception {
        String model = RecognizerModel.file().toString();
        Bench bench = new Bench(folder);
        String visit = withMemo(bench);
        JsonNode told = bench.run("listen", visit, "--recognize", model, "--json")
                .done()
                .json();
        assertThat(told.get("silent")).hasSize(1);
        assertThat(told.get("silent").get(0).asText()).isEqualTo("memo.wav");
        assertThat(told.get("without_sound").get(0).asText()).isEqualTo("mute.mp4");
        assertThat(told.get("made")).isEmpty();
    }

    @Test
    void optionsThatDoNotGoTogetherAreRefused() throws Exception {
        Bench bench = new Bench(folder);
        String visit = withMemo(bench);
        bench.run("listen", visit, "--of", "memo.wav").complains(Exit.UNUSABLE, "--of", "--recognize");
        bench.run("listen", visit, "--recognize", "model.bin", "--keep", "a")
                .complains(Exit.UNUSABLE, "--recognize", "--keep");
    }
}
