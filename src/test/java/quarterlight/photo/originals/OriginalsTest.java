package quarterlight.photo.originals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.photo.MediaType;
import quarterlight.photo.header.FileFacts;
import quarterlight.photo.header.MetadataReader;
import quarterlight.task.Progress;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.Sha256;

class OriginalsTest {
    /** SHA-256 of "abc": FIPS 180-4 example. */
    private static final String ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    @TempDir
    Path folder;

    private Path visit;
    private OriginalsFolder originals;

    @BeforeEach
    void prepare() {
        visit = folder.resolve("visit");
        originals = new OriginalsFolder(visit);
    }

    @Test
    void keepsAFileByteForByteUnderDigestAndName() throws Exception {
        StoredOriginal kept = originals.keep(written("IMG 1.jpg", "abc"));
        assertThat(kept.sha256().hex()).isEqualTo(ABC);
        assertThat(kept.stored()).isEqualTo("originals/" + ABC + "-IMG 1.jpg");
        assertThat(visit.resolve(kept.stored())).hasContent("abc");
        assertThat(originals.keep(folder.resolve("IMG 1.jpg"))).isEqualTo(kept);
        assertThat(namesInOriginals()).containsExactly(ABC + "-IMG 1.jpg");
    }

    @Test
    void namesThatClashKeepBothFiles() throws Exception {
        StoredOriginal first = originals.keep(written("a/1.jpg", "abc"));
        StoredOriginal second = originals.keep(written("b/1.jpg", "abd"));
        assertThat(first.stored()).isNotEqualTo(second.stored());
        assertThat(namesInOriginals()).hasSize(2);
    }

    @Test
    void namesThatDisksRefuseAreReplacedButRemembered() throws Exception {
        String odd = "a:b*c?\"d\"<e>|f\\.jpg";
        StoredOriginal kept = originals.keep(written(odd, "abc"));
        assertThat(kept.name()).isEqualTo(odd);
        assertThat(kept.stored()).isEqualTo("originals/" + ABC + "-a_b_c__d__e__f_.jpg");
        StoredOriginal longName = originals.keep(written("車".repeat(83) + ".jpg", "abc"));
        assertThat(longName.name()).hasSize(87);
        assertThat(longName.stored()).endsWith("車.jpg");
        assertThat(visit.resolve(longName.stored())).exists();
        assertThat(OriginalsFolder.storedName(new Sha256(ABC), "...")).isEqualTo(ABC + "-_");
    }

    @Test
    void knowsWhatBelongsToTheVisitItself() throws Exception {
        originals.keep(written("1.jpg", "abc"));
        Files.createSymbolicLink(folder.resolve("link"), visit);
        assertThat(originals.isOfThisVisit(visit)).isTrue();
        assertThat(originals.isOfThisVisit(visit.resolve("originals"))).isTrue();
        assertThat(originals.isOfThisVisit(folder.resolve("link"))).isTrue();
        assertThat(originals.isOfThisVisit(folder)).isFalse();
    }

    @Test
    void theAuditFindsAnyChangedByteAndNamesTheFile() throws Exception {
        List<PhotoFile> photos = List.of(
                taken(written("good.jpg", "abc")), taken(written("bad.jpg", "abd")), taken(written("gone.jpg", "abe")));
        OriginalsAudit before = OriginalsAudit.of(visit, photos, Progress.NONE);
        assertThat(before.ok()).isTrue();
        Files.writeString(visit.resolve(photos.get(1).stored()), "abD");
        Files.delete(visit.resolve(photos.get(2).stored()));
        Files.writeString(visit.resolve("originals/stray.txt"), "?");
        OriginalsAudit after = OriginalsAudit.of(visit, photos, Progress.NONE);
        assertThat(after.ok()).isFalse();
        assertThat(after.changed()).containsExactly(photos.get(1).stored());
        assertThat(after.missing()).containsExactly(photos.get(2).stored());
        assertThat(after.unreferenced()).containsExactly("originals/stray.txt");
    }

