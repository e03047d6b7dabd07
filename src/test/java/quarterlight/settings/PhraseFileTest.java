package quarterlight.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sentences of earlier visits: kept whole, oldest let go, and never in the way. */
class PhraseFileTest {
    @TempDir
    Path folder;

    @Test
    void sentencesComeBackInTheirOrderOnOneLineEach() {
        PhraseFile file = new PhraseFile(folder.resolve("new"));
        assertThat(file.read()).isEmpty();
        assertThat(file.keep("gap wider\nat the  front")).isTrue();
        assertThat(file.keep("Lack w\u00e4chst \u5857")).isTrue();
        assertThat(file.keep("  ")).isFalse();
        assertThat(file.read()).containsExactly("gap wider at the front", "Lack w\u00e4chst \u5857");
    }

    @Test
    void theOldestAreLetGoAndNothingElseLiesBeside() throws Exception {
        Files.write(
                folder.resolve("phrases.txt"),
                IntStream.range(0, 4000).mapToObj(i -> "sentence " + i).toList());
        PhraseFile file = new PhraseFile(folder);
        assertThat(file.keep("the newest")).isTrue();
        assertThat(file.read()).hasSize(4000).startsWith("sentence 1").endsWith("the newest");
        assertThat(folder.toFile().list()).containsExactly("phrases.txt");
    }

    @Test
    void whatCannotBeReadOrWrittenCostsNothing() throws Exception {
        Files.write(folder.resolve("phrases.txt"), new byte[] {(byte) 0xff, (byte) 0xfe, 0});
        assertThat(new PhraseFile(folder).read()).isEmpty();
        assertThat(new PhraseFile(folder).keep("more")).isFalse();
        assertThat(folder.resolve("phrases.txt")).hasSize(3);
        Path blocked = Files.createFile(folder.resolve("file"));
        assertThat(new PhraseFile(blocked).keep("lost")).isFalse();
        assertThat(new PhraseFile(blocked).read()).isEqualTo(List.of());
    }
}
