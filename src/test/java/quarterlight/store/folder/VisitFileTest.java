package quarterlight.store.folder;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VisitFileTest {
    @TempDir
    Path folder;

    @Test
    void namesTheFolderInWhichItLies() throws Exception {
        VisitFile.make(folder);
        Path file = folder.resolve("visit.quarterlight");
        assertThat(file).isNotEmptyFile();
        assertThat(VisitFile.folderOf(file)).isEqualTo(folder.toAbsolutePath());
        assertThat(VisitFile.folderOf(folder)).isEqualTo(folder);
    }

    @Test
    void aCopyUnderAnotherNameNamesItsFolderToo() throws Exception {
        Path copy = Files.writeString(folder.resolve("Coupe of the seller.QUARTERLIGHT"), "");
        assertThat(VisitFile.folderOf(copy)).isEqualTo(folder.toAbsolutePath());
    }

    @Test
    void aFolderOfThatNameStaysAFolder() throws Exception {
        Path odd = Files.createDirectory(folder.resolve("coupe.quarterlight"));
        assertThat(VisitFile.folderOf(odd)).isEqualTo(odd);
        Path absent = folder.resolve("absent.quarterlight");
        assertThat(VisitFile.folderOf(absent)).isEqualTo(absent);
    }

    @Test
    void isMadeOnceAndNeverWrittenOver() throws Exception {
        VisitFile.makeIfMissing(folder);
        Path file = folder.resolve("visit.quarterlight");
        Files.writeString(file, "notes of mine");
        VisitFile.makeIfMissing(folder);
        assertThat(file).hasContent("notes of mine");
    }
}
