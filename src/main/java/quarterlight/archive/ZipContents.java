package quarterlight.archive;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import quarterlight.file.PlainFile;

/**
 * The files of a zip that holds one folder, by their paths in it. Names that lead out of the folder, names that stand twice and zips
 * that unpack to far more than they are refused before anything is unpacked.
 */
final class ZipContents implements AutoCloseable {
    private static final int MAX_FILES = 200_000;
    /** Text of tables packs to some twentieth; above this share nothing of a visit is packed. */
    private static final long MAX_RATIO = 200;

    private static final long HARMLESS_BYTES = 64L << 20;

    private final Path file;
    private final ZipFile zip;
    private final Map<String, ZipEntry> entries;
    private final String base;

    private ZipContents(Path file, ZipFile zip, String base, Map<String, ZipEntry> entries) {
        this.file = file;
        this.zip = zip;
        this.base = base;
        this.entries = Collections.unmodifiableMap(entries);
    }

    static ZipContents open(Path file) throws BagRefused {
        ZipFile zip = opened(file);
        try {
            return read(file, zip);
        } catch (BagRefused | RuntimeException e) {
            closeQuietly(zip, e);
            throw e;
        }
    }

    private static ZipFile opened(Path file) throws BagRefused {
        if (Files.isDirectory(file)) {
            throw new BagRefused(file, say("archived.folder"));
        }
        try {
            PlainFile.requirePlain(file);
            return new ZipFile(file.toFile());
        } catch (PlainFile.Unsuitable e) {
            throw new BagRefused(file, e.getReason());
        } catch (NoSuchFileException e) {
            throw new BagRefused(file, say("cell.file.missing"));
        } catch (IOException | IllegalArgumentException e) {
            throw new BagRefused(
                    file, Files.exists(file) ? say("archived.no-zip", e.getMessage()) : say("cell.file.missing"));
        }
    }

    private static void closeQuietly(ZipFile zip, Exception reason) {
        try {
            zip.close();
        } catch (IOException e) {
            reason.addSuppressed(e);
        }
    }

    private static ZipContents read(Path file, ZipFile zip) throws BagRefused {
        if (zip.size() > MAX_FILES) {
            throw new BagRefused(file, say("archived.too-many", zip.size()));
        }
        Map<String, ZipEntry> all = new TreeMap<>();
        long bytes = 0;
        for (ZipEntry entry : Collections.list(zip.entries())) {
            String name = entry.getName();
            String path = entry.isDirectory() ? name.substring(0, name.length() - 1) : name;
            Optional<String> problem = BagPath.problem(path);
            if (problem.isPresent()) {
                throw new BagRefused(file, say("archived.name", shown(name), problem.get()));
            }
            if (entry.isDirectory()) {
                continue;
            }
            if (all.put(path, entry) != null) {
                throw new BagRefused(file, say("archived.name.twice", shown(name)));
            }
            bytes = Math.addExact(bytes, Math.max(0, entry.getSize()));
        }
        requireSane(file, bytes);
        return inOneFolder(file, zip, all);
    }

    private static void requireSane(Path file, long bytes) throws BagRefused {
        if (bytes > HARMLESS_BYTES && bytes / MAX_RATIO > file.toFile().length()) {
            throw new BagRefused(file, say("archived.unpacks", bytes));
        }
    }

    private static ZipContents inOneFolder(Path file, ZipFile zip, Map<String, ZipEntry> all) throws BagRefused {
        Optional<String> declaration = all.keySet().stream()
                .filter(path -> path.indexOf('/') > 0
                        && path.substring(path.indexOf('/') + 1).equals(BagWriter.BAGIT))
                .findFirst();
        if (declaration.isEmpty()) {
            throw new BagRefused(file, say("archived.no-bag"));
        }
        String base = declaration.get().substring(0, declaration.get().indexOf('/') + 1);
        Map<String, ZipEntry> inside = new LinkedHashMap<>();
        for (Map.Entry<String, ZipEntry> each : all.entrySet()) {
            if (!each.getKey().startsWith(base)) {
                throw new BagRefused(file, say("archived.beside", shown(each.getKey()), base));
            }
            inside.put(each.getKey().substring(base.length()), each.getValue());
        }
        return new ZipContents(file, zip, base, inside);
    }

    static String shown(String name) {
        return name.replaceAll("\\p{Cntrl}+", " ");
    }

    Path file() {
        return file;
    }

    /** Name of the folder, with its slash. */
    String base() {
        return base;
    }

    Set<String> paths() {
        return entries.keySet();
    }

    boolean holds(String path) {
        return entries.containsKey(path);
    }

    /** The length that the zip says the file has. */
    long bytesOf(String path) {
        return Math.max(0, entries.get(path).getSize());
    }

    /** All lengths that the zip says. */
    long bytes() {
        return entries.values().stream()
                .mapToLong(entry -> Math.max(0, entry.getSize()))
                .sum();
    }

    InputStream open(String path) throws IOException {
        return zip.getInputStream(entries.get(path));
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
