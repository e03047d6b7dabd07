package quarterlight.edit.archive;

import static quarterlight.language.Sentences.say;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import quarterlight.archive.ArchiveAudit;
import quarterlight.archive.BagCheck;
import quarterlight.archive.BagFile;
import quarterlight.archive.BagRefused;
import quarterlight.archive.TableDifference;
import quarterlight.archive.signature.SignatureCheck;
import quarterlight.car.ZoneCatalog;
import quarterlight.edit.export.Disclosure;
import quarterlight.edit.export.VisitTables;
import quarterlight.file.StagingFolder;
import quarterlight.photo.originals.Original;
import quarterlight.store.StoreAudit;
import quarterlight.store.VisitOpening;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.task.Progress;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.Sha256;

/**
 * What an archive says of itself: its files against the manifests, its database against itself and its edit log, its tables against the database, its
 * originals against the photos. Auditing and restoring ask the same.
 *
 * @param bag the files and the manifests
 * @param database what does not hold of the database and the tables, one sentence each
 * @param head number and hash of the last entry of the edit log; empty if there is no database, or no chain
 * @param signature whether somebody signed it
 */
public record ArchiveProof(ArchiveAudit bag, List<String> database, Optional<String> head, SignatureCheck signature) {
    /** Under this label {@code bag-info.txt} bears the end of the edit log. */
    static final String HEAD = "Quarterlight-Log-Head";

    static final String TABLES = "data/tables/";
    private static final String DATABASE = "data/" + Archiving.DATABASE;
    private static final String PHOTOS = "photos.json";
    private static final long MAX_TABLE_BYTES = 64L << 20;

    public ArchiveProof {
        database = List.copyOf(database);
    }

    public boolean ok() {
        return bag.ok() && database.isEmpty() && signature.state() != SignatureCheck.State.BAD;
    }

    /** What does not hold of files and database, each in a few words. */
    public List<String> faults() {
        List<String> found = new ArrayList<>();
        bag.changed().forEach(path -> found.add(say("archived.changed", path)));
        bag.missing().forEach(path -> found.add(say("archived.missing", path)));
        bag.unlisted().forEach(path -> found.add(say("archived.added", path)));
        found.addAll(bag.faults());
        found.addAll(database);
        return found;
    }

    /**
     * Reads an archive; the database is unpacked beside other files of the moment and taken over row by row.
     *
     * @throws BagRefused if it is no archive
     * @throws java.util.concurrent.CancellationException if the progress is cancelled
     */
    public static ArchiveProof of(Path file, VisitOpening opening, ZoneCatalog catalog, Progress progress)
            throws BagRefused, IOException {
        try (BagFile bag = BagFile.open(file);
                StagingFolder unfinished = StagingFolder.in(Path.of(System.getProperty("java.io.tmpdir")))) {
            Path visit = Files.createDirectory(unfinished.folder().resolve("visit"));
            Path tables = Files.createDirectory(unfinished.folder().resolve("tables"));
            BagCheck check = bag.check(path -> kept(path, visit, tables), progress);
            ArchiveAudit audit = ArchiveAudit.of(check, photos(tables));
            if (!bag.holds(DATABASE)) {
                return new ArchiveProof(audit, List.of(), Optional.empty(), bag.signature());
            }
            try (VisitStore store = opening.trustingNothing().forReading(visit)) {
                return new ArchiveProof(
                        audit, faults(store, tables, bag.info(HEAD), check, catalog), store.logHead(), bag.signature());
            } catch (VisitProblem e) {
                String said = e.getMessage().replace(visit.toString(), "in " + file);
                return new ArchiveProof(
                        audit, List.of(say("archived.database", said)), Optional.empty(), bag.signature());
            }
        }
    }

    private static Optional<OutputStream> kept(String path, Path visit, Path tables) throws IOException {
        return path.equals(DATABASE) ? Optional.of(fresh(visit.resolve(Archiving.DATABASE))) : table(path, tables);
    }

    /** Where a table goes while the archive is read; it lies in no folder below. */
    static Optional<OutputStream> table(String path, Path tables) throws IOException {
        String name = path.startsWith(TABLES) ? path.substring(TABLES.length()) : "";
        return name.matches("[a-z0-9-]{1,60}\\.(csv|json)")
                ? Optional.of(fresh(tables.resolve(name)))
                : Optional.empty();
    }

    private static OutputStream fresh(Path file) throws IOException {
        return new BufferedOutputStream(
                Files.newOutputStream(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE));
    }

    private static byte[] photos(Path tables) throws IOException {
        Path photos = tables.resolve(PHOTOS);
        return Files.exists(photos) && Files.size(photos) <= MAX_TABLE_BYTES ? Files.readAllBytes(photos) : new byte[0];
    }

    /** What does not hold of a database that was taken over, and of the tables that lay beside it in the archive. */
    static List<String> faults(
            VisitStore store, Path tables, Optional<String> head, BagCheck check, ZoneCatalog catalog)
            throws VisitProblem, IOException {
        List<String> found = new ArrayList<>(StoreAudit.of(store));
        if (head.isPresent()) {
            StoreAudit.ofHead(store, head.get()).ifPresent(found::add);
        }
        originals(store.read().photos(), check, found);
        tables(VisitTables.of(store, catalog, Disclosure.WHOLE).csvAndJson(), tables, found);
        return found;
    }

    private static void originals(List<Photo> photos, BagCheck check, List<String> found) {
        for (Photo photo : photos) {
            Optional<Sha256> hash = hash(check, photo.file());
            if (hash.isPresent() && !hash.get().equals(photo.file().sha256())) {
                found.add(say("archived.original", photo.file().stored()));
            }
        }
    }

    /** Of an original as it lies in the archive, under its present name or the one that an earlier schema gave it. */
    static Optional<Sha256> hash(BagCheck check, PhotoFile photo) {
        return Original.names(photo).stream()
                .flatMap(name -> Optional.ofNullable(check.hashes().get("data/" + name)).stream())
                .findFirst();
    }

    private static void tables(Map<String, String> wanted, Path folder, List<String> found) throws IOException {
        Set<String> there = new TreeSet<>();
        try (Stream<Path> files = Files.list(folder)) {
            files.forEach(file -> there.add(file.getFileName().toString()));
        }
        for (Map.Entry<String, String> table : wanted.entrySet()) {
            if (there.remove(table.getKey())) {
                difference(folder.resolve(table.getKey()), table.getValue())
                        .ifPresent(why -> found.add(say("archived.table.differs", table.getKey(), why)));
            } else if (table.getValue().lines().count() > 1 && table.getKey().endsWith(".csv")) {
                found.add(say("archived.table.missing", table.getKey()));
            }
        }
        there.forEach(name -> found.add(say("archived.table.stray", name)));
    }

    private static Optional<String> difference(Path file, String wanted) throws IOException {
        if (Files.size(file) > MAX_TABLE_BYTES + wanted.length()) {
            return Optional.of(say("archived.table.longer"));
        }
        byte[] archived = Files.readAllBytes(file);
        return Arrays.equals(archived, wanted.getBytes(StandardCharsets.UTF_8))
                ? Optional.empty()
                : TableDifference.of(
                        file.getFileName().toString(), new String(archived, StandardCharsets.UTF_8), wanted);
    }
}
