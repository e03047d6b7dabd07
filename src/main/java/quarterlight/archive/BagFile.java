package quarterlight.archive;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import quarterlight.archive.signature.SignatureCheck;
import quarterlight.task.Progress;
import quarterlight.visit.photo.Sha256;

/**
 * A bag in a zip file, open for checking and unpacking.
 * <p>Source: RFC 8493, section 3 (complete and valid bags), for SHA-256 manifests. Manifests by other algorithms are checked as tag
 * files only; a bag that wants files fetched from a network is refused.
 */
public final class BagFile implements AutoCloseable {
    private static final int BUFFER = 1 << 16;
    private static final int MAX_TAG_BYTES = 64 << 20;
    private static final String FETCH = "fetch.txt";

    private final ZipContents zip;
    private final Map<String, String> info;

    private BagFile(ZipContents zip) throws BagRefused {
        this.zip = zip;
        requireVersion();
        if (!zip.holds(BagWriter.MANIFEST)) {
            throw refused(say("archived.no-manifest", BagWriter.MANIFEST));
        }
        if (zip.holds(FETCH)) {
            throw refused(say("archived.fetch", FETCH));
        }
        this.info = zip.holds(BagWriter.INFO) ? labels(text(BagWriter.INFO)) : Map.of();
    }

    /** @throws BagRefused if the file is no zip, no bag, or not to be trusted with a folder */
    public static BagFile open(Path file) throws BagRefused, IOException {
        ZipContents zip = ZipContents.open(file);
        try {
            return new BagFile(zip);
        } catch (BagRefused | RuntimeException e) {
            zip.close();
            throw e;
        }
    }

    private void requireVersion() throws BagRefused {
        Map<String, String> declared = labels(text(BagWriter.BAGIT));
        if (!"1.0".equals(declared.get("BagIt-Version"))
                || !"UTF-8".equalsIgnoreCase(declared.get("Tag-File-Character-Encoding"))) {
            throw refused(say("archived.version"));
        }
    }

    private BagRefused refused(String reason) {
        return new BagRefused(zip.file(), reason);
    }

    /** Labels and values of a tag file; a line that begins with a blank goes on with the value above it. */
    private static Map<String, String> labels(String text) {
        Map<String, StringBuilder> found = new LinkedHashMap<>();
        String label = "";
        for (String line : text.split("\r\n|\r|\n")) {
            int colon = line.indexOf(':');
            if (!label.isEmpty() && (line.startsWith(" ") || line.startsWith("\t"))) {
                found.get(label).append(' ').append(line.strip());
            } else if (colon > 0) {
                label = line.substring(0, colon).strip();
                found.put(label, new StringBuilder(line.substring(colon + 1).strip()));
            }
        }
        Map<String, String> values = new LinkedHashMap<>();
        found.forEach((key, value) -> values.put(key, value.toString()));
        return values;
    }

    /** What {@code bag-info.txt} says under a label. */
    public Optional<String> info(String label) {
        return Optional.ofNullable(info.get(label));
    }

    public boolean holds(String path) {
        return zip.holds(path);
    }

    /** How many bytes the files have when unpacked, as the zip says. */
    public long bytes() {
        return zip.bytes();
    }

    private String text(String path) throws BagRefused {
        return new String(bytes(path), StandardCharsets.UTF_8).replaceFirst("^\uFEFF", "");
    }

    private byte[] bytes(String path) throws BagRefused {
        try (InputStream in = zip.open(path)) {
            return in.readNBytes(MAX_TAG_BYTES);
        } catch (IOException e) {
            throw refused(say("archived.damaged-at", path, e.getMessage()));
        }
    }

    private boolean isSigned() {
        return zip.holds(BagWriter.SIGNATURE)
                || zip.holds(BagWriter.KEY)
                || info(BagWriter.KEY_LABEL).isPresent();
    }

    /** Whether somebody signed the lists of files; whether the files agree with the lists, {@link #check} tells. */
    public SignatureCheck signature() throws BagRefused {
        if (!isSigned()) {
            return SignatureCheck.NONE;
        }
        for (String part : List.of(BagWriter.SIGNATURE, BagWriter.KEY, BagWriter.TAG_MANIFEST)) {
            if (!zip.holds(part)) {
                return SignatureCheck.bad(part + " is missing");
            }
        }
        return SignatureCheck.of(
                text(BagWriter.KEY),
                info(BagWriter.KEY_LABEL),
                bytes(BagWriter.TAG_MANIFEST),
                bytes(BagWriter.SIGNATURE),
                info("Quarterlight-Signed-By"),
                info("Quarterlight-Signed-At"));
    }

    /** Whether a file beside the payload lies outside of what was signed. */
    private boolean isUnsigned(String path, Manifest tags) {
        return isSigned()
                && !tags.hashes().containsKey(path)
                && !path.equals(BagWriter.TAG_MANIFEST)
                && !path.equals(BagWriter.SIGNATURE);
    }

