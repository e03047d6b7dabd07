package quarterlight.edit.library;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.archive.BagRefused;
import quarterlight.car.ZoneCatalog;
import quarterlight.edit.EditRefused;
import quarterlight.edit.archive.ArchiveProof;
import quarterlight.edit.archive.Archived;
import quarterlight.edit.archive.Archiving;
import quarterlight.store.VisitOpening;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.task.Progress;

/**
 * A second copy of many visits: an archive of each in one folder, each read again after it was written. The name of an archive tells the state of its visit, so
 * that one which did not change is not written again, only proved. Visits are only read.
 */
public final class VisitBackup {
    private static final int DIGITS = 12;

    /**
     * What became of one visit.
     *
     * @param visit its folder
     * @param archive the file; nothing if none could be made
     * @param made whether it was made now; else it was there
     * @param fault why the copy does not hold, a sentence; nothing if it does
     */
    public record Copied(Path visit, Optional<Path> archive, boolean made, Optional<String> fault) {
        public Copied {
            Objects.requireNonNull(visit, "visit");
            Objects.requireNonNull(archive, "archive");
            Objects.requireNonNull(fault, "fault");
        }
    }

    private final Archiving archiving;
    private final VisitOpening opening;
    private final ZoneCatalog catalog;

    public VisitBackup(Archiving archiving, VisitOpening opening, ZoneCatalog catalog) {
        this.archiving = Objects.requireNonNull(archiving, "archiving");
        this.opening = Objects.requireNonNull(opening, "opening");
        this.catalog = Objects.requireNonNull(catalog, "catalog");
    }

    /**
     * Copies every visit at or below the folders.
     *
     * @param target the folder for the archives; made if it is not there
     * @throws EditRefused if a folder is not there
     */
    public List<Copied> run(List<Path> folders, Path target, Progress progress) throws EditRefused, IOException {
        List<Path> visits = new ArrayList<>();
        for (Path folder : folders) {
            if (!Files.isDirectory(folder)) {
                throw new EditRefused(folder.toString(), say("refused.library.no-folder", folder));
            }
            visits.addAll(VisitFolders.below(folder).keySet());
        }
        Files.createDirectories(target);
        List<Copied> copied = new ArrayList<>();
        for (Path visit : visits.stream().distinct().toList()) {
            progress.checkCancelled();
            progress.report(copied.size(), visits.size(), say("progress.archiving", visit.getFileName()));
            copied.add(copy(visit, target, progress));
        }
        return copied;
    }

    private Copied copy(Path visit, Path target, Progress progress) throws IOException {
        try (VisitStore store = opening.forReading(visit)) {
            Path file = target.resolve(name(visit, store));
            boolean there = Files.exists(file);
            Optional<String> fault = Optional.empty();
            if (!there) {
                Archived archived = archiving.make(store, file, false, progress);
                fault = archived.ok()
                        ? Optional.empty()
                        : Optional.of(say(
                                "refused.backup.originals",
                                archived.changed().size(),
                                archived.missing().size(),
                                visit));
            }
            return new Copied(visit, Optional.of(file), !there, fault.or(() -> proved(file, progress)));
        } catch (VisitProblem | EditRefused e) {
            return new Copied(visit, Optional.empty(), false, Optional.of(e.getMessage()));
        }
    }

    /** Reads the archive again; empty if all of it holds. */
    private Optional<String> proved(Path file, Progress progress) {
        try {
            return ArchiveProof.of(file, opening, catalog, progress).ok()
                    ? Optional.empty()
                    : Optional.of(say("refused.backup.proof", file));
        } catch (BagRefused e) {
            return Optional.of(e.getMessage());
        } catch (IOException e) {
            return Optional.of(say("refused.backup.again", file, e.getMessage()));
        }
    }

    /** The name of the visit, and digits that tell where it lies and the end of its edit log. */
    private static String name(Path visit, VisitStore store) throws VisitProblem {
        String state = visit + "\n" + store.logHead().orElse("");
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(state.getBytes(StandardCharsets.UTF_8));
            return visit.getFileName() + "-" + HexFormat.of().formatHex(digest).substring(0, DIGITS) + ".zip";
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java machine has SHA-256", e);
        }
    }
}
