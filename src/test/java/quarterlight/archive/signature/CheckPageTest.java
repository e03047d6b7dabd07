package quarterlight.archive.signature;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.Axe;
import quarterlight.Browser;
import quarterlight.cli.Bench;
import quarterlight.cli.delivery.SignedArchive;

/**
 * The page in the archive, opened from the disk in a real browser without a window. Each archive is looked at twice: with the cryptography of the browser, and with the
 * scripts of the page alone.
 */
class CheckPageTest {
    /** For older browsers, and such as keep their cryptography from files. */
    private static final String WITHOUT_CRYPTOGRAPHY =
            "Object.defineProperty(globalThis.crypto, 'subtle', { value: undefined });";

    @TempDir
    private static Path folder;

    private static Browser browser;
    private static Bench bench;
    private static Map<String, byte[]> files;
    private static String print;
    private static int number;

    @BeforeAll
    static void archive() throws Exception {
        browser = Browser.start(folder.resolve("profile"));
        bench = new Bench(folder);
        files = SignedArchive.files(SignedArchive.made(bench, folder, "a.zip"));
        print = bench.run("key", "--json").done().json().get("fingerprint").asText();
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
    }

    private static Browser.Tab checked(Map<String, byte[]> archive, String first) throws Exception {
        Path bag = SignedArchive.unpacked(archive, folder.resolve("bag" + number++));
        Browser.Tab tab = browser.open(bag.resolve("check.html"), first);
        tab.choose("#folder", bag);
        tab.until("!document.getElementById('result').hidden");
        return tab;
    }

    private static String text(Browser.Tab tab, String id) {
        return tab.value("document.getElementById('" + id + "').textContent").asText();
    }

    private static String state(Browser.Tab tab) {
        return tab.value("document.getElementById('verdict').dataset.state").asText();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", WITHOUT_CRYPTOGRAPHY})
    void saysThatAllIsWell(String first) throws Exception {
        Browser.Tab tab = checked(files, first);
        assertThat(state(tab)).as(text(tab, "problems")).isEqualTo("good");
        assertThat(text(tab, "problems")).isEmpty();
        assertThat(text(tab, "facts").replace(" ", "")).contains(print, "AlmaQuill");
        assertThat(text(tab, "facts")).contains(first.isEmpty() ? "the browser" : "the script");
        String signed = new String(files.get("bag-info.txt"), StandardCharsets.UTF_8)
                .lines()
                .filter(line -> line.startsWith("Quarterlight-Signed-At: "))
                .map(line -> line.substring(line.indexOf(' ') + 1))
                .findFirst()
                .orElseThrow();
        assertThat(text(tab, "facts"))
                .contains(OffsetDateTime.parse(signed)
                        .format(DateTimeFormatter.ofPattern("MMM d, yyyy, HH:mm '(UTC'xxx')'", Locale.US)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", WITHOUT_CRYPTOGRAPHY})
    void tellsAPhotoThatWasChanged(String first) throws Exception {
        String photo = SignedArchive.photoIn(files);
        Browser.Tab tab = checked(SignedArchive.flipped(files, photo), first);
        assertThat(state(tab)).isEqualTo("bad");
        assertThat(text(tab, "problems")).contains(photo).contains("not what was archived");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", WITHOUT_CRYPTOGRAPHY})
    void tellsListsThatWereMended(String first) throws Exception {
        Browser.Tab tab = checked(SignedArchive.mendedLists(files), first);
        assertThat(text(tab, "problems")).as("every hash agrees").isEmpty();
        assertThat(state(tab)).isEqualTo("bad");
        assertThat(text(tab, "verdict")).contains("signature is bad");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", WITHOUT_CRYPTOGRAPHY})
    void tellsASignatureOfAnother(String first) throws Exception {
        Path other = Files.createDirectories(folder.resolve("other" + number++));
        Map<String, byte[]> theirs = SignedArchive.files(SignedArchive.made(new Bench(other), other, "a.zip"));
        Map<String, byte[]> mixed = new LinkedHashMap<>(files);
        mixed.put(SignedArchive.SIGNATURE, theirs.get(SignedArchive.SIGNATURE));
        assertThat(state(checked(mixed, first))).isEqualTo("bad");
        Browser.Tab whole = checked(theirs, first);
        assertThat(state(whole)).isEqualTo("good");
        whole.value("{ const f = document.getElementById('wanted'); f.value = '" + print
                + "'; f.dispatchEvent(new Event('input')); }");
        assertThat(text(whole, "same")).contains("another key");
    }

    @Test
    void tellsWhatIsMissingOrWasAdded() throws Exception {
        Map<String, byte[]> changed = new LinkedHashMap<>(files);
        changed.remove("data/visit.db");
        changed.put("data/more.txt", new byte[] {1});
        changed.put("beside.txt", new byte[] {1});
        changed.put("data/.DS_Store", new byte[] {1});
        Browser.Tab tab = checked(changed, "");
        assertThat(state(tab)).isEqualTo("bad");
        assertThat(text(tab, "problems")).contains("visit.db is missing", "more.txt was added", "beside.txt was added");
        assertThat(text(tab, "verdict")).startsWith("3 things");
        Map<String, byte[]> unsigned =
                SignedArchive.files(SignedArchive.made(bench, folder, "u" + number++ + ".zip", "--unsigned"));
        assertThat(state(checked(unsigned, ""))).isEqualTo("unsigned");
    }

    @Test
    void opensThePicturesAndAsksNoNetwork() throws Exception {
        Browser.Tab tab = checked(files, "");
        tab.until("[...document.querySelectorAll('#pictures img')].filter(i => i.complete && i.naturalWidth ==="
                + " 640).length === 2");
        tab.value("document.querySelector('#pictures button').click()");
        tab.until("document.querySelector('#large').open && document.querySelector('#large img').naturalWidth === 640");
        assertThat(tab.value("performance.getEntriesByType('resource').filter(e => !e.name.startsWith('blob:')).length")
                        .asInt())
                .isZero();
        assertThat(ReaderFiles.page())
                .contains("MIT License", "default-src 'none'")
                .doesNotContain("@CHECK@", "@NACL@");
    }

    @ParameterizedTest
    @CsvSource({"360, dark", "800, light", "1280, dark"})
    void shutsNobodyOutAndFitsTheScreenOnceItIsFilled(int width, String scheme) throws Exception {
        Browser.Tab tab = checked(files, "");
        tab.until("document.querySelectorAll('#pictures img').length > 0");
        tab.look(width, 900, scheme, "screen");
        assertThat(Axe.violations(tab)).isEmpty();
        assertThat(Axe.runningOver(tab)).isEmpty();
    }

    @Test
    void tellsTheHashOfTheZip() throws Exception {
        Path zip = folder.resolve("a.zip");
        Browser.Tab tab =
                browser.open(SignedArchive.unpacked(files, folder.resolve("z")).resolve("check.html"), "");
        tab.choose("#zip", zip);
        tab.until("document.getElementById('ziphash').textContent.length > 60");
        java.security.MessageDigest digest = java.security.MessageDigest.getInstance("SHA-256");
        assertThat(text(tab, "ziphash").replace(" ", ""))
                .isEqualTo(java.util.HexFormat.of().formatHex(digest.digest(Files.readAllBytes(zip))));
    }
}
