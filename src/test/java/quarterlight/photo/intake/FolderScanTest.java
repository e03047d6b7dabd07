package quarterlight.photo.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.photo.SamplePictures;
import quarterlight.task.Progress;

class FolderScanTest {
    private static final byte[] JPEG = SamplePictures.jpeg(16, 12, 1);

    @TempDir
    Path folder;

    @Test
    void tellsPhotosByContentInTheOrderOfNames() throws IOException {
        put("b/2.jpg", JPEG);
        put("b/1.document", JPEG);
        put("a/note.txt", "hello".getBytes(StandardCharsets.UTF_8));
        put("a/.hidden.jpg", JPEG);
        put("a/photo.xmp", "<x/>".getBytes(StandardCharsets.UTF_8));
        put("a/empty.jpg", new byte[0]);
        put("a/lie.jpg", "not a photo".getBytes(StandardCharsets.UTF_8));
        put("a/broken.JPG", new byte[] {(byte) 0xFF, (byte) 0xD8, 7, 7, 7});
        FolderScan scan = scan(folder);
        assertThat(scan.media())
                .extracting(found -> folder.relativize(found.file()).toString())
                .containsExactly("a/broken.JPG", "b/1.document", "b/2.jpg");
        assertThat(scan.notPhotos())
                .extracting(path -> path.getFileName().toString())
                .containsExactly(".hidden.jpg", "note.txt", "photo.xmp");
        assertThat(scan.refused())
                .extracting(refusal -> refusal.file().getFileName() + ": " + refusal.reason())
                .containsExactly(
                        "empty.jpg: the file is empty", "lie.jpg: named as JPEG, but its content is no photo or film");
    }

    @Test
    void survivesLinksThatLoopOrLeadNowhere() throws IOException {
        put("a/1.jpg", JPEG);
        Files.createSymbolicLink(folder.resolve("a/up"), folder);
        Files.createSymbolicLink(folder.resolve("a/self"), folder.resolve("a/self"));
        Files.createSymbolicLink(folder.resolve("a/gone.jpg"), folder.resolve("nothing"));
        FolderScan scan = scan(folder, folder);
        assertThat(scan.media()).hasSize(1);
        assertThat(scan.refused())
                .extracting(refusal -> refusal.file().getFileName().toString())
                .containsExactly("gone.jpg", "self");
    }

    @Test
    void survivesDeepFoldersAndOddNames() throws IOException {
        String deep = ("d".repeat(60) + "/").repeat(10);
        put(deep + "µ – 車 ' \" %s.jpg", JPEG);
        put("x".repeat(240) + ".jpg", JPEG);
        assertThat(scan(folder).media()).hasSize(2);
    }

    @Test
    void refusesAFolderThatIsNotThere() {
        FolderScan scan = scan(folder.resolve("vanished"));
        assertThat(scan.media()).isEmpty();
        assertThat(scan.refused()).singleElement().satisfies(refusal -> assertThat(refusal.reason())
                .contains("no such file"));
    }

    @Test
    void canBeCancelled() {
        Progress cancelled = new Progress() {
            @Override
            public void report(int done, int total, String what) {
                // not asked
            }

            @Override
            public boolean cancelled() {
                return true;
            }
        };
        assertThatThrownBy(() -> FolderScan.of(List.of(folder), cancelled)).isInstanceOf(CancellationException.class);
    }

    private FolderScan scan(Path... folders) {
        return FolderScan.of(List.of(folders), Progress.NONE);
    }

    private void put(String name, byte[] bytes) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.write(file, bytes);
    }
}
