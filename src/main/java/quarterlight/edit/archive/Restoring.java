package quarterlight.edit.archive;

import static quarterlight.language.Sentences.say;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.archive.BagCheck;
import quarterlight.archive.BagFile;
import quarterlight.archive.BagRefused;
import quarterlight.archive.signature.SignatureCheck;
import quarterlight.car.ZoneCatalog;
import quarterlight.diagram.file.VisitDiagram;
import quarterlight.edit.EditRefused;
import quarterlight.edit.export.Targets;
import quarterlight.edit.list.VisitLists;
import quarterlight.file.StagingFolder;
import quarterlight.store.TakeoverReport;
import quarterlight.store.VisitOpening;
import quarterlight.store.VisitStore;
import quarterlight.store.folder.VisitFolder;
import quarterlight.store.problem.VisitProblem;
import quarterlight.task.Progress;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.Sha256;

/** Opens an archive again as a visit equal to the one it was made of. Every file is compared with the manifest while it is unpacked. */
public final class Restoring {
    private static final String PAYLOAD = "data/";
    private static final String DATABASE = PAYLOAD + Archiving.DATABASE;
    private static final List<String> FOLDERS =
            List.of(PAYLOAD + "originals/", PAYLOAD + "pages/", PAYLOAD + VisitDiagram.FOLDER + "/");
    private static final String LISTS = PAYLOAD + VisitLists.FOLDER + "/";

    private final VisitOpening opening;
    private final ZoneCatalog catalog;

    /** @param opening seals the visit as one that this computer wrote */
    public Restoring(VisitOpening opening, ZoneCatalog catalog) {
        this.opening = Objects.requireNonNull(opening, "opening");
        this.catalog = Objects.requireNonNull(catalog, "catalog");
    }

    /**
     * A visit that was restored.
     *
     * @param photos how many it has
     * @param changed originals that were changed before they were archived
     * @param missing originals that were gone when it was archived
     * @param leftOut what of the database was left out or set right while it was taken over, one sentence each
     * @param faults what does not hold of the database, its edit log and the tables of the archive, one sentence each
     * @param lists whether the inspector's lists came along
     * @param head number and hash of the last entry of the edit log
     * @param signature whether somebody signed the archive; a bad signature was refused
     */
    public record Restored(
            Path visit,
            int photos,
            List<String> changed,
            List<String> missing,
            List<String> leftOut,
            List<String> faults,
            boolean lists,
            Optional<String> head,
            SignatureCheck signature) {
        public Restored {
            changed = List.copyOf(changed);
            missing = List.copyOf(missing);
            leftOut = List.copyOf(leftOut);
            faults = List.copyOf(faults);
        }

        public boolean ok() {
            return changed.isEmpty() && missing.isEmpty() && leftOut.isEmpty() && faults.isEmpty();
        }
    }

    /**
     * Unpacks an archive into a new visit, whole or not at all.
     *
     * @throws EditRefused if the target exists, or the file is no whole and sound archive of a visit; the message names what is wrong
     * @throws java.util.concurrent.CancellationException if the progress is cancelled; nothing is left behind
     */
    public Restored restore(Path file, Path visit, Progress progress) throws EditRefused, IOException {
        try (BagFile bag = BagFile.open(file)) {
            if (!bag.holds(DATABASE)) {
                boolean buyers = bag.info(Archiving.CONTENTS).equals(Optional.of(Archiving.FOR_BUYER));
                throw refused(file, buyers ? say("archived.for-buyer") : say("archived.no-visit", DATABASE));
            }
            try (StagingFolder unfinished = Targets.beside(visit)) {
                requireRoom(unfinished.folder(), bag, visit);
                Restored restored = unpack(file, bag, unfinished, visit, progress);
                progress.checkCancelled();
                Targets.deliver(unfinished, unfinished.folder().resolve("visit"), visit);
                return restored;
            }
        } catch (BagRefused e) {
            throw new EditRefused(file.toString(), e.getMessage());
        }
    }

