package quarterlight.ui.dialog;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VisitFormTest {
    @TempDir
    private Path folder;

    @Test
    void theSecondVisitOfADayIsOfferedAFolderOfItsOwn() throws Exception {
        Path first = VisitForm.proposed(folder, "2026-12-01");
        assertThat(first).isEqualTo(folder.resolve("visit-2026-12-01"));
        Files.createDirectory(first);
        assertThat(VisitForm.proposed(folder, "2026-12-01")).isEqualTo(folder.resolve("visit-2026-12-01-2"));
        Files.createDirectory(folder.resolve("visit-2026-12-01-2"));
        assertThat(VisitForm.proposed(folder, "2026-12-01")).isEqualTo(folder.resolve("visit-2026-12-01-3"));
    }
}
