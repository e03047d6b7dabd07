package quarterlight.photo.originals;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.photo.FolderScan;
import quarterlight.photo.MediaType;
import quarterlight.photo.SamplePictures;
import quarterlight.photo.Taking;
import quarterlight.photo.decode.Pictures;
import quarterlight.photo.decode.ScaledJpegDecoder;
import quarterlight.photo.header.FileFacts;
import quarterlight.photo.header.MetadataReader;
import quarterlight.task.Progress;
import quarterlight.visit.PhotoFile;
import quarterlight.visit.Sha256;

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
        assertThat(kept.stored()).isEqualTo("originals/ba7816bf8f01-IMG 1.jpg");
        assertThat(visit.resolve(kept.stored())).hasContent("abc");
        assertThat(originals.keep(folder.resolve("IMG 1.jpg"))).isEqualTo(kept);
        assertThat(namesInOriginals()).containsExactly("ba7816bf8f01-IMG 1.jpg");
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
        assertThat(kept.stored()).isEqualTo("originals/ba7816bf8f01-a_b_c__d__e__f_.jpg");
        StoredOriginal longName = originals.keep(written("車".repeat(83) + ".jpg", "abc"));
        assertThat(longName.name()).hasSize(87);
        assertThat(longName.stored()).endsWith("車.jpg");
        assertThat(visit.resolve(longName.stored())).exists();
        assertThat(OriginalsFolder.storedName(new Sha256(ABC), "...")).isEqualTo("ba7816bf8f01-_");
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
    void whatWasReadBackCanBeHeldInMemory() throws Exception {
        Assumptions.assumeTrue(ScaledJpegDecoder.available(), "the native part is missing");
        byte[] content = new byte[3 * Pieces.PIECE + 5];
        new Random(1).nextBytes(content);
        OriginalsFolder.Copy copy = originals.copy(Files.write(folder.resolve("1.jpg"), content), true);
        byte[] held = new byte[content.length];
        copy.held().orElseThrow().memory().get(held);
        assertThat(held).isEqualTo(content);
        assertThat(copy.held().orElseThrow().size()).isEqualTo(content.length);
        copy.release();
        assertThat(copy.held().orElseThrow().memory().isNull()).isTrue();
        assertThat(originals.settle(copy).bytes()).isEqualTo(content.length);
    }

    @Test
    void aCopyCountsOnlyWhenItIsSettled() throws Exception {
        OriginalsFolder.Copy copy = originals.copy(written("1.jpg", "abc"), false);
        assertThat(namesInOriginals()).singleElement().satisfies(name -> assertThat(name)
                .endsWith(".part"));
        OriginalsFolder.Copy interrupted = originals.copy(written("2.jpg", "abd"), false);
        assertThat(originals.settle(copy).stored()).isEqualTo("originals/ba7816bf8f01-1.jpg");
        assertThat(originals.unfinished()).containsExactly(interrupted.sha256());
        Taking careful = new Taking(
                visit, new MetadataReader(Clock.systemUTC()), new Pictures(List.of()), originals.unfinished());
        byte[] jpeg = SamplePictures.jpeg(64, 48, 1);
        Path photo = Files.write(folder.resolve("3.jpg"), jpeg);
        Path twin = Files.write(visit.resolve("originals/left.part"), jpeg);
        Taking suspicious = new Taking(
                visit, new MetadataReader(Clock.systemUTC()), new Pictures(List.of()), originals.unfinished());
        FolderScan.Found found = new FolderScan.Found(photo, MediaType.JPEG);
        assertThat(careful.settle(careful.look(found)).thumbnail())
                .as("no decoder at all")
                .isEmpty();
        assertThat(suspicious.settle(suspicious.look(found)).thumbnail())
                .as("a suspect is read by the platform alone")
                .isPresent();
        Files.delete(visit.resolve("originals")
                .resolve(namesInOriginals().stream()
                        .filter(name -> name.endsWith("3.jpg"))
                        .findFirst()
                        .orElseThrow()));
        Files.delete(twin);
        originals.discardUnfinished();
        assertThat(namesInOriginals()).containsExactly("ba7816bf8f01-1.jpg");
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
