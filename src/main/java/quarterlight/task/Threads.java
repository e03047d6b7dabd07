package quarterlight.task;

import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Makes every thread of the program, so that each has a name that a log or a debugger can show. A thread is a daemon unless what it does
 * must be finished before the program ends.
 */
public final class Threads {
    private Threads() {}

    /** Runs one piece of work on a thread of its own that the end of the program waits for. */
    public static void start(String name, Runnable work) {
        new Thread(work, name).start();
    }

    /** Runs one piece of work on a thread of its own that the end of the program cuts off. */
    public static void startDaemon(String name, Runnable work) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        thread.start();
    }

    /** One thread that does its work in order; the end of the program waits for it until it is shut down. */
    public static ExecutorService inOrder(String name) {
        return Executors.newSingleThreadExecutor(work -> new Thread(work, name));
    }

    /** One daemon thread that does its work in order. */
    public static ExecutorService inOrderDaemon(String name) {
        return Executors.newSingleThreadExecutor(daemons(name, new AtomicInteger(), false));
    }

    /** One daemon thread for work at a later time. */
    public static ScheduledExecutorService later(String name) {
        return Executors.newSingleThreadScheduledExecutor(daemons(name, new AtomicInteger(), false));
    }

    /** So many daemon threads that share their work. */
    public static ExecutorService pool(String name, int size) {
        return Executors.newFixedThreadPool(size, daemons(name, new AtomicInteger(), size > 1));
    }

    /** So many daemon threads that take their work from a queue of their own kind, and end when idle for half a minute. */
    public static ThreadPoolExecutor pool(String name, int size, BlockingQueue<Runnable> queue) {
        return new ThreadPoolExecutor(
                size, size, 30, TimeUnit.SECONDS, queue, daemons(name, new AtomicInteger(), size > 1));
    }

    private static ThreadFactory daemons(String name, AtomicInteger made, boolean numbered) {
        return work -> {
            Thread thread = new Thread(work, numbered ? name + "-" + made.incrementAndGet() : name);
            thread.setDaemon(true);
            return thread;
        };
    }
}
