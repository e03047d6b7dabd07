package quarterlight.cli.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.cli.Bench;

/** The manual page and the completion, read by the programs that they are for. */
class ShellTest {
    @TempDir
    private Path folder;

    private String run(String... command) throws IOException, InterruptedException {
        Path said = folder.resolve("said");
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        assertThat(process.waitFor()).as(Files.readString(said)).isZero();
        return Files.readString(said);
    }

    @Test
    void thePageTellsEveryVerbAndItsReaderHasNothingToSay() throws Exception {
        String page = new Bench(folder).run("man").done().out();
        assertThat(page).startsWith(".TH QUARTERLIGHT 1 ").contains(".SS zones VISIT", ".SS intake VISIT [FOLDER...]");
        assertThat(page).contains("\\-\\-json").doesNotContain(" --");
        assumeThat(Path.of("/usr/bin/groff")).exists();
        Path file = Files.writeString(folder.resolve("quarterlight.1"), page);
        String complaints = run("/usr/bin/groff", "-man", "-Tascii", "-ww", "-z", file.toString());
        assertThat(complaints).isEmpty();
        assertThat(run("/usr/bin/groff", "-man", "-Tascii", "-P-cbou", file.toString()))
                .contains("EXIT STATUS", "--with-places");
    }

    @Test
    void bashCompletesVerbsOptionsAndClosedLists() throws Exception {
        assumeThat(Path.of("/bin/bash")).exists();
        Path script = Files.writeString(
                folder.resolve("completion"),
                new Bench(folder).run("completion").done().out());
        assertThat(completed(script, "quarterlight", "zon")).contains("zones");
        assertThat(completed(script, "quarterlight", "export", "--with")).contains("--with-places");
        assertThat(completed(script, "quarterlight", "new", "x", "--style", "con"))
                .isEqualTo(List.of("convertible"));
    }

    private List<String> completed(Path script, String... words) throws Exception {
        String asked =
                "compopt() { :; }; source '" + script + "'; COMP_WORDS=(" + String.join(" ", words) + "); COMP_CWORD="
                        + (words.length - 1) + "; COMP_LINE='" + String.join(" ", words) + "'; _complete_quarterlight; "
                        + "printf '%s\\n' \"${COMPREPLY[@]}\"";
        return run("/bin/bash", "-c", asked).lines().map(String::strip).toList();
    }
}
