package quarterlight.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.task.Progress;

/** Bags: written by the rules of RFC 8493, and refused by name when they are damaged or set a trap. */
class BagTest {
    private static final LocalDateTime NOON = LocalDateTime.of(2026, 5, 2, 12, 0);
    private static final String[] AWKWARD = {
        "originals/plain.JPG",
        "originals/100%.JPG",
        "originals/a%0Ab",
        "originals/two\nlines\r.JPG",
        "originals/größer 塗装.JPG",
        "originals/ leading blank",
        "pages/deep/er/page.html"
    };

    @TempDir
    Path folder;

    private Path bag() throws IOException {
        Path file = folder.resolve("bag.zip");
        Random random = new Random(7);
        try (OutputStream out = Files.newOutputStream(file);
                BagWriter bag = new BagWriter(out, "bag", NOON)) {
            for (String path : AWKWARD) {
                byte[] bytes = new byte[random.nextInt(200_000)];
                random.nextBytes(bytes);
                Packing packing = path.startsWith("pages") ? Packing.SMALLER : Packing.CARRIED;
                assertThat(bag.put(path, packing, new ByteArrayInputStream(bytes), Progress.NONE)
                                .bytes())
                        .isEqualTo(bytes.length);
            }
            bag.put("tables/empty.csv", "");
            bag.finish(
                    Map.of("Bagging-Date", "2026-05-02", "External-Description", "a car\nof two\r\nlines"),
                    Optional.empty());
        }
        return file;
    }

    private static BagCheck check(Path file) throws BagRefused, IOException {
        try (BagFile bag = BagFile.open(file)) {
            return bag.check(BagFile.Unpacking.NONE, Progress.NONE);
        }
    }

    @Test
    void aBagKeepsTheRulesAsWrittenASecondTime() throws Exception {
        RfcBag.Seen seen = RfcBag.of(bag());
        assertThat(seen.findings()).isEmpty();
        assertThat(seen.files()).containsKeys("data/originals/two\nlines\r.JPG", "data/originals/a%0Ab");
        assertThat(seen.text("manifest-sha256.txt"))
                .contains(
                        "  data/originals/100%25.JPG\n",
                        "  data/originals/a%250Ab\n", "  data/originals/two%0Alines%0D.JPG\n");
        assertThat(seen.text("bag-info.txt")).contains("External-Description: a car of two lines\n");
    }

    @Test
    void whatIsUnpackedIsWhatWentIn() throws Exception {
        Path file = bag();
        Map<String, ByteArrayOutputStream> unpacked = new LinkedHashMap<>();
        try (BagFile bag = BagFile.open(file)) {
            BagCheck check = bag.check(
                    path -> Optional.of(unpacked.computeIfAbsent(path, p -> new ByteArrayOutputStream())),
                    Progress.NONE);
            assertThat(check.ok()).as(check.toString()).isTrue();
        }
        RfcBag.Seen seen = RfcBag.of(file);
        assertThat(unpacked).hasSize(AWKWARD.length + 1);
        unpacked.forEach((path, bytes) ->
                assertThat(bytes.toByteArray()).isEqualTo(seen.files().get(path)));
    }

    /** A changed byte is found wherever it makes a difference, and never ends in anything but a finding or a refusal. */
    @Test
    void everyDamageIsFoundOrMakesNoDifference() throws Exception {
        byte[] good = Files.readAllBytes(bag());
        Map<String, byte[]> before = RfcBag.of(folder.resolve("bag.zip")).files();
        Random random = new Random(20260502);
        int found = 0;
        for (int i = 0; i < 300; i++) {
            byte[] bad = good.clone();
            int at = i % 2 == 0 ? random.nextInt(bad.length) : bad.length - 1 - random.nextInt(3000);
            bad[at] ^= (byte) (1 << random.nextInt(8));
            Path file = Files.write(folder.resolve("bad.zip"), bad);
            Map<String, ByteArrayOutputStream> unpacked = new LinkedHashMap<>();
            try (BagFile bag = BagFile.open(file)) {
                BagCheck check = bag.check(
                        path -> Optional.of(unpacked.computeIfAbsent(path, p -> new ByteArrayOutputStream())),
                        Progress.NONE);
                if (check.ok()) {
                    unpacked.forEach((path, bytes) ->
                            assertThat(bytes.toByteArray()).as("byte " + at).isEqualTo(before.get(path)));
                } else {
                    found++;
                }
            } catch (BagRefused e) {
                found++;
                assertThat(e.getMessage()).startsWith(file.toString()).doesNotContain("Exception");
            }
        }
        assertThat(found).isGreaterThan(200);
        for (int length : new int[] {0, 1, 30, good.length / 2, good.length - 1}) {
            Path file = Files.write(folder.resolve("cut.zip"), Arrays.copyOf(good, length));
            assertThatThrownBy(() -> BagFile.open(file))
                    .isInstanceOf(BagRefused.class)
                    .hasMessageContaining("cut off");
        }
    }

    /** A zip of the given files, written without any care. */
    private Path zip(String... namesAndTexts) throws IOException {
        Path file = folder.resolve("made.zip");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            for (int i = 0; i < namesAndTexts.length; i += 2) {
                zip.putNextEntry(new ZipEntry(namesAndTexts[i]));
                zip.write(namesAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
                zip.closeEntry();
            }
        }
        return file;
    }

