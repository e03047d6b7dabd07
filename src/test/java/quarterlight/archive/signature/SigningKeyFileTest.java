package quarterlight.archive.signature;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.OpenSsl;

/** The signing key is made once, read by its owner alone, and opened by its passphrase alone. */
class SigningKeyFileTest {
    @TempDir
    Path folder;

    private static Optional<char[]> words(String text) {
        return Optional.of(text.toCharArray());
    }

    private SigningKeyFile file() {
        return new SigningKeyFile(folder.resolve("settings"));
    }

    @Test
    void isMadeOnFirstUseAndStays() throws Exception {
        assertThat(file().exists()).isFalse();
        assertThat(file().open()).isEmpty();
        SigningKey first = file().key(Optional.empty());
        assertThat(file().key(Optional.empty()).open()).isEqualTo(first.open());
        assertThat(file().open()).contains(first.open());
        assertThat(SigningKey.fresh().open()).isNotEqualTo(first.open());
    }

    @Test
    void isReadByItsOwnerAlone() throws Exception {
        file().key(Optional.empty());
        file().lock(Optional.empty(), words("a longer phrase"));
        Path path = file().path();
        assumeTrue(Files.getFileStore(path).supportsFileAttributeView("posix"), "no POSIX permissions here");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(path)))
                .isEqualTo("rw-------");
    }

    @Test
    void staysTheSameKeyUnderAPassphraseAndWithout() throws Exception {
        SigningKey key = file().key(Optional.empty());
        byte[] text = "what is signed".getBytes(StandardCharsets.UTF_8);
        byte[] before = key.sign(text);
        file().lock(Optional.empty(), words("gr\u00f6\u00dfer als zw\u00f6lf"));
        assertThat(file().isLocked()).isTrue();
        assertThat(Files.readString(file().path())).contains("ENCRYPTED").doesNotContain("BEGIN PRIVATE");
        assertThat(file().open()).contains(key.open());
        assertThat(file().key(words("gr\u00f6\u00dfer als zw\u00f6lf")).sign(text))
                .isEqualTo(before);
        file().lock(words("gr\u00f6\u00dfer als zw\u00f6lf"), Optional.empty());
        assertThat(file().isLocked()).isFalse();
        assertThat(file().key(Optional.empty()).sign(text)).isEqualTo(before);
    }

    @Test
    void isNotOpenedByAnotherPassphraseOrNone() throws Exception {
        file().key(Optional.empty());
        file().lock(Optional.empty(), words("right"));
        byte[] kept = Files.readAllBytes(file().path());
        assertThatThrownBy(() -> file().key(words("wrong")))
                .isInstanceOfSatisfying(SigningKeyProblem.class, problem -> assertThat(problem.kind())
                        .isEqualTo(SigningKeyProblem.Kind.WRONG_PASSPHRASE));
        assertThatThrownBy(() -> file().key(Optional.empty()))
                .isInstanceOfSatisfying(SigningKeyProblem.class, problem -> assertThat(problem.kind())
                        .isEqualTo(SigningKeyProblem.Kind.LOCKED));
        assertThatThrownBy(() -> file().lock(words("wrong"), Optional.empty())).isInstanceOf(SigningKeyProblem.class);
        assertThat(Files.readAllBytes(file().path())).isEqualTo(kept);
    }

    /** What one of 256 wrong passphrases opens: bytes that end as a padding does, and are no key. */
    @Test
    void saysThatAPassphraseIsWrongWhenWhatItOpensIsNoKey() throws Exception {
        SigningKey key = file().key(Optional.empty());
        byte[] noKey = new byte[key.secretEncoded().length];
        Files.writeString(
                file().path(),
                Pem.encoded("ENCRYPTED PRIVATE KEY", LockedKey.locked(noKey, "chance".toCharArray()))
                        + key.open().pem());
        assertThatThrownBy(() -> file().key(words("chance")))
                .isInstanceOfSatisfying(SigningKeyProblem.class, problem -> assertThat(problem.kind())
                        .isEqualTo(SigningKeyProblem.Kind.WRONG_PASSPHRASE));
    }

    @Test
    void saysWhatIsWrongWithADamagedFile() throws Exception {
        String mine = text(file().key(Optional.empty()));
        String other = text(new SigningKeyFile(folder.resolve("other")).key(Optional.empty()));
        int half = mine.indexOf("-----BEGIN PUBLIC");
        for (String damaged : new String[] {
            "", "nothing", mine.substring(0, half), mine.substring(half), mine.substring(0, half) + other
        }) {
            Files.writeString(file().path(), damaged);
            assertThatThrownBy(() -> file().key(Optional.empty()))
                    .as(damaged)
                    .isInstanceOfSatisfying(SigningKeyProblem.class, problem -> assertThat(problem.kind())
                            .isEqualTo(SigningKeyProblem.Kind.DAMAGED))
                    .hasMessageContaining("signing-key.pem");
        }
    }

    private String text(SigningKey key) {
        return Pem.encoded("PRIVATE KEY", key.secretEncoded()) + key.open().pem();
    }

    /** RFC 8032, section 7.1, test 2: secret key, public key, message of one byte, signature. */
    @Test
    void signsAsTheStandardHasIt() throws IOException {
        java.util.HexFormat hex = java.util.HexFormat.of();
        String secret =
                "302e020100300506032b657004220420" + "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb";
        String open = "302a300506032b6570032100" + "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c";
        Files.createDirectories(folder.resolve("settings"));
        Files.writeString(
                file().path(),
                Pem.encoded("PRIVATE KEY", hex.parseHex(secret)) + Pem.encoded("PUBLIC KEY", hex.parseHex(open)));
        SigningKey key;
        try {
            key = file().key(Optional.empty());
        } catch (SigningKeyProblem e) {
            throw new AssertionError(e);
        }
        assertThat(hex.formatHex(key.sign(new byte[] {0x72})))
                .isEqualTo("92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da"
                        + "085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00");
    }

    @Test
    void opensWithAnotherProgramToo() throws Exception {
        SigningKey key = file().key(Optional.empty());
        file().lock(Optional.empty(), words("a phrase"));
        OpenSsl.Said said = OpenSsl.run("pkey", "-in", file().path().toString(), "-passin", "pass:a phrase", "-pubout");
        assertThat(said.status()).as(said.text()).isZero();
        assertThat(PublicHalf.ofPem(said.text())).contains(key.open());
        assertThat(OpenSsl.run("pkey", "-in", file().path().toString(), "-passin", "pass:another", "-pubout")
                        .status())
                .isNotZero();
    }
}