    private static EditRefused refused(Path file, String reason) {
        return new EditRefused(file.toString(), file + " " + reason);
    }

    private static void requireRoom(Path folder, BagFile bag, Path visit) throws EditRefused, IOException {
        long free = Files.getFileStore(folder).getUsableSpace();
        if (bag.bytes() > free) {
            throw refused(visit, say("archived.room", bag.bytes(), free));
        }
    }

    private Restored unpack(Path file, BagFile bag, StagingFolder unfinished, Path visit, Progress progress)
            throws EditRefused, BagRefused, IOException {
        Path making = unfinished.folder().resolve("visit");
        Path tables = Files.createDirectory(unfinished.folder().resolve("tables"));
        VisitFolder folder = new VisitFolder(making);
        Files.createDirectories(folder.originals());
        Files.createDirectories(folder.pages());
        BagCheck check = bag.check(path -> place(making, tables, path), progress);
        Optional<String> problem = check.firstProblem();
        if (problem.isPresent()) {
            throw refused(file, say("archived.damaged", problem.get()));
        }
        SignatureCheck signature = bag.signature();
        if (signature.state() == SignatureCheck.State.BAD) {
            throw refused(file, say("archived.signature", signature.why()));
        }
        try {
            TakeoverReport report = opening.receive(making);
            try (VisitStore store = opening.forReading(making)) {
                List<String> faults = ArchiveProof.faults(store, tables, bag.info(ArchiveProof.HEAD), check, catalog);
                return compared(visit, store, check, named(report, making, visit), faults, signature);
            }
        } catch (VisitProblem e) {
            throw refused(file, say("archived.unopened", e.getMessage().replace(making.toString(), visit.toString())));
        }
    }

    private static List<String> named(TakeoverReport report, Path making, Path visit) {
        List<String> lines = new ArrayList<>(report.lines());
        report.footing()
                .filter(footing -> !report.isEmpty())
                .map(footing -> footing.replace(making.toString(), visit.toString()))
                .ifPresent(lines::add);
        return lines;
    }

    /** Where a file of the payload belongs in the visit; tables lie aside, to be compared with the database. */
    private static Optional<OutputStream> place(Path making, Path tables, String path) throws IOException {
        if (path.startsWith(ArchiveProof.TABLES)) {
            return ArchiveProof.table(path, tables);
        }
        boolean wanted = path.equals(DATABASE)
                || path.startsWith(LISTS)
                || FOLDERS.stream().anyMatch(path::startsWith);
        if (!wanted) {
            return Optional.empty();
        }
        Path target;
        try {
            target = making.resolve(path.substring(PAYLOAD.length())).normalize();
        } catch (InvalidPathException e) {
            throw new IOException("this disk cannot bear the name " + path, e);
        }
        if (!target.startsWith(making)) {
            throw new IOException("the name " + path + " leads out of the visit");
        }
        Files.createDirectories(target.getParent());
        return Optional.of(new BufferedOutputStream(
                Files.newOutputStream(target, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)));
    }

    private static Restored compared(
            Path visit,
            VisitStore store,
            BagCheck check,
            List<String> leftOut,
            List<String> faults,
            SignatureCheck signature)
            throws VisitProblem {
        List<String> changed = new ArrayList<>();
        List<String> missing = new ArrayList<>();
        List<Photo> photos = store.read().photos();
        for (Photo photo : photos) {
            PhotoFile file = photo.file();
            Optional<Sha256> hash = ArchiveProof.hash(check, file);
            if (hash.isEmpty()) {
                missing.add(file.stored());
            } else if (!hash.get().equals(file.sha256())) {
                changed.add(file.stored());
            }
        }
        List<String> others = faults.stream()
                .filter(fault -> changed.stream().noneMatch(fault::contains))
                .toList();
        return new Restored(
                visit,
                photos.size(),
                changed,
                missing,
                leftOut,
                others,
                VisitLists.cameWith(store.folder().root()),
                store.logHead(),
                signature);
    }
}