    @Test
    void aCopyCountsOnlyWhenItIsSettled() throws Exception {
        OriginalsFolder.Copy copy = originals.copy(written("1.jpg", "abc"));
        assertThat(namesInOriginals()).singleElement().satisfies(name -> assertThat(name)
                .endsWith(".part"));
        originals.copy(written("2.jpg", "abd"));
        assertThat(originals.settle(copy).stored()).isEqualTo("originals/" + ABC + "-1.jpg");
        originals.discardUnfinished();
        assertThat(namesInOriginals()).containsExactly(ABC + "-1.jpg");
    }

    @Test
    void photosWhoseDigestsBeginAlikeAreBothKept() throws Exception {
        Path first = alike("alike-1.jpg", "card1");
        Path second = alike("alike-2.jpg", "card2");
        StoredOriginal one = originals.keep(first);
        StoredOriginal two = originals.keep(second);
        assertThat(one.sha256().prefix()).isEqualTo(two.sha256().prefix());
        assertThat(one.name()).isEqualTo(two.name());
        assertThat(visit.resolve(one.stored())).hasSameBinaryContentAs(first);
        assertThat(visit.resolve(two.stored())).hasSameBinaryContentAs(second);
    }

    private Path alike(String resource, String card) throws IOException {
        Path file = Files.createDirectories(folder.resolve(card)).resolve("IMG_0001.JPG");
        try (InputStream in = OriginalsTest.class.getResourceAsStream(resource)) {
            Files.copy(in, file);
        }
        return file;
    }

    @Test
    void whatLiesThereAlreadyIsNeverReplaced() throws Exception {
        Path there = visit.resolve("originals/" + ABC + "-1.jpg");
        Files.createDirectories(there.getParent());
        Files.writeString(there, "damaged");
        Path elsewhere = Files.writeString(folder.resolve("elsewhere"), "private");
        Path link = visit.resolve("originals/" + ABC + "-2-1.jpg");
        Files.createSymbolicLink(link, elsewhere);
        StoredOriginal kept = originals.keep(written("1.jpg", "abc"));
        assertThat(kept.stored()).isEqualTo("originals/" + ABC + "-3-1.jpg");
        assertThat(visit.resolve(kept.stored())).hasContent("abc");
        assertThat(there).hasContent("damaged");
        assertThat(elsewhere).hasContent("private");
        assertThat(link).isSymbolicLink();
    }

    /** A writer waits until the copy has begun and then writes the file anew, once. */
    @Test
    void aFileThatIsRewrittenWhileItIsCopiedIsCopiedAgain() throws Exception {
        Path source = folder.resolve("large.jpg");
        Files.write(source, filled((byte) 1));
        Thread writer = new Thread(() -> {
            awaitCopy();
            rewrite(source, (byte) 2);
        });
        writer.start();
        StoredOriginal kept = originals.keep(source);
        writer.join();
        byte[] bytes = Files.readAllBytes(visit.resolve(kept.stored()));
        assertThat(bytes).as("wholly the one or wholly the other").containsOnly(bytes[0]);
        assertThat(bytes[0]).isEqualTo((byte) 2);
    }

    @Test
    void aFileThatIsWrittenToAllTheTimeIsRefused() throws Exception {
        Path source = folder.resolve("large.jpg");
        Files.write(source, filled((byte) 1));
        AtomicBoolean enough = new AtomicBoolean();
        Thread writer = new Thread(() -> {
            for (int i = 0; !enough.get(); i++) {
                rewrite(source, (byte) i);
            }
        });
        writer.start();
        try {
            assertThatThrownBy(() -> originals.keep(source))
                    .isInstanceOfSatisfying(OriginalNotKept.class, e -> assertThat(e.reason())
                            .contains("another program writes to it"));
        } finally {
            enough.set(true);
            writer.join();
        }
        assertThat(namesInOriginals()).isEmpty();
    }

    private static byte[] filled(byte value) {
        byte[] bytes = new byte[24 << 20];
        Arrays.fill(bytes, value);
        return bytes;
    }

