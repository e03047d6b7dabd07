package quarterlight.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import quarterlight.edit.intake.IntakeResult;
import quarterlight.photo.Refusal;
import quarterlight.ui.kit.Texts;

/** What the window says of an intake. */
class FileImporterTest {
    private final Texts texts = Texts.load();

    @Test
    void filesThatAreNoPhotosAreListed() {
        Path notes = Path.of("card", "notes.txt");
        assertThat(FileImporter.told(new IntakeResult(2, 1, List.of(), List.of(notes)), texts))
                .startsWith("2 added, 1 already in this visit, 0 refused.")
                .endsWith("Skipped: not a photo or video:\n" + notes);
    }

    @Test
    void aLongListEndsWithTheNumberOfTheRest() {
        List<Path> sidecars =
                IntStream.range(0, 30).mapToObj(i -> Path.of(i + ".xmp")).toList();
        Refusal empty = new Refusal(Path.of("empty.jpg"), "the file is empty");
        String told = FileImporter.told(new IntakeResult(30, 0, List.of(empty), sidecars), texts);
        assertThat(told).contains("1 refused", "empty.jpg: the file is empty", "30 files skipped", "7.xmp");
        assertThat(told).doesNotContain("8.xmp").endsWith("and 22 more");
    }

    @Test
    void nothingIsSaidOfWhatDidNotHappen() {
        assertThat(FileImporter.told(new IntakeResult(3, 0, List.of(), List.of()), texts))
                .isEqualTo("3 added, 0 already in this visit, 0 refused.");
    }
}
