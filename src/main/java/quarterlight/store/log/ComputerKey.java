package quarterlight.store.log;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.InvalidKeyException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Optional;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import quarterlight.file.DurableFiles;
import quarterlight.file.PlacedFile;
import quarterlight.file.StagingFolder;

/**
 * The secret by which this computer knows the visits that it wrote itself: 32 random bytes in the folder of settings. It leaves the computer in no
 * visit and no archive. A visit without its seal is not distrusted for anything but its database, which is then read row by row.
 * <p>Source: RFC 2104 (HMAC) with SHA-256.
 */
public final class ComputerKey {
    /** Its name in the folder of settings. */
    public static final String FILE = "computer-key";

    /** For a program without settings: seals nothing, and takes every visit for its own. */
    public static final ComputerKey NONE = new ComputerKey(Optional.empty());

    private static final System.Logger LOG = System.getLogger(ComputerKey.class.getName());
    private static final String ALGORITHM = "HmacSHA256";
    private static final int BYTES = 32;
    private static final String NO_SEAL = "-".repeat(64);

    private final Optional<byte[]> secret;

    private ComputerKey(Optional<byte[]> secret) {
        this.secret = secret;
    }

    /** A key that nobody else has: every visit is one from somebody else. */
    public static ComputerKey stranger() {
        return new ComputerKey(Optional.of(random()));
    }

    /** The key in a folder; made if it is not there. If it cannot be kept it lasts as long as the program, and every visit is received. */
    public static ComputerKey in(Path settings) {
        Path file = settings.resolve(FILE);
        try {
            if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                make(settings, file);
            }
            byte[] secret = HexFormat.of().parseHex(Files.readString(file).strip());
            if (secret.length == BYTES) {
                return new ComputerKey(Optional.of(secret));
            }
            LOG.log(System.Logger.Level.WARNING, file + " holds no key of " + BYTES + " bytes");
        } catch (IOException | IllegalArgumentException e) {
            LOG.log(System.Logger.Level.WARNING, "the key of this computer cannot be kept in " + file, e);
        }
        return new ComputerKey(Optional.of(random()));
    }

    /** A key that another process has just put there stays. */
    private static void make(Path settings, Path file) throws IOException {
        DurableFiles.createFolders(settings);
        try (StagingFolder unfinished = StagingFolder.in(settings)) {
            Path made = unfinished.folder().resolve("key");
            DurableFiles.fillText(made, HexFormat.of().formatHex(random()) + "\n");
            if (Files.getFileStore(made).supportsFileAttributeView("posix")) {
                Files.setPosixFilePermissions(made, PosixFilePermissions.fromString("rw-------"));
            }
            PlacedFile.move(made, file);
        } catch (FileAlreadyExistsException e) {
            LOG.log(System.Logger.Level.DEBUG, "another process made the key", e);
        }
        DurableFiles.forceFolder(settings);
    }

    private static byte[] random() {
        byte[] secret = new byte[BYTES];
        new SecureRandom().nextBytes(secret);
        return secret;
    }

    String seal(LogHead head) {
        return secret.map(key -> HexFormat.of().formatHex(mac(key, head))).orElse(NO_SEAL);
    }

    /** Whether this computer sealed it. */
    boolean sealed(LogHead head, String seal) {
        return secret.isPresent()
                && MessageDigest.isEqual(
                        seal(head).getBytes(StandardCharsets.US_ASCII), seal.getBytes(StandardCharsets.US_ASCII));
    }

    /** Whether visits are told apart at all. */
    public boolean tellsApart() {
        return secret.isPresent();
    }

    private static byte[] mac(byte[] key, LogHead head) {
        try {
            Mac mac = Mac.getInstance(ALGORITHM);
            mac.init(new SecretKeySpec(key, ALGORITHM));
            return mac.doFinal(("quarterlight head\n" + head).getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException | InvalidKeyException e) {
            throw new IllegalStateException("every Java has HMAC with SHA-256", e);
        }
    }
}
