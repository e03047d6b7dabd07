package quarterlight.edit;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quarterlight.archive.BagCheck;
import quarterlight.archive.BagFile;
import quarterlight.archive.BagRefused;
import quarterlight.diagram.VisitDiagram;
import quarterlight.file.Unfinished;
import quarterlight.photo.originals.Original;
import quarterlight.store.StoreAudit;
import quarterlight.store.VisitFolder;
import quarterlight.store.VisitProblem;
import quarterlight.store.VisitStore;
import quarterlight.task.Progress;
import quarterlight.visit.Photo;
import quarterlight.visit.PhotoFile;
import quarterlight.visit.Sha256;

/** Opens an archive again as a visit equal to the one it was made of. Every file is compared with the manifest while it is unpacked. */
public final class Restoring {
    private static final String PAYLOAD = "data/";
    private static final String DATABASE = PAYLOAD + Archiving.DATABASE;
    private static final List<String> FOLDERS =
            List.of(PAYLOAD + "originals/", PAYLOAD + "pages/", PAYLOAD + VisitDiagram.FOLDER + "/");

    private Restoring() {}

    /**
     * A visit that was restored.
     *
     * @param photos how many it has
     * @param changed originals that were changed before they were archived
     * @param missing originals that were gone when it was archived
     */
    public record Restored(Path visit, int photos, List<String> changed, List<String> missing) {
        public Restored {
            changed = List.copyOf(changed);
            missing = List.copyOf(missing);
        }

        public boolean ok() {
            return changed.isEmpty() && missing.isEmpty();
        }
    }

    /**
     * Unpacks an archive into a new visit, whole or not at all.
     *
     * @throws EditRefused if the target exists, or the file is no whole and sound archive of a visit; the message names what is wrong
     * @throws java.util.concurrent.CancellationException if the progress is cancelled; nothing is left behind
     */
    public static Restored restore(Path file, Path visit, Progress progress) throws EditRefused, IOException {
        try (BagFile bag = BagFile.open(file)) {
            if (!bag.holds(DATABASE)) {
                boolean buyers = bag.info(Archiving.CONTENTS).equals(Optional.of(Archiving.FOR_BUYER));
                throw refused(
                        file,
                        buyers
                                ? "was made for the buyer, without originals and database; restore from a whole archive"
                                : "holds no " + DATABASE
                                        + " and is no archive of a visit; name a file that archive made");
            }
            try (Unfinished unfinished = Targets.beside(visit)) {
                requireRoom(unfinished.folder(), bag, visit);
                Restored restored = unpack(file, bag, unfinished.folder().resolve("visit"), visit, progress);
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
            throw refused(
                    visit,
                    "cannot be restored: it takes " + bag.bytes() + " bytes and the disk has " + free
                            + " left; make room or name another disk");
        }
    }

    private static Restored unpack(Path file, BagFile bag, Path making, Path visit, Progress progress)
            throws EditRefused, BagRefused, IOException {
        VisitFolder folder = new VisitFolder(making);
        Files.createDirectories(folder.originals());
        Files.createDirectories(folder.pages());
        BagCheck check = bag.check(path -> place(making, path), progress);
        Optional<String> problem = check.firstProblem();
        if (problem.isPresent()) {
            throw refused(
                    file, "is damaged: " + problem.get() + "; nothing was restored, take another copy of the archive");
        }
        try (VisitStore store = VisitStore.openForReading(making)) {
            List<String> faults = StoreAudit.of(store);
            if (!faults.isEmpty()) {
                throw refused(file, "holds a visit that does not hold together: " + faults.get(0));
            }
            return compared(visit, store.read().photos(), check);
        } catch (VisitProblem e) {
            throw refused(
                    file,
                    "holds a visit that cannot be opened: "
                            + e.getMessage().replace(making.toString(), visit.toString()));
        }
    }

    /** Where a file of the payload belongs in the visit; tables are only checked, since the database holds them. */
    private static Optional<OutputStream> place(Path making, String path) throws IOException {
        boolean wanted = path.equals(DATABASE) || FOLDERS.stream().anyMatch(path::startsWith);
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

    private static Restored compared(Path visit, List<Photo> photos, BagCheck check) {
        List<String> changed = new ArrayList<>();
        List<String> missing = new ArrayList<>();
        for (Photo photo : photos) {
            PhotoFile file = photo.file();
            Optional<Sha256> carried = Original.names(file).stream()
                    .flatMap(name -> Optional.ofNullable(check.hashes().get(PAYLOAD + name)).stream())
                    .findFirst();
            if (carried.isEmpty()) {
                missing.add(file.stored());
            } else if (!carried.get().equals(file.sha256())) {
                changed.add(file.stored());
            }
        }
        return new Restored(visit, photos.size(), changed, missing);
    }
}