    private static final String EMPTY_SHA = "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";

    @Test
    void aBagByAnotherToolIsRead() throws Exception {
        Path file = zip(
                "b/", "",
                "b/bagit.txt", "BagIt-Version: 1.0\r\nTag-File-Character-Encoding: UTF-8\r\n",
                "b/bag-info.txt", "Contact-Name: A\r\n  B\r\nPayload-Oxum: 0.1\r\n",
                "b/manifest-sha256.txt", EMPTY_SHA.toUpperCase(Locale.ROOT) + " data/x%0ay\r\n",
                "b/manifest-md5.txt", "anything",
                "b/data/x\ny", "");
        assertThat(check(file).firstProblem()).isEmpty();
        try (BagFile bag = BagFile.open(file)) {
            assertThat(bag.info("Contact-Name")).contains("A B");
        }
    }

    @Test
    void whatBreaksARuleIsNamed() throws Exception {
        String declaration = BagWriter.DECLARATION;
        String line = EMPTY_SHA + "  data/a\n";
        assertThat(check(zip("b/bagit.txt", declaration, "b/manifest-sha256.txt", line, "b/data/a", "x"))
                        .changed())
                .containsExactly("data/a");
        assertThat(check(zip("b/bagit.txt", declaration, "b/manifest-sha256.txt", line))
                        .missing())
                .containsExactly("data/a");
        assertThat(check(zip("b/bagit.txt", declaration, "b/manifest-sha256.txt", line, "b/data/a", "", "b/data/b", ""))
                        .unlisted())
                .containsExactly("data/b");
        for (String bad : List.of("nonsense\n", line + line, EMPTY_SHA + "  ../../x\n", EMPTY_SHA + "  /etc/x\n")) {
            assertThat(check(zip("b/bagit.txt", declaration, "b/manifest-sha256.txt", bad, "b/data/a", ""))
                            .ok())
                    .as(bad)
                    .isFalse();
        }
        assertThat(check(zip(
                                "b/bagit.txt",
                                declaration,
                                "b/manifest-sha256.txt",
                                line,
                                "b/bag-info.txt",
                                "Payload-Oxum: 1.1\n",
                                "b/data/a",
                                ""))
                        .faults())
                .hasSize(1);
    }

    @Test
    void trapsAreRefusedBeforeAnythingIsUnpacked() throws Exception {
        String declaration = BagWriter.DECLARATION;
        for (String name : List.of("b/../../x", "/x", "b/..", "C:/x", "b/data\\..\\x", "b//x")) {
            Path file = zip("b/bagit.txt", declaration, "b/manifest-sha256.txt", "", name, "x");
            assertThatThrownBy(() -> BagFile.open(file))
                    .as(name)
                    .isInstanceOf(BagRefused.class)
                    .hasMessageContaining(name);
        }
        Path none = zip("readme.txt", "hello");
        assertThatThrownBy(() -> BagFile.open(none)).hasMessageContaining("no archive of a visit");
        Path two = zip("b/bagit.txt", declaration, "b/manifest-sha256.txt", "", "c/x", "");
        assertThatThrownBy(() -> BagFile.open(two)).hasMessageContaining("c/x");
        Path fetch = zip("b/bagit.txt", declaration, "b/manifest-sha256.txt", "", "b/fetch.txt", "x");
        assertThatThrownBy(() -> BagFile.open(fetch)).hasMessageContaining("network");
        Path old = zip("b/bagit.txt", declaration.replace("1.0", "0.97"), "b/manifest-sha256.txt", "");
        assertThatThrownBy(() -> BagFile.open(old)).hasMessageContaining("BagIt 1.0");
        Path bomb = folder.resolve("bomb.zip");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(bomb))) {
            zip.putNextEntry(new ZipEntry("b/data/zeros"));
            for (int i = 0; i < 80; i++) {
                zip.write(new byte[1 << 20]);
            }
            zip.closeEntry();
        }
        assertThatThrownBy(() -> BagFile.open(bomb)).hasMessageContaining("unpack to 83886080 bytes");
    }

    @Test
    void aPathThatLeadsOutCannotBeWritten() throws Exception {
        try (BagWriter bag = new BagWriter(new ByteArrayOutputStream(), "b", NOON)) {
            for (String path : List.of("../x", "a\\b", "", "a//b")) {
                assertThat(BagWriter.accepts(path)).isFalse();
                assertThatThrownBy(() -> bag.put(path, "")).isInstanceOf(IllegalArgumentException.class);
            }
            bag.put("x", "");
            assertThatThrownBy(() -> bag.put("x", "")).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void checkingStopsWhenItIsCancelled() throws Exception {
        List<String> reported = new ArrayList<>();
        Progress stopped = new Progress() {
            @Override
            public void report(int done, int total, String what) {
                reported.add(what);
            }

            @Override
            public boolean cancelled() {
                return reported.size() > 2;
            }
        };
        try (BagFile bag = BagFile.open(bag())) {
            assertThatThrownBy(() -> bag.check(BagFile.Unpacking.NONE, stopped))
                    .isInstanceOf(CancellationException.class);
        }
        assertThat(reported).hasSizeLessThan(5);
    }
}
