package quarterlight.archive;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import quarterlight.archive.signature.SigningKey;
import quarterlight.task.Progress;

/**
 * Writes a bag into a zip as a stream: every file is hashed while it is written, the manifests stand at the end. Needs one buffer and
 * the lines of the manifest, however long the files are.
 * <p>Source: RFC 8493, sections 2.1 to 2.2 (files of a bag) and 4.2 (one folder in an archive file). Files above 4 GB use Zip64.
 */
public final class BagWriter implements AutoCloseable {
    static final String DECLARATION = "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n";
    static final String BAGIT = "bagit.txt";
    static final String INFO = "bag-info.txt";
    static final String MANIFEST = "manifest-sha256.txt";
    static final String TAG_MANIFEST = "tagmanifest-sha256.txt";
    /** The public key of who signed; listed in the manifest of the tag files. */
    static final String KEY = "signature/inspector-key.pem";
    /** The signature of the manifest of the tag files: 64 bytes. */
    static final String SIGNATURE = "signature/tagmanifest-sha256.txt.sig";
    /** Under this label {@link #INFO} names the key by its fingerprint. */
    static final String KEY_LABEL = "Quarterlight-Key";

    private static final int BUFFER = 1 << 16;

    private final WideZip zip;
    private final String base;
    private final LocalDateTime stamp;
    private final Set<String> written = new HashSet<>();
    private final StringBuilder manifest = new StringBuilder();
    private final StringBuilder tagManifest = new StringBuilder();
    private long payloadBytes;
    private long payloadFiles;

    /**
     * @param base the folder that the zip holds
     * @param stamp the time that every file of the zip bears
     */
    public BagWriter(OutputStream out, String base, LocalDateTime stamp) throws IOException {
        BagPath.problem(base).ifPresent(why -> {
            throw new IllegalArgumentException(base + " " + why);
        });
        this.zip = new WideZip(out);
        this.base = base;
        this.stamp = stamp;
        tag(BAGIT, DECLARATION);
    }

    /** Whether a path may stand in the payload: relative, without backslashes, and never leading out. */
    public static boolean accepts(String path) {
        return BagPath.problem(path).isEmpty();
    }

    /** A zip that works in large steps. */
    private static final class WideZip extends ZipOutputStream {
        WideZip(OutputStream out) {
            super(out);
            buf = new byte[BUFFER];
        }
    }

    /**
     * Writes a file of the payload.
     *
     * @param path within the payload: {@code originals/…}
     * @return its length and hash as written
     * @throws java.util.concurrent.CancellationException if the progress is cancelled
     */
    public Digested put(String path, Packing packing, InputStream in, Progress progress) throws IOException {
        String whole = BagPath.PAYLOAD + path;
        Digested digested = write(whole, packing, in, progress);
        manifest.append(line(digested, whole));
        payloadBytes += digested.bytes();
        payloadFiles++;
        return digested;
    }

    public Digested put(String path, String text) throws IOException {
        return put(
                path, Packing.SMALLER, new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), Progress.NONE);
    }

    /** Writes a file beside the payload, for who opens the bag. */
    public void beside(String path, String text) throws IOException {
        if (BagPath.isPayload(path)) {
            throw new IllegalArgumentException(path + " lies in the payload");
        }
        tag(path, text);
    }

    /**
     * Writes the tag files and ends the zip.
     *
     * @param info labels and values of {@code bag-info.txt}; the size of the payload and the fingerprint of the key are added
     * @param key signs the manifest of the tag files, which holds the hash of every other list; empty if nobody signs
     */
    public void finish(Map<String, String> info, Optional<SigningKey> key) throws IOException {
        Map<String, String> labels = new LinkedHashMap<>(info);
        if (key.isPresent()) {
            labels.put(KEY_LABEL, key.get().open().fingerprint());
            tag(KEY, key.get().open().pem());
        }
        StringBuilder text = new StringBuilder();
        labels.forEach((label, value) ->
                text.append(label).append(": ").append(oneLine(value)).append('\n'));
        text.append("Payload-Oxum: ")
                .append(payloadBytes)
                .append('.')
                .append(payloadFiles)
                .append('\n');
        tag(INFO, text.toString());
        tag(MANIFEST, manifest.toString());
        String listed = tagManifest.toString();
        write(TAG_MANIFEST, Packing.SMALLER, bytes(listed), Progress.NONE);
        if (key.isPresent()) {
            byte[] signature = key.get().sign(listed.getBytes(StandardCharsets.UTF_8));
            write(SIGNATURE, Packing.CARRIED, new ByteArrayInputStream(signature), Progress.NONE);
        }
        zip.finish();
    }

    private static String oneLine(String value) {
        return value.replaceAll("[\\p{Cntrl}\\s]+", " ").strip();
    }

    private void tag(String path, String text) throws IOException {
        tagManifest.append(line(write(path, Packing.SMALLER, bytes(text), Progress.NONE), path));
    }

    private static InputStream bytes(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }

    private static String line(Digested digested, String path) {
        return digested.sha256().hex() + "  " + BagPath.encoded(path) + "\n";
    }

    private Digested write(String path, Packing packing, InputStream in, Progress progress) throws IOException {
        if (!written.add(path)) {
            throw new IllegalArgumentException(path + " stands in the archive already");
        }
        BagPath.problem(path).ifPresent(why -> {
            throw new IllegalArgumentException(path + " " + why);
        });
        ZipEntry entry = new ZipEntry(base + "/" + path);
        entry.setTimeLocal(stamp);
        zip.setLevel(packing.level());
        zip.putNextEntry(entry);
        Digest digest = new Digest();
        byte[] buffer = new byte[BUFFER];
        for (int got = in.read(buffer); got >= 0; got = in.read(buffer)) {
            progress.checkCancelled();
            digest.add(buffer, 0, got);
            zip.write(buffer, 0, got);
        }
        zip.closeEntry();
        return digest.finish();
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
