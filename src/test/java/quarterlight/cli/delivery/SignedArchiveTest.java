package quarterlight.cli.delivery;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.OpenSsl;
import quarterlight.archive.RfcBag;
import quarterlight.cli.Bench;

/** An archive is signed with the key of the computer; what is changed in it, exchanged or signed by somebody else is told by audit and restore, and by another program. */
class SignedArchiveTest {
    @TempDir
    Path folder;

    private Bench bench;
    private Bench other;
    private Path zip;
    private Map<String, byte[]> files;
    private String print;

    @BeforeEach
    void archive() throws Exception {
        bench = new Bench(Files.createDirectories(folder.resolve("mine")));
        other = new Bench(Files.createDirectories(folder.resolve("other")));
        zip = SignedArchive.made(bench, folder.resolve("mine"), "a.zip");
        files = SignedArchive.files(zip);
        print = bench.run("key", "--json").done().json().get("fingerprint").asText();
    }

    private JsonNode audit(Bench by, Map<String, byte[]> archive, int status, String... more) throws Exception {
        Path made = SignedArchive.zipped(archive, folder.resolve("tried.zip"));
        String[] call = new String[3 + more.length];
        call[0] = "audit";
        call[1] = made.toString();
        call[2] = "--json";
        System.arraycopy(more, 0, call, 3, more.length);
        Bench.Outcome outcome = by.run(call);
        assertThat(outcome.status()).as(outcome.err()).isEqualTo(status);
        return outcome.json();
    }

    private String restored(Map<String, byte[]> archive, int status) throws Exception {
        Path made = SignedArchive.zipped(archive, folder.resolve("tried.zip"));
        Bench.Outcome outcome =
                bench.run("restore", made.toString(), folder.resolve("back").toString());
        assertThat(outcome.status()).as(outcome.err()).isEqualTo(status);
        assertThat(Files.exists(folder.resolve("back"))).isEqualTo(status == 0);
        return outcome.out() + outcome.err();
    }

    @Test
    void isABagThatIsSignedAndToldSoHereAndElsewhere() throws Exception {
        assertThat(RfcBag.of(zip).findings()).isEmpty();
        JsonNode mine = audit(bench, files, 0);
        assertThat(mine.get("signature").asText()).isEqualTo("good");
        assertThat(mine.get("key").asText()).isEqualTo(print);
        assertThat(mine.get("key_is").asText()).isEqualTo("own");
        assertThat(mine.get("signed_by").asText()).isEqualTo("Alma Quill");
        assertThat(mine.get("signed_at").asText()).startsWith("2026-05-02T12:00");
        assertThat(audit(other, files, 0).get("key_is").asText()).isEqualTo("unknown");
        assertThat(bench.run("audit", zip.toString()).done().out())
                .contains(
                        "signature is good, by",
                        "on May 2, 2026, 12:00 (UTC-06:00) by the signer's clock",
                        "this computer");
        assertThat(restored(files, 0)).contains("signature is good");
        String info = new String(files.get("bag-info.txt"), StandardCharsets.UTF_8);
        assertThat(info).contains("Quarterlight-Version: Quarterlight ", "Quarterlight-Models: finish history ");
    }

    @Test
    void tellsAPhotoThatWasChanged() throws Exception {
        Map<String, byte[]> changed = SignedArchive.flipped(files, SignedArchive.photoIn(files));
        JsonNode said = audit(bench, changed, 1);
        assertThat(said.get("changed")).hasSize(1);
        assertThat(said.get("signature").asText())
                .as("of the lists, which were not touched")
                .isEqualTo("good");
        assertThat(restored(changed, 2)).contains("FRONT.JPG");
    }

    @Test
    void tellsListsThatWereMendedAfterAChange() throws Exception {
        Map<String, byte[]> changed = SignedArchive.mendedLists(files);
        JsonNode said = audit(bench, changed, 1);
        assertThat(said.get("archive")).as("as a bag alone it would do").isEmpty();
        assertThat(said.get("signature").asText()).isEqualTo("bad");
        assertThat(restored(changed, 2)).contains("bad signature");
    }

    @Test
    void tellsASignatureOfAnotherArchive() throws Exception {
        bench.run("set", folder.resolve("mine/visit").toString(), "client=Another")
                .done();
        Map<String, byte[]> second = SignedArchive.files(SignedArchive.made(bench, folder.resolve("mine"), "b.zip"));
        files.put(SignedArchive.SIGNATURE, second.get(SignedArchive.SIGNATURE));
        assertThat(audit(bench, files, 1).get("signature").asText()).isEqualTo("bad");
    }

