package quarterlight.photo.worker;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingDeque;
import java.util.concurrent.LinkedBlockingDeque;
import java.util.concurrent.ScheduledExecutorService;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.wire.AnswerKind;
import quarterlight.photo.wire.Wire;
import quarterlight.photo.worker.WorkerLost.Way;
import quarterlight.task.Threads;

/** The workers that are there, each started when it is needed, and the one that works alone. Safe for several threads. */
final class WorkerPool {
    static final int WORKERS = 2;

    private final WorkerLimits usual;
    private final WorkerLimits alone;
    /** The one that was used last is used first. */
    private final BlockingDeque<Seat> free = new LinkedBlockingDeque<>();

    private final List<Seat> seats = List.of(new Seat(), new Seat());
    private final Seat single = new Seat();
    private final ScheduledExecutorService watch = Threads.later("decoding-watch");
    private volatile boolean closed;

    WorkerPool(WorkerLimits usual, WorkerLimits alone) {
        this.usual = usual;
        this.alone = alone;
        free.addAll(seats);
    }

    /** A part of a message. */
    @FunctionalInterface
    interface Part {
        void write(DataOutputStream out) throws IOException;
    }

    /** A request, and how its answer is read. */
    @SuppressWarnings("ArrayRecordComponent")
    record Call<T>(Path file, byte[] request, Reading<T> reading) {
        /** Reads an answer while the worker's pixels are at hand. */
        @FunctionalInterface
        interface Reading<T> {
            T read(DataInputStream in, Path pixels) throws IOException;
        }
    }

    /** Room for a worker. */
    private final class Seat {
        private Optional<WorkerProcess> worker = Optional.empty();

        synchronized WorkerProcess taken(WorkerLimits limits, Path file) throws WorkerLost {
            if (closed) {
                throw new WorkerLost(file, Way.CLOSED, "the work was broken off");
            }
            if (worker.isEmpty() || !worker.get().isAlive()) {
                leave();
                try {
                    worker = Optional.of(SpareWorkers.take(limits, watch));
                } catch (IOException e) {
                    throw new WorkerLost(
                            file,
                            Way.NOT_STARTED,
                            "the process that decodes pictures cannot be started (" + e.getMessage() + ")");
                }
            }
            return worker.get();
        }

        /** What it holds has nothing to do and waits for another pool. */
        synchronized void spare() {
            worker.ifPresent(idle -> SpareWorkers.keep(usual, idle));
            worker = Optional.empty();
        }

        synchronized void leave() {
            worker.ifPresent(WorkerProcess::stop);
            worker = Optional.empty();
        }
    }

    void start() {
        for (Seat seat : seats) {
            try {
                seat.taken(usual, Path.of(""));
            } catch (WorkerLost e) {
                return;
            }
        }
    }

    <T> T run(Call<T> call) throws WorkerLost, PictureUnreadable, IOException {
        try {
            Seat seat = free.takeFirst();
            try {
                return asked(seat, usual, call);
            } catch (WorkerLost e) {
                if (e.way() != Way.MEMORY) {
                    throw e;
                }
            } finally {
                free.putFirst(seat);
            }
            return again(call);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new WorkerLost(call.file(), Way.CLOSED, "the work was broken off");
        }
    }

    /** With the memory of all workers, which are stopped meanwhile. */
    private synchronized <T> T again(Call<T> call)
            throws WorkerLost, PictureUnreadable, IOException, InterruptedException {
        List<Seat> held = new ArrayList<>();
        try {
            for (int i = 0; i < WORKERS; i++) {
                held.add(free.takeFirst());
            }
            seats.forEach(Seat::leave);
            SpareWorkers.end();
            return asked(single, alone, call);
        } finally {
            single.leave();
            held.forEach(free::addFirst);
        }
    }

    private static <T> T asked(Seat seat, WorkerLimits limits, Call<T> call)
            throws WorkerLost, PictureUnreadable, IOException {
        WorkerProcess worker = seat.taken(limits, call.file());
        boolean sound = false;
        try {
            byte[] answer = worker.ask(call.request(), call.file());
            try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(answer))) {
                T result = read(in, worker, call);
                sound = true;
                return result;
            } catch (PictureUnreadable | Unreadable e) {
                sound = true;
                throw e;
            } catch (IOException | DateTimeException | IllegalArgumentException e) {
                throw new WorkerLost(call.file(), Way.CRASH, "decoding it gave no usable answer");
            }
        } finally {
            if (!sound) {
                seat.leave();
            }
        }
    }

    /** The worker could not read the file. */
    private static final class Unreadable extends IOException {
        private static final long serialVersionUID = 1L;

        Unreadable(String reason) {
            super(reason);
        }
    }

    private static <T> T read(DataInputStream in, WorkerProcess worker, Call<T> call)
            throws IOException, PictureUnreadable, WorkerLost {
        return switch (Wire.kind(in, AnswerKind.class)) {
            case DONE -> call.reading().read(in, worker.pixels());
            case NOT_SHOWN -> throw new PictureUnreadable(call.file(), Wire.text(in));
            case UNREADABLE -> throw new Unreadable(Wire.text(in));
            case TOO_LARGE -> throw worker.tooLarge(call.file());
        };
    }

    /** Ends what the workers are at; they are started again when they are needed. */
    void breakOff() {
        seats.forEach(Seat::leave);
        single.leave();
    }

    void close() {
        closed = true;
        List<Seat> idle = new ArrayList<>();
        free.drainTo(idle);
        idle.forEach(Seat::spare);
        free.addAll(idle);
        breakOff();
        watch.shutdownNow();
    }
}
