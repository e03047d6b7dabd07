package quarterlight.photo.worker;

import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import quarterlight.photo.worker.WorkerLost.Way;

/** The program's side of one worker. One request at a time; {@link #stop} may come from any thread. */
public final class WorkerProcess {
    private static final System.Logger LOG = System.getLogger(WorkerProcess.class.getName());
    private static final int MAX_ANSWER_BYTES = 32 << 20;
    private static final Duration LAST_WORDS = Duration.ofSeconds(5);

    private static final Duration GONE = Duration.ofMillis(500);

    private final WorkerLimits limits;
    private volatile ScheduledExecutorService watch;
    private final Path pixels;
    private final Process process;
    private final DataOutputStream requests;
    private final DataInputStream answers;
    private volatile boolean tookTooLong;
    private volatile boolean stopped;

    private WorkerProcess(WorkerLimits limits, ScheduledExecutorService watch, Path pixels, Process process) {
        this.limits = limits;
        this.watch = watch;
        this.pixels = pixels;
        this.process = process;
        this.requests = new DataOutputStream(new BufferedOutputStream(process.getOutputStream()));
        this.answers = new DataInputStream(process.getInputStream());
    }

    /**
     * Starts a worker.
     *
     * @param watch ends what takes too long
     * @param main serves requests by {@link RequestLoop}
     */
    public static WorkerProcess start(WorkerLimits limits, ScheduledExecutorService watch, Class<?> main)
            throws IOException {
        Path pixels = Files.createTempFile("quarterlight-pixels", ".tmp");
        try {
            Process process = new ProcessBuilder(WorkerCommand.of(limits, pixels, main))
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return new WorkerProcess(limits, watch, pixels, process);
        } catch (IOException | RuntimeException e) {
            Files.deleteIfExists(pixels);
            throw e;
        }
    }

    /** @param other ends what takes too long from now on */
    void watchedBy(ScheduledExecutorService other) {
        watch = other;
    }

    boolean isAlive() {
        return process.isAlive();
    }

    /** The worker's own file; in one that decodes, the pixels of the answer that came last lie there. */
    public Path pixels() {
        return pixels;
    }

    /**
     * Asks, and waits for the answer.
     *
     * @param file what the request is about
     * @throws WorkerLost if the worker ended or was ended over it; it is of no use any more
     */
    public byte[] ask(byte[] request, Path file) throws WorkerLost {
        ScheduledFuture<?> alarm = alarm(System.nanoTime(), busy());
        try {
            requests.writeInt(request.length);
            requests.write(request);
            requests.flush();
            int length = answers.readInt();
            if (length < 1 || length > MAX_ANSWER_BYTES) {
                throw new EOFException("an answer of " + length + " bytes");
            }
            byte[] answer = new byte[length];
            answers.readFully(answer);
            return answer;
        } catch (IOException e) {
            LOG.log(System.Logger.Level.INFO, "a worker was lost", e);
            throw lost(file);
        } finally {
            alarm.cancel(false);
        }
    }

    /** Ends the worker once the file took its time; a computer that is busy with other things does not count against it. */
    private ScheduledFuture<?> alarm(long begun, Duration busyBefore) {
        long pauseMs = Math.max(20, limits.time().toMillis() / 10);
        return watch.scheduleWithFixedDelay(
                () -> {
                    Duration byClock = Duration.ofNanos(System.nanoTime() - begun);
                    Duration busy = busy().minus(busyBefore);
                    boolean patient = busy.isNegative() || busy.isZero() || busy.compareTo(limits.time()) < 0;
                    boolean hopeless = byClock.compareTo(limits.time().multipliedBy(WorkerLimits.PATIENCE)) > 0;
                    if (hopeless || !patient) {
                        tookTooLong = true;
                        process.destroyForcibly();
                    }
                },
                limits.time().toMillis(),
                pauseMs,
                TimeUnit.MILLISECONDS);
    }

    /** The processor time it has used so far, zero where the system does not tell. */
    private Duration busy() {
        return process.info().totalCpuDuration().orElse(Duration.ZERO);
    }

    private WorkerLost lost(Path file) {
        int status = -1;
        try {
            if (!process.waitFor(LAST_WORDS.toMillis(), TimeUnit.MILLISECONDS)) {
                process.destroyForcibly();
            } else {
                status = process.exitValue();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        if (stopped) {
            return new WorkerLost(file, Way.CLOSED, "the work was broken off");
        }
        if (tookTooLong) {
            return new WorkerLost(
                    file,
                    Way.TIME,
                    "decoding it took more than " + limits.time().toSeconds() + " s and was stopped");
        }
        if (status == MemoryWatch.TOO_MUCH) {
            return tooLarge(file);
        }
        return new WorkerLost(file, Way.CRASH, "decoding it failed so badly that the process for it ended");
    }

    WorkerLost tooLarge(Path file) {
        return new WorkerLost(
                file, Way.MEMORY, "decoding it takes more than " + limits.memoryMb() + " MB of memory and was stopped");
    }

    /** Ends it at once. */
    public void stop() {
        stopped = true;
        try {
            process.destroyForcibly().waitFor(GONE.toMillis(), TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        try {
            Files.deleteIfExists(pixels);
        } catch (IOException e) {
            LOG.log(System.Logger.Level.DEBUG, "the file for pixels stays behind", e);
        }
    }
}
