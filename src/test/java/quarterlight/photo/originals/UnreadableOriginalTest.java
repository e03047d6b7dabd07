package quarterlight.photo.originals;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.photo.MediaType;
import quarterlight.photo.header.MetadataReader;
import quarterlight.task.Progress;
import quarterlight.visit.photo.PhotoFile;

/** An original on a disk that gives it out no more; here a zip archive as the disk, whose packed bytes are damaged. */
class UnreadableOriginalTest {
    @TempDir
    Path folder;

    @Test
    void whatCannotBeReadIsNotCalledChanged() throws Exception {
        Path source = Files.writeString(folder.resolve("1.jpg"), "a photo, a photo, a photo, a photo");
        PhotoFile photo = new MetadataReader(Clock.systemUTC())
                .read(source, MediaType.JPEG)
                .asPhotoFile(
                        new OriginalsFolder(folder.resolve("visit")).keep(source), OptionalDouble.empty(), List.of());
        Path disk = folder.resolve("disk.zip");
        try (FileSystem zip = FileSystems.newFileSystem(URI.create("jar:" + disk.toUri()), Map.of("create", "true"))) {
            Files.createDirectory(zip.getPath("/originals"));
            Files.copy(source, zip.getPath("/" + photo.stored()));
        }
        try (FileSystem zip = FileSystems.newFileSystem(disk, Map.of())) {
            assertThat(OriginalsAudit.of(zip.getPath("/"), List.of(photo), Progress.NONE)
                            .ok())
                    .isTrue();
        }
        damage(disk, photo.stored());
        try (FileSystem zip = FileSystems.newFileSystem(disk, Map.of())) {
            OriginalsAudit audit = OriginalsAudit.of(zip.getPath("/"), List.of(photo), Progress.NONE);
            assertThat(audit.ok()).isFalse();
            assertThat(audit.unreadable()).containsExactly(photo.stored());
            assertThat(audit.changed()).isEmpty();
            assertThat(audit.missing()).isEmpty();
        }
    }

    /** Overwrites what is packed behind the local header (two bytes at 28 of it: length of what follows the name) of an entry. */
    private static void damage(Path zip, String name) throws Exception {
        byte[] bytes = Files.readAllBytes(zip);
        int named = new String(bytes, StandardCharsets.ISO_8859_1).indexOf(name);
        int at = named + name.length() + (bytes[named - 2] & 0xff) + 256 * (bytes[named - 1] & 0xff);
        for (int i = 0; i < 8; i++) {
            bytes[at + i] = (byte) 0xff;
        }
        Files.write(zip, bytes);
    }
}
