package quarterlight.archive.signature;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.AclEntry;
import java.nio.file.attribute.AclEntryPermission;
import java.nio.file.attribute.AclEntryType;
import java.nio.file.attribute.AclFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PrivateKey;
import java.security.spec.PKCS8EncodedKeySpec;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.file.DurableFiles;
import quarterlight.file.PlacedFile;
import quarterlight.file.StagingFolder;

/**
 * The signing key in the folder of settings: both halves as PEM in one file that only its owner may read, the secret one under a passphrase if there is one. Made
 * when it is first needed. It goes into no visit and no archive.
 */
public final class SigningKeyFile {
    /** Its name in the folder of settings. */
    public static final String NAME = "signing-key.pem";

    private static final String PLAIN = "PRIVATE KEY";
    private static final String LOCKED = "ENCRYPTED PRIVATE KEY";

    private final Path folder;
    private final Path file;

    public SigningKeyFile(Path settings) {
        this.folder = Objects.requireNonNull(settings, "settings");
        this.file = settings.resolve(NAME);
    }

    public Path path() {
        return file;
    }

    public boolean exists() {
        return Files.exists(file, LinkOption.NOFOLLOW_LINKS);
    }

    /** Whether a passphrase is needed to sign. */
    public boolean isLocked() throws IOException {
        return exists() && Pem.decoded(LOCKED, Files.readString(file)).isPresent();
    }

    /** What everybody may know of it; empty if there is none yet, or it cannot be read. */
    public Optional<PublicHalf> open() {
        try {
            return exists() ? PublicHalf.ofPem(Files.readString(file)) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** The key, made without a passphrase if there is none yet. */
    public SigningKey key(Optional<char[]> passphrase) throws SigningKeyProblem, IOException {
        if (!exists()) {
            make();
        }
        String text = Files.readString(file);
        PublicHalf open = PublicHalf.ofPem(text).orElseThrow(() -> damaged(say("archived.key.no-public")));
        SigningKey key = new SigningKey(secret(text, passphrase), open);
        if (!key.isWhole()) {
            throw damaged(say("archived.key.halves"));
        }
        return key;
    }

    private PrivateKey secret(String text, Optional<char[]> passphrase) throws SigningKeyProblem, IOException {
        Optional<byte[]> locked = Pem.decoded(LOCKED, text);
        if (locked.isPresent()) {
            return unlocked(locked.get(), passphrase);
        }
        byte[] secret = Pem.decoded(PLAIN, text).orElseThrow(() -> damaged(say("archived.key.none")));
        try {
            return privateKey(secret);
        } catch (GeneralSecurityException e) {
            throw damaged(say("archived.key.kind"));
        }
    }

    /** One of 256 wrong passphrases ends in a padding that looks right: then what it opens is no key. */
    private PrivateKey unlocked(byte[] locked, Optional<char[]> passphrase) throws SigningKeyProblem {
        char[] words = passphrase.orElseThrow(
                () -> new SigningKeyProblem(SigningKeyProblem.Kind.LOCKED, say("archived.key.locked", file)));
        try {
            return privateKey(LockedKey.unlocked(locked, words));
        } catch (GeneralSecurityException | IOException e) {
            throw new SigningKeyProblem(SigningKeyProblem.Kind.WRONG_PASSPHRASE, say("archived.key.wrong", file));
        }
    }

    private static PrivateKey privateKey(byte[] secret) throws GeneralSecurityException {
        return KeyFactory.getInstance(PublicHalf.ALGORITHM).generatePrivate(new PKCS8EncodedKeySpec(secret));
    }

    private SigningKeyProblem damaged(String what) {
        return new SigningKeyProblem(SigningKeyProblem.Kind.DAMAGED, say("archived.key.damaged", file, what));
    }

    /** Keeps the key under a passphrase, or without one if the new one is empty. */
    public void lock(Optional<char[]> before, Optional<char[]> after) throws SigningKeyProblem, IOException {
        SigningKey key = key(before);
        try (StagingFolder unfinished = StagingFolder.in(folder)) {
            DurableFiles.replace(written(unfinished, key, after), file);
        }
        DurableFiles.forceFolder(folder);
    }

    /** A key that another process has just put there stays. */
    private void make() throws IOException {
        DurableFiles.createFolders(folder);
        try (StagingFolder unfinished = StagingFolder.in(folder)) {
            PlacedFile.move(written(unfinished, SigningKey.fresh(), Optional.empty()), file);
        } catch (FileAlreadyExistsException e) {
            return;
        }
        DurableFiles.forceFolder(folder);
    }

    private static Path written(StagingFolder unfinished, SigningKey key, Optional<char[]> passphrase)
            throws IOException {
        Path made = Files.createFile(unfinished.folder().resolve("key"));
        onlyForOwner(made);
        byte[] secret = key.secretEncoded();
        String text = passphrase
                        .map(words -> Pem.encoded(LOCKED, LockedKey.locked(secret, words)))
                        .orElseGet(() -> Pem.encoded(PLAIN, secret))
                + key.open().pem();
        DurableFiles.fillText(made, text);
        return made;
    }

    /** Before anything secret is in it. */
    private static void onlyForOwner(Path file) throws IOException {
        if (Files.getFileStore(file).supportsFileAttributeView("posix")) {
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
            return;
        }
        AclFileAttributeView access = Files.getFileAttributeView(file, AclFileAttributeView.class);
        if (access != null) {
            access.setAcl(List.of(AclEntry.newBuilder()
                    .setType(AclEntryType.ALLOW)
                    .setPrincipal(Files.getOwner(file))
                    .setPermissions(EnumSet.allOf(AclEntryPermission.class))
                    .build()));
        }
    }
}
