package quarterlight.edit.intake;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import quarterlight.photo.Refusal;
import quarterlight.photo.intake.FileIntake;
import quarterlight.photo.intake.FolderScan.Found;
import quarterlight.photo.originals.Digests;
import quarterlight.photo.originals.OriginalNotKept;
import quarterlight.photo.originals.OriginalsUnwritable;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.photo.worker.WorkerLost;
import quarterlight.task.Progress;
import quarterlight.task.Threads;
import quarterlight.visit.photo.Sha256;

/** The threads that copy files and look at them during one intake. */
final class IntakeWorkers implements AutoCloseable {
    private static final System.Logger LOG = System.getLogger(IntakeWorkers.class.getName());
    /** Files in the works at once, so that two threads never wait for each other. */
    static final int AHEAD = 12;

    private static final int THREADS = 3;
    private static final int MAX_FILE_SECONDS = 60;

    private static final int PATIENCE_MS = 300;
    private static final int LOOKS_MS = 100;

    private final FileIntake taking;
    private final DecodingWorkers decoding;
    private final ExecutorService threads;
    /** Waits for the disk, so that the other threads need not. */
    private final ExecutorService disk;

    IntakeWorkers(FileIntake taking, DecodingWorkers decoding) {
        this.taking = taking;
        this.decoding = decoding;
        this.threads = Threads.pool("intake", THREADS);
        this.disk = Threads.inOrderDaemon("intake-disk");
    }

    /** What became of one file: exactly one of the two is there. */
    public record Outcome(Optional<FileIntake.Taken> taken, Optional<Refusal> refusal) {}

    Future<Outcome> take(Found found) {
        Future<FileIntake.Seen> seen = threads.submit(() -> taking.look(found));
        return disk.submit(() -> {
            try {
                return new Outcome(Optional.of(taking.settle(seen.get())), Optional.empty());
            } catch (ExecutionException e) {
                if (e.getCause() instanceof OriginalNotKept notKept) {
                    return new Outcome(Optional.empty(), Optional.of(new Refusal(notKept.file(), notKept.reason())));
                }
                if (e.getCause() instanceof WorkerLost lost) {
                    if (lost.isNotStarted()) {
                        throw notStarted(found.file(), lost);
                    }
                    return new Outcome(Optional.empty(), Optional.of(new Refusal(found.file(), lost.reason())));
                }
                throw e;
            }
        });
    }

    private static IntakeRefused notStarted(Path file, WorkerLost lost) {
        return new IntakeRefused(file, say("refused.intake.worker", lost.reason()));
    }

    /** The digest of a file, empty if it cannot be read. */
    Future<Optional<Sha256>> digest(Path file) {
        return digest(file, Digests::of);
    }

    /** The digest of a file's beginning, see {@link Digests#ofBeginning}; empty if it cannot be read. */
    Future<Optional<Sha256>> beginning(Path file) {
        return digest(file, Digests::ofBeginning);
    }

    @FunctionalInterface
    private interface Digesting {
        Sha256 of(Path file) throws IOException;
    }

    private Future<Optional<Sha256>> digest(Path file, Digesting digesting) {
        return threads.submit(() -> {
            try {
                return Optional.of(digesting.of(file));
            } catch (IOException e) {
                return Optional.empty();
            }
        });
    }

    /**
     * Waits for a result, but not once the progress is cancelled.
     *
     * @throws java.util.concurrent.CancellationException if it is
     */
    static <T> T result(Future<T> work, Progress progress)
            throws OriginalsUnwritable, IntakeRefused, InterruptedException {
        while (true) {
            try {
                return work.get(LOOKS_MS, TimeUnit.MILLISECONDS);
            } catch (TimeoutException e) {
                progress.checkCancelled();
            } catch (ExecutionException e) {
                throw failure(e.getCause() instanceof ExecutionException inner ? inner.getCause() : e.getCause());
            }
        }
    }

    private static IllegalStateException failure(Throwable cause) throws OriginalsUnwritable, IntakeRefused {
        if (cause instanceof OriginalsUnwritable full) {
            throw full;
        }
        if (cause instanceof IntakeRefused refused) {
            throw refused;
        }
        return new IllegalStateException("taking in a file failed", cause);
    }

    /** What came of a file, if it ended well; to be asked once the workers are closed. */
    static Stream<FileIntake.Taken> proved(Future<Outcome> work) {
        if (!work.isDone() || work.isCancelled()) {
            return Stream.empty();
        }
        try {
            return work.get().taken().stream();
        } catch (ExecutionException e) {
            LOG.log(System.Logger.Level.DEBUG, "a file that was not taken in", e);
            return Stream.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Stream.empty();
        }
    }

    /** Breaks off what is in the works and waits, so that nothing is written after the intake has ended. */
    @Override
    public void close() {
        threads.shutdownNow();
        disk.shutdownNow();
        try {
            if (!threads.awaitTermination(PATIENCE_MS, TimeUnit.MILLISECONDS)) {
                decoding.breakOff();
            }
            if (!threads.awaitTermination(MAX_FILE_SECONDS, TimeUnit.SECONDS)
                    || !disk.awaitTermination(MAX_FILE_SECONDS, TimeUnit.SECONDS)) {
                throw new IllegalStateException("a file is still being taken in");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
