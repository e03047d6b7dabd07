package quarterlight.task;

import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import quarterlight.language.Language;

/**
 * Makes every thread of the program, so that each has a name that a log or a debugger can show. A thread is a daemon unless what it does
 * must be finished before the program ends. Work speaks the {@link Language} of whoever gave it.
 */
public final class Threads {
    private Threads() {}

    /** Runs one piece of work on a thread of its own that the end of the program waits for. */
    public static void start(String name, Runnable work) {
        new Thread(Language.carried(work), name).start();
    }

    /** Runs one piece of work on a thread of its own that the end of the program cuts off. */
    public static void startDaemon(String name, Runnable work) {
        Thread thread = new Thread(Language.carried(work), name);
        thread.setDaemon(true);
        thread.start();
    }

    /** One thread that does its work in order; the end of the program waits for it until it is shut down. */
    public static ExecutorService inOrder(String name) {
        return new Speaking(1, work -> new Thread(work, name));
    }

    /** One daemon thread that does its work in order. */
    public static ExecutorService inOrderDaemon(String name) {
        return new Speaking(1, daemons(name, new AtomicInteger(), false));
    }

    /** One daemon thread for work at a later time, in English. */
    public static ScheduledExecutorService later(String name) {
        return Executors.newSingleThreadScheduledExecutor(daemons(name, new AtomicInteger(), false));
    }

    /** So many daemon threads that share their work. */
    public static ExecutorService pool(String name, int size) {
        return new Speaking(size, daemons(name, new AtomicInteger(), size > 1));
    }

    /**
     * So many daemon threads that take their work from a queue of their own kind, and end when idle for half a minute. Whoever puts work
     * into such a queue carries the language himself, as the work must stay of the queue's kind.
     */
    public static ThreadPoolExecutor pool(String name, int size, BlockingQueue<Runnable> queue) {
        return new ThreadPoolExecutor(
                size, size, 30, TimeUnit.SECONDS, queue, daemons(name, new AtomicInteger(), size > 1));
    }

    /** Does its work in the language of whoever gave it. */
    private static final class Speaking extends ThreadPoolExecutor {
        Speaking(int size, ThreadFactory threads) {
            super(size, size, 0, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), threads);
        }

        @Override
        public void execute(Runnable work) {
            super.execute(Language.carried(work));
        }
    }

    private static ThreadFactory daemons(String name, AtomicInteger made, boolean numbered) {
        return work -> {
            Thread thread = new Thread(work, numbered ? name + "-" + made.incrementAndGet() : name);
            thread.setDaemon(true);
            return thread;
        };
    }
}