    /** Where the files of the payload go while they are checked. */
    public interface Unpacking {
        /** Keeps nothing. */
        Unpacking NONE = path -> Optional.empty();

        /** Where the file goes, closed by the caller; empty if it is only checked. */
        Optional<OutputStream> open(String path) throws IOException;
    }

    /**
     * Reads every file once and compares it with the manifests.
     *
     * @throws IOException if what is unpacked cannot be written
     * @throws java.util.concurrent.CancellationException if the progress is cancelled
     */
    public BagCheck check(Unpacking unpacking, Progress progress) throws BagRefused, IOException {
        Manifest payload = Manifest.parse(BagWriter.MANIFEST, text(BagWriter.MANIFEST));
        Manifest tags = zip.holds(BagWriter.TAG_MANIFEST)
                ? Manifest.parse(BagWriter.TAG_MANIFEST, text(BagWriter.TAG_MANIFEST))
                : new Manifest(Map.of(), List.of());
        Checking checking = new Checking(payload, tags);
        int done = 0;
        for (String path : zip.paths()) {
            progress.report(done++, zip.paths().size(), path);
            checking.read(path, unpacking, progress);
        }
        return checking.result();
    }

    private final class Checking {
        private final Manifest payload;
        private final Manifest tags;
        private final Map<String, Sha256> hashes = new HashMap<>();
        private final List<String> changed = new ArrayList<>();
        private final List<String> unlisted = new ArrayList<>();
        private final List<String> faults = new ArrayList<>();
        private long payloadBytes;

        Checking(Manifest payload, Manifest tags) {
            this.payload = payload;
            this.tags = tags;
            faults.addAll(payload.faults());
            faults.addAll(tags.faults());
        }

        void read(String path, Unpacking unpacking, Progress progress) throws IOException {
            boolean isPayload = BagPath.isPayload(path);
            Map<String, Sha256> listed = isPayload ? payload.hashes() : tags.hashes();
            Optional<OutputStream> out = isPayload ? unpacking.open(path) : Optional.empty();
            Optional<Digested> found;
            try {
                found = digest(path, out, progress);
            } finally {
                if (out.isPresent()) {
                    out.get().close();
                }
            }
            if (isPayload && !listed.containsKey(path) || !isPayload && isUnsigned(path, tags)) {
                unlisted.add(path);
            } else if (listed.containsKey(path) && !found.map(Digested::sha256).equals(Optional.of(listed.get(path)))) {
                changed.add(path);
            }
            if (isPayload && found.isPresent()) {
                hashes.put(path, found.get().sha256());
                payloadBytes += found.get().bytes();
            }
        }

        /** Empty if the file cannot be read to its end, or is longer than the zip says. */
        private Optional<Digested> digest(String path, Optional<OutputStream> out, Progress progress)
                throws IOException {
            Digest digest = new Digest();
            byte[] buffer = new byte[BUFFER];
            long left = zip.bytesOf(path);
            try (Source source = new Source(path)) {
                for (int got = source.read(buffer); got >= 0; got = source.read(buffer)) {
                    progress.checkCancelled();
                    left -= got;
                    if (left < 0) {
                        return Optional.empty();
                    }
                    digest.add(buffer, 0, got);
                    if (out.isPresent()) {
                        out.get().write(buffer, 0, got);
                    }
                }
                return source.failed ? Optional.empty() : Optional.of(digest.finish());
            }
        }

        BagCheck result() {
            List<String> missing = new ArrayList<>();
            new TreeMap<>(payload.hashes())
                    .keySet().stream()
                            .filter(path -> !zip.holds(path) || !BagPath.isPayload(path))
                            .forEach(missing::add);
            new TreeMap<>(tags.hashes())
                    .keySet().stream().filter(path -> !zip.holds(path)).forEach(missing::add);
            String oxum = payloadBytes + "." + payload.hashes().size();
            info("Payload-Oxum").filter(said -> !said.equals(oxum)).ifPresent(said -> {
                if (changed.isEmpty() && missing.isEmpty() && unlisted.isEmpty()) {
                    faults.add(say("archived.payload", BagWriter.INFO, said, oxum));
                }
            });
            return new BagCheck(changed, missing, unlisted, faults, hashes);
        }
    }

    /** A file of the zip while it is read; damage ends it instead of throwing, so that writing may fail apart from it. */
    private final class Source implements AutoCloseable {
        private Optional<InputStream> in = Optional.empty();
        private boolean failed;

        Source(String path) {
            try {
                in = Optional.of(zip.open(path));
            } catch (IOException e) {
                failed = true;
            }
        }

        int read(byte[] buffer) {
            try {
                return in.isPresent() ? in.get().read(buffer) : -1;
            } catch (IOException e) {
                failed = true;
                return -1;
            }
        }

        @Override
        public void close() throws IOException {
            if (in.isPresent()) {
                in.get().close();
            }
        }
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
