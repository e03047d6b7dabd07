package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.file.Leftovers;

/** A visit that came from somebody else whose parts are links to what lies elsewhere on the computer: nothing there is changed. */
class LinkedFoldersTest {
    @TempDir
    Path folder;

    @Test
    void pagesAreNotWrittenThroughALink() throws Exception {
        Bench bench = new Bench(folder);
        Path visit = Path.of(bench.visit());
        Path victim = Files.createDirectories(folder.resolve("elsewhere"));
        Files.writeString(victim.resolve("report.html"), "keep");
        Leftovers.delete(visit.resolve("pages"));
        Files.createSymbolicLink(visit.resolve("pages"), victim);
        Bench.Outcome outcome = bench.run("pages", visit.toString());
        assertThat(outcome.status()).isNotZero();
        assertThat(outcome.err())
                .contains("pages", "is a link to another place", "--out")
                .doesNotContain("Exception");
        assertThat(victim).isDirectoryNotContaining(file -> !file.endsWith("report.html"));
        assertThat(victim.resolve("report.html")).hasContent("keep");
        Path out = folder.resolve("out");
        assertThat(bench.run("pages", visit.toString(), "--out", out.toString()).status())
                .isZero();
        assertThat(out.resolve("report.html")).isNotEmptyFile();
    }

    @Test
    @Timeout(60)
    void whatLiesBesideTheDatabaseMustBePlainFiles() throws Exception {
        Bench bench = new Bench(folder);
        Path visit = Path.of(bench.visit());
        for (String name : List.of("visit.db-journal", "visit.db-wal", "visit.db-shm")) {
            Path beside = visit.resolve(name);
            Files.deleteIfExists(beside);
            Files.createSymbolicLink(beside, folder.resolve("elsewhere.txt"));
            for (String[] call :
                    new String[][] {{"zones", visit.toString()}, {"set", visit.toString(), "inspector=A"}}) {
                Bench.Outcome outcome = bench.run(call);
                assertThat(outcome.status()).as(name).isEqualTo(3);
                assertThat(outcome.err()).contains(name, "is no plain file; take it out of the folder");
            }
            Files.delete(beside);
            assertThat(folder.resolve("elsewhere.txt")).doesNotExist();
        }
        assertThat(bench.run("zones", visit.toString()).status()).isZero();
    }
}