    @Test
    void tellsAKeyThatWasExchanged() throws Exception {
        Path foreign = SignedArchive.made(other, folder.resolve("other"), "a.zip");
        Map<String, byte[]> theirs = SignedArchive.files(foreign);
        Map<String, byte[]> mixed = new java.util.LinkedHashMap<>(files);
        mixed.put(SignedArchive.KEY, theirs.get(SignedArchive.KEY));
        assertThat(audit(bench, mixed, 1).get("signature").asText()).isEqualTo("bad");
        JsonNode whole = audit(bench, theirs, 0);
        assertThat(whole.get("signature").asText()).isEqualTo("good");
        assertThat(whole.get("key_is").asText()).isEqualTo("unknown");
        assertThat(audit(bench, theirs, 1, "--key", print).get("key_is").asText())
                .isEqualTo("another");
        assertThat(audit(bench, files, 0, "--key", print.toUpperCase(java.util.Locale.ROOT))
                        .get("key_is")
                        .asText())
                .isEqualTo("wanted");
    }

    @Test
    void tellsASignatureThatWasTakenAway() throws Exception {
        for (String part : new String[] {SignedArchive.SIGNATURE, SignedArchive.KEY, "tagmanifest-sha256.txt"}) {
            Map<String, byte[]> less = new java.util.LinkedHashMap<>(files);
            less.remove(part);
            assertThat(audit(bench, less, 1).get("signature").asText()).as(part).isEqualTo("bad");
        }
        files.put("More.txt", new byte[] {1});
        assertThat(audit(bench, files, 1).get("unreferenced").toString()).contains("More.txt");
        Map<String, byte[]> unsigned =
                SignedArchive.files(SignedArchive.made(bench, folder.resolve("mine"), "u.zip", "--unsigned"));
        JsonNode said = audit(bench, unsigned, 0);
        assertThat(said.get("signature").asText()).isEqualTo("none");
        assertThat(said.get("key").isNull()).isTrue();
        audit(bench, unsigned, 1, "--key", print);
    }

    @Test
    void isSignedUnderAPassphraseOrNotAtAll() throws Exception {
        String right = bench.file("right.txt", "twelve horses\n");
        String wrong = bench.file("wrong.txt", "twelve mules\n");
        bench.run("key", "--lock", "--new-passphrase-file", right).done();
        String visit = folder.resolve("mine/visit").toString();
        Path locked = folder.resolve("locked.zip");
        assertThat(bench.run("archive", visit, locked.toString()).status()).isEqualTo(2);
        assertThat(bench.run("archive", visit, locked.toString(), "--passphrase-file", wrong)
                        .status())
                .isEqualTo(2);
        assertThat(locked).doesNotExist();
        bench.run("archive", visit, locked.toString(), "--passphrase-file", right)
                .done();
        assertThat(audit(bench, SignedArchive.files(locked), 0).get("key").asText())
                .isEqualTo(print);
        bench.run("key", "--unlock", "--passphrase-file", right).done();
        assertThat(bench.run("key").done().out()).contains(print, "without a passphrase");
    }

    @Test
    void anotherProgramSaysTheSame() throws Exception {
        Path bag = SignedArchive.unpacked(files, folder.resolve("bag"));
        assertThat(verified(bag)).isTrue();
        OpenSsl.Said der = OpenSsl.run(
                "pkey",
                "-pubin",
                "-in",
                bag.resolve(SignedArchive.KEY).toString(),
                "-outform",
                "DER",
                "-out",
                folder.resolve("key.der").toString());
        assertThat(der.status()).isZero();
        assertThat(OpenSsl.run(
                                "dgst",
                                "-sha256",
                                "-r",
                                folder.resolve("key.der").toString())
                        .text())
                .startsWith(print);
        assertThat(new String(files.get("README.txt"), StandardCharsets.UTF_8)).contains(print, "the signer's word");
        assertThat(verified(SignedArchive.unpacked(SignedArchive.mendedLists(files), folder.resolve("mended"))))
                .isFalse();
    }

    /** As README.txt in the archive has it. */
    private static boolean verified(Path bag) throws Exception {
        return OpenSsl.run(
                                "pkeyutl",
                                "-verify",
                                "-pubin",
                                "-inkey",
                                bag.resolve(SignedArchive.KEY).toString(),
                                "-rawin",
                                "-in",
                                bag.resolve("tagmanifest-sha256.txt").toString(),
                                "-sigfile",
                                bag.resolve(SignedArchive.SIGNATURE).toString())
                        .status()
                == 0;
    }
}
