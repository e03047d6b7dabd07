package quarterlight.ui.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecentVisitTest {
    @TempDir
    Path folder;

    @Test
    void onlyVisitsThatAreThereStillAreOffered() throws Exception {
        Path there = Files.createDirectories(folder.resolve("there"));
        Files.createFile(there.resolve("visit.db"));
        Path emptied = Files.createDirectories(folder.resolve("emptied"));

        assertThat(RecentVisit.there(List.of(folder.resolve("gone"), there, emptied)))
                .containsExactly(there);
    }
}
