package quarterlight.edit.intake;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Future;
import quarterlight.edit.intake.IntakeWorkers.Outcome;
import quarterlight.file.ReservedSpace;
import quarterlight.photo.Refusal;
import quarterlight.photo.intake.FileIntake;
import quarterlight.photo.intake.FolderScan;
import quarterlight.photo.intake.FolderScan.Found;
import quarterlight.photo.originals.OriginalsFolder;
import quarterlight.photo.originals.OriginalsUnwritable;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.store.EditGroup;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.store.problem.VisitUnwritable;
import quarterlight.task.Progress;
import quarterlight.visit.VisitRecord;

/**
 * Takes photos and films into a visit, from folders and what lies below them.
 * <p>Files are copied and looked at by worker threads and recorded in batches, in the order of the folders; all batches are one
 * undo step. It is safe to repeat (a file whose content is there already is not added again) and to interrupt: what was recorded stays, and
 * the next intake goes on with the rest.
 */
public final class Intake {
    private static final int MAX_IN_BATCH = 50;
    private static final Duration MAX_BATCH_TIME = Duration.ofSeconds(2);

    private static final Noun PHOTOS = new Noun("undo.take-in.photos");
    private static final Noun WORDS = new Noun("undo.take-in.words");

    /** What is taken in, by the key of the label of the edit. */
    private record Noun(String key) {}

    private final VisitStore store;
    private final Clock clock;
    private final ThumbnailShelf shelf;
    private final Optional<DecodingWorkers> shared;

    public Intake(VisitStore store, Clock clock, ThumbnailShelf shelf) {
        this(store, clock, shelf, Optional.empty());
    }

    /** @param workers decode the files; they are the caller's to close */
    public Intake(VisitStore store, Clock clock, ThumbnailShelf shelf, DecodingWorkers workers) {
        this(store, clock, shelf, Optional.of(workers));
    }

    private Intake(VisitStore store, Clock clock, ThumbnailShelf shelf, Optional<DecodingWorkers> shared) {
        this.shared = shared;
        this.store = Objects.requireNonNull(store, "store");
        this.clock = Objects.requireNonNull(clock, "clock");
        this.shelf = Objects.requireNonNull(shelf, "shelf");
    }

    /**
     * Takes in what is new.
     *
     * @throws IntakeRefused if a folder is not there or belongs to the visit itself; nothing was changed
     * @throws OriginalsUnwritable if the disk of the visit takes no more; what was taken in before stays
     * @throws VisitProblem if the visit cannot be read or saved
     * @throws CancellationException if the progress is cancelled; what was taken in before stays
     */
    public IntakeResult run(List<Path> folders, Progress progress)
            throws IntakeRefused, OriginalsUnwritable, VisitProblem, InterruptedException {
        if (shared.isPresent()) {
            return run(folders, shared.get(), progress);
        }
        try (DecodingWorkers own = new DecodingWorkers()) {
            return run(folders, own, progress);
        }
    }

    private IntakeResult run(List<Path> folders, DecodingWorkers decoding, Progress progress)
            throws IntakeRefused, OriginalsUnwritable, VisitProblem, InterruptedException {
        Path visitFolder = store.folder().root();
        refuseUnusable(folders, new OriginalsFolder(visitFolder));
        decoding.start();
        progress.report(0, 0, say("refused.intake.scan"));
        return take(FolderScan.of(folders, Optional.of(visitFolder), progress), PHOTOS, decoding, progress);
    }

    /**
     * Takes in files of words that were named one by one, in the order given.
     *
     * @param words each with what it is about, if that is in the visit
     * @throws IntakeRefused if a file belongs to the visit itself; nothing was changed
     * @throws OriginalsUnwritable if the disk of the visit takes no more; what was taken in before stays
     */
    public IntakeResult takeWords(List<Found> words, DecodingWorkers decoding, Progress progress)
            throws IntakeRefused, OriginalsUnwritable, VisitProblem, InterruptedException {
        refuseUnusable(
                words.stream().map(Found::file).toList(),
                new OriginalsFolder(store.folder().root()));
        decoding.start();
        return take(new FolderScan(words, List.of(), List.of()), WORDS, decoding, progress);
    }

