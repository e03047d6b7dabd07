package quarterlight.cli.call;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import quarterlight.cli.text.Console;
import quarterlight.task.Progress;

/**
 * Lets a long job end in order when the user breaks it off: the job is told to stop, and the program waits a little until it has
 * saved what it holds.
 */
public final class Interruption implements Progress, AutoCloseable {
    private static final long MAX_WAIT_S = 5;

    private final CountDownLatch ended = new CountDownLatch(1);
    private final Thread hook = new Thread(this::stopAndWait, "break-off");
    private volatile boolean cancelled;

    private final Console console;

    private Interruption(Console console) {
        this.console = console;
    }

    /** @param console whose terminal, if there is one, shows how far the job is */
    public static Interruption watched(Console console) {
        Interruption interruption = new Interruption(console);
        Runtime.getRuntime().addShutdownHook(interruption.hook);
        return interruption;
    }

    private void stopAndWait() {
        cancelled = true;
        try {
            if (!ended.await(MAX_WAIT_S, TimeUnit.SECONDS)) {
                System.getLogger(Interruption.class.getName())
                        .log(System.Logger.Level.WARNING, "a job did not end in time");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void report(int done, int total, String what) {
        console.status().show(done, total, what);
    }

    @Override
    public boolean cancelled() {
        return cancelled;
    }

    @Override
    public void close() {
        console.status().clear();
        ended.countDown();
        if (!cancelled) {
            Runtime.getRuntime().removeShutdownHook(hook);
        }
    }
}