    /** In place and of the same length, from the end to the beginning, so that a copy under way gets some of each. */
    private static void rewrite(Path file, byte value) {
        try (FileChannel out = FileChannel.open(file, StandardOpenOption.WRITE)) {
            ByteBuffer piece = ByteBuffer.wrap(filled(value), 0, 1 << 20);
            for (long at = 23L << 20; at >= 0; at -= 1 << 20) {
                out.write(piece.rewind(), at);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void awaitCopy() {
        while (!Files.isDirectory(visit.resolve("originals")) || partBytes() < 1 << 20) {
            Thread.onSpinWait();
        }
    }

    private long partBytes() {
        try {
            long bytes = 0;
            for (String name : namesInOriginals()) {
                bytes += Files.size(visit.resolve("originals").resolve(name));
            }
            return bytes;
        } catch (IOException e) {
            return 0;
        }
    }

    @Test
    void aLinkedFolderOfOriginalsIsRefused() throws Exception {
        Path elsewhere = Files.createDirectories(folder.resolve("elsewhere"));
        Files.writeString(elsewhere.resolve(ABC + "-1.jpg"), "abc");
        Files.createDirectories(visit);
        Files.createSymbolicLink(visit.resolve("originals"), elsewhere);
        assertThatThrownBy(() -> originals.keep(written("1.jpg", "abc")))
                .isInstanceOf(OriginalsUnwritable.class)
                .hasMessageContaining("originals is a link");
        assertThatThrownBy(() -> Original.of(visit, "originals/" + ABC + "-1.jpg", new Sha256(ABC)))
                .isInstanceOfSatisfying(
                        OriginalRefused.class, e -> assertThat(e.reason()).contains("it is a link"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/etc/hostname",
                "../secret",
                "originals/../../secret",
                "originals/..",
                "originals/.",
                "originals/",
                "originals",
                "secret",
                "",
                "originals/a/b",
                "originals\\..\\..\\secret",
                "originals//etc/hostname",
                "originals/a\u0000b",
                "originals/link",
                "originals/folder",
                "thumbs.db"
            })
    void aNameThatLeadsOutsideIsRefused(String stored) throws Exception {
        Files.createDirectories(visit.resolve("originals/folder"));
        Files.writeString(folder.resolve("secret"), "private");
        Files.createSymbolicLink(visit.resolve("originals/link"), folder.resolve("secret"));
        assertThatThrownBy(() -> Original.of(visit, stored, new Sha256(ABC)))
                .isInstanceOfSatisfying(
                        OriginalRefused.class, e -> assertThat(e.isMissing()).isFalse());
    }

    @Test
    void anOriginalIsFoundUnderItsEarlierNameToo() throws Exception {
        String stored = originals.keep(written("1.jpg", "abc")).stored();
        assertThat(Original.of(visit, stored, new Sha256(ABC))).hasContent("abc");
        Files.move(visit.resolve(stored), visit.resolve("originals/ba7816bf8f01-1.jpg"));
        assertThat(Original.of(visit, stored, new Sha256(ABC))).hasFileName("ba7816bf8f01-1.jpg");
        Files.delete(visit.resolve("originals/ba7816bf8f01-1.jpg"));
        assertThatThrownBy(() -> Original.of(visit, stored, new Sha256(ABC)))
                .isInstanceOfSatisfying(
                        OriginalRefused.class, e -> assertThat(e.isMissing()).isTrue());
    }

    @Test
    void aFileThatNoRowNamesIsNoFault() throws IOException {
        Files.createDirectories(visit.resolve("originals"));
        Files.writeString(visit.resolve("originals/stray.txt"), "?");
        assertThat(OriginalsAudit.of(visit, List.of(), Progress.NONE).ok()).isTrue();
    }

    private PhotoFile taken(Path file) throws Exception {
        FileFacts facts = new MetadataReader(Clock.systemUTC()).read(file, MediaType.JPEG);
        return facts.asPhotoFile(originals.keep(file), OptionalDouble.empty(), List.of());
    }

    private Path written(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    private List<String> namesInOriginals() throws IOException {
        try (Stream<Path> files = Files.list(visit.resolve("originals"))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