    private IntakeResult take(FolderScan scan, Noun noun, DecodingWorkers decoding, Progress progress)
            throws IntakeRefused, OriginalsUnwritable, VisitProblem, InterruptedException {
        Path visitFolder = store.folder().root();
        VisitRecord before = store.read();
        OriginalsFolder originals = new OriginalsFolder(visitFolder);
        FileIntake taking = new FileIntake(visitFolder, decoding, clock);
        originals.discardUnfinished();
        try (IntakeWorkers workers = new IntakeWorkers(taking, decoding);
                ReservedSpace room = originals.keepRoom()) {
            NewFiles newcomers = NewFiles.among(scan.media(), before.photos(), workers, progress);
            Batches batches = new Batches(newcomers.files().size(), noun, originals, room);
            List<Refusal> refused = new ArrayList<>(scan.refused());
            refused.addAll(newcomers.refused());
            takeIn(newcomers.files(), workers, batches, refused, progress);
            return new IntakeResult(
                    batches.added, newcomers.alreadyPresent() + batches.foundPresent, refused, scan.notPhotos());
        } finally {
            originals.discardUnfinished();
        }
    }

    private static void refuseUnusable(List<Path> folders, OriginalsFolder originals) throws IntakeRefused {
        for (Path folder : folders) {
            if (!Files.exists(folder)) {
                throw new IntakeRefused(folder, say("refused.intake.no-folder"));
            }
            if (originals.isOfThisVisit(folder)) {
                throw new IntakeRefused(folder, say("refused.intake.own"));
            }
        }
    }

    /** Keeps a few files ahead in the works, so that memory does not grow with their number. */
    private static void takeIn(
            List<Found> files, IntakeWorkers workers, Batches batches, List<Refusal> refused, Progress progress)
            throws OriginalsUnwritable, IntakeRefused, VisitUnwritable, InterruptedException {
        Deque<Future<Outcome>> ahead = new ArrayDeque<>();
        int next = 0;
        try {
            for (int done = 0; done < files.size(); done++) {
                progress.checkCancelled();
                progress.report(
                        done, files.size(), files.get(done).file().getFileName().toString());
                while (next < files.size() && ahead.size() < IntakeWorkers.AHEAD) {
                    ahead.add(workers.take(files.get(next)));
                    next++;
                }
                Outcome outcome = IntakeWorkers.result(ahead.remove(), progress);
                outcome.refusal().ifPresent(refused::add);
                if (outcome.taken().isPresent()) {
                    batches.add(outcome.taken().get());
                }
            }
        } catch (OriginalsUnwritable | VisitUnwritable e) {
            workers.close();
            throw batches.lastRecord(ahead, e);
        } finally {
            batches.record();
        }
        progress.report(files.size(), files.size(), "done");
    }

    /** What was taken in and is not recorded yet. */
    private final class Batches {
        private final EditGroup group = new EditGroup();
        private final int expected;
        private final Noun noun;
        private final OriginalsFolder originals;
        private final ReservedSpace room;
        private final List<FileIntake.Taken> waiting = new ArrayList<>();
        private Instant since = clock.instant();
        private int added;
        private int foundPresent;

        Batches(int expected, Noun noun, OriginalsFolder originals, ReservedSpace room) {
            this.expected = expected;
            this.noun = noun;
            this.originals = originals;
            this.room = room;
        }

        /** Records what was proved in the room that was kept for it, once nothing else is copied into that. */
        OriginalsUnwritable lastRecord(Deque<Future<Outcome>> ahead, Exception full)
                throws OriginalsUnwritable, VisitUnwritable {
            originals.discardUnfinished();
            room.close();
            ahead.stream().flatMap(IntakeWorkers::proved).forEach(waiting::add);
            record();
            if (full instanceof OriginalsUnwritable unwritable) {
                return unwritable;
            }
            IOException why = new IOException("the database could not grow");
            why.addSuppressed(full);
            return new OriginalsUnwritable(store.folder().originals(), why);
        }

        void add(FileIntake.Taken taken) throws OriginalsUnwritable, VisitUnwritable {
            waiting.add(taken);
            boolean old = Duration.between(since, clock.instant()).compareTo(MAX_BATCH_TIME) >= 0;
            if (waiting.size() >= MAX_IN_BATCH || old) {
                record();
            }
        }

        void record() throws OriginalsUnwritable, VisitUnwritable {
            since = clock.instant();
            if (waiting.isEmpty()) {
                return;
            }
            originals.forceNames();
            String label = say(noun.key(), added + waiting.size(), expected);
            int recorded = store.edit(label, group, tx -> {
                int count = 0;
                for (FileIntake.Taken taken : waiting) {
                    if (tx.findPhoto(taken.file().sha256()).isEmpty()) {
                        tx.addPhoto(taken.file());
                        count++;
                    }
                }
                return count;
            });
            added += recorded;
            foundPresent += waiting.size() - recorded;
            for (FileIntake.Taken taken : waiting) {
                taken.thumbnail().ifPresent(thumbnail -> shelf.put(taken.file().sha256(), thumbnail.jpeg()));
            }
            waiting.clear();
        }
    }
}
