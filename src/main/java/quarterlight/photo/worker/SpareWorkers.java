package quarterlight.photo.worker;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ScheduledExecutorService;

/**
 * Workers whose pool was closed while they waited, sound: the next pool takes them over and need not start its own, which costs half a second of
 * processor time each. They end with the program, whose end is the end of what they read. No more of them than one pool has.
 */
final class SpareWorkers {
    private static final Path NO_PLACE = Path.of("none");
    private static final Deque<Spare> WAITING = new ArrayDeque<>();

    private SpareWorkers() {}

    private record Spare(WorkerLimits limits, List<String> command, WorkerProcess worker) {}

    /** Started with the same limits, the same class path and the same settings of the Java machine, or it would not do the same. */
    private static List<String> command(WorkerLimits limits) throws IOException {
        return WorkerCommand.of(limits, NO_PLACE, WorkerMain.class);
    }

    /** One that waits, or a new one. Before a new one is started, those that wait and are of no use here are ended. */
    static synchronized WorkerProcess take(WorkerLimits limits, ScheduledExecutorService watch) throws IOException {
        Optional<WorkerProcess> waiting = find(limits, command(limits));
        if (waiting.isPresent()) {
            waiting.get().watchedBy(watch);
            return waiting.get();
        }
        end();
        return WorkerProcess.start(limits, watch, WorkerMain.class);
    }

    private static Optional<WorkerProcess> find(WorkerLimits limits, List<String> command) {
        for (Iterator<Spare> all = WAITING.iterator(); all.hasNext(); ) {
            Spare spare = all.next();
            if (!spare.worker().isAlive()) {
                all.remove();
                spare.worker().stop();
            } else if (spare.limits().equals(limits) && spare.command().equals(command)) {
                all.remove();
                return Optional.of(spare.worker());
            }
        }
        return Optional.empty();
    }

    /** Keeps one that has nothing to do, or ends it where enough wait already. */
    static synchronized void keep(WorkerLimits limits, WorkerProcess worker) {
        try {
            WAITING.addFirst(new Spare(limits, command(limits), worker));
        } catch (IOException e) {
            worker.stop();
        }
        while (WAITING.size() > WorkerPool.WORKERS) {
            WAITING.removeLast().worker().stop();
        }
    }

    /** Ends those that wait. */
    static synchronized void end() {
        List<Spare> all = new ArrayList<>(WAITING);
        WAITING.clear();
        all.forEach(spare -> spare.worker().stop());
    }
}
