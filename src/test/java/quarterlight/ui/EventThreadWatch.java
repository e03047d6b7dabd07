package quarterlight.ui;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListSet;

/**
 * Looks at the event thread every few milliseconds while a robot works, and keeps every place in the program at which it was found
 * waiting for a disk, a database or a picture.
 */
public final class EventThreadWatch implements AutoCloseable {
    private static final List<String> SLOW = List.of(
            "org.sqlite.",
            "sun.nio.fs.UnixNativeDispatcher",
            "sun.nio.ch.",
            "java.io.FileInputStream",
            "javax.imageio.",
            "com.drew.",
            "com.sun.imageio.");

    private final Set<String> caught = new ConcurrentSkipListSet<>();
    private final Thread watcher = new Thread(this::watch, "event-thread-watch");
    private volatile boolean done;

    private EventThreadWatch() {
        watcher.setDaemon(true);
        watcher.start();
    }

    public static EventThreadWatch start() {
        return new EventThreadWatch();
    }

    private void watch() {
        while (!done) {
            Thread.getAllStackTraces().forEach((thread, stack) -> {
                if (thread.getName().startsWith("AWT-EventQueue")) {
                    look(stack);
                }
            });
            try {
                Thread.sleep(4);
            } catch (InterruptedException e) {
                return;
            }
        }
    }

    private void look(StackTraceElement[] stack) {
        // classes, words and glyphs are loaded by the platform itself when first used; nobody can load them elsewhere
        boolean loading = Arrays.stream(stack)
                .anyMatch(frame -> frame.getMethodName().equals("loadClass")
                        || frame.getMethodName().equals("createFont")
                        || frame.getClassName().startsWith("sun.font.")
                        || frame.getClassName().startsWith("java.util.ResourceBundle")
                        || frame.getClassName().startsWith("javax.swing.JFileChooser"));
        if (loading) {
            return;
        }
        Arrays.stream(stack)
                .filter(frame -> SLOW.stream().anyMatch(frame.getClassName()::startsWith))
                .findFirst()
                .ifPresent(waiting -> Arrays.stream(stack)
                        .filter(frame -> frame.getClassName().startsWith("quarterlight."))
                        .findFirst()
                        .ifPresent(frame -> caught.add(frame + " in " + waiting)));
    }

    /** The places found so far; empty if the event thread never waited. */
    public Set<String> caught() {
        return new TreeSet<>(caught);
    }

    @Override
    public void close() {
        done = true;
    }
}
