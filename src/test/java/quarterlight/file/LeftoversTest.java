package quarterlight.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LeftoversTest {
    @TempDir
    Path folder;

    private List<String> names() throws IOException {
        try (Stream<Path> found = Files.list(folder)) {
            return found.map(each -> each.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void whatIsBeingMadeIsNoLeftover() throws Exception {
        try (StagingFolder making = StagingFolder.in(folder)) {
            Files.writeString(making.folder().resolve("half"), "x");
            Leftovers.clear(folder);
            assertThat(making.folder().resolve("half")).exists();
        }
        assertThat(names()).isEmpty();
    }

    @Test
    void whatAKilledProcessLeftGoesWhenTheNextBegins() throws Exception {
        Path left = Files.createDirectory(folder.resolve(".unfinished-01234567-89ab-cdef-0123-456789abcdef"));
        Files.createFile(left.resolve(StagingFolder.LOCK));
        Files.writeString(left.resolve("half"), "x");
        Files.createDirectory(folder.resolve(".making-123456789"));
        StagingFolder.in(folder).close();
        assertThat(names()).isEmpty();
    }

    @Test
    void whatEarlierVersionsLeftGoesWhereItIsMadeAgain() throws Exception {
        Files.writeString(folder.resolve(".a.zip.making"), "half");
        Files.createDirectories(folder.resolve(".demo.making/originals"));
        Files.writeString(folder.resolve(".other.making"), "not mine");
        Files.writeString(folder.resolve("own.svg.new"), "half");
        Files.writeString(folder.resolve("a new one.svg"), "mine");
        DurableFiles.text(folder.resolve("a.zip"), "whole");
        StagingFolder.beside(folder.resolve("demo")).close();
        Leftovers.clearEarlier(folder, "*.svg.new");
        assertThat(names()).containsExactly(".other.making", "a new one.svg", "a.zip");
    }

    @Test
    void whatOnlyLooksAlikeStays() throws Exception {
        for (String name : List.of(".unfinished-mine", ".unfinished-", ".making-of", ".making-12", "unfinished-0")) {
            Files.createDirectory(folder.resolve(name));
        }
        Files.createFile(folder.resolve(".unfinished-01234567-89ab-cdef-0123-456789abcdef"));
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Files.createSymbolicLink(folder.resolve(".unfinished-11234567-89ab-cdef-0123-456789abcdef"), elsewhere);
        List<String> before = names();
        Leftovers.clear(folder);
        assertThat(names()).isEqualTo(before);
    }

    @Test
    void aFileThatFailsHalfwayLeavesTheOldOne() throws Exception {
        Path file = folder.resolve("deep/er/file.txt");
        DurableFiles.text(file, "old");
        assertThatThrownBy(() -> DurableFiles.write(file, out -> {
                    out.write('n');
                    throw new IOException("full");
                }))
                .hasMessage("full");
        assertThat(file).hasContent("old");
        DurableFiles.text(file, "new");
        assertThat(file).hasContent("new");
        try (Stream<Path> beside = Files.list(file.getParent())) {
            assertThat(beside).containsExactly(file);
        }
    }

    @Test
    void nothingIsPutInPlaceOfWhatCameMeanwhile() throws Exception {
        Path target = folder.resolve("t");
        try (StagingFolder making = StagingFolder.beside(target)) {
            Path made = Files.writeString(making.folder().resolve("m"), "mine");
            Files.writeString(target, "theirs");
            assertThatThrownBy(() -> making.deliver(made)).isInstanceOf(FileAlreadyExistsException.class);
        }
        assertThat(target).hasContent("theirs");
        assertThat(names()).containsExactly("t");
    }

    @Test
    void aFolderIsNoPlainFileAndALongOneIsNotReadWhole() throws Exception {
        assertThatThrownBy(() -> PlainFile.bytes(folder, 10))
                .isInstanceOfSatisfying(PlainFile.Unsuitable.class, e -> assertThat(e.getReason())
                        .contains("folder"));
        Path ten = Files.writeString(folder.resolve("ten"), "0123456789");
        assertThat(PlainFile.bytes(ten, 10)).hasSize(10);
        assertThatThrownBy(() -> PlainFile.bytes(ten, 9)).isInstanceOf(PlainFile.Unsuitable.class);
    }
}
