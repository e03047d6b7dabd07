package quarterlight.photo.worker;

import java.util.concurrent.TimeUnit;
import org.bytedeco.javacpp.Pointer;
import quarterlight.task.Threads;

/**
 * Ends a worker that uses more memory than it may, native code included, or whose program is gone. A thread of its own looks every few milliseconds, so
 * neither needs the help of the code that decodes.
 */
final class MemoryWatch {
    /** The worker's exit status when it had to end for its memory. */
    static final int TOO_MUCH = 77;

    private static final int PAUSE_MS = 8;
    private static final int LOOKS_PER_PARENT = 64;

    private MemoryWatch() {}

    /** To be called once the native libraries are loaded: two threads that load them at once wait for each other forever. */
    static void start(long maxBytes) {
        boolean counted = isCounted();
        long program = parent();
        Threads.startDaemon("memory-watch", () -> {
            for (long look = 0; ; look++) {
                if (counted && Pointer.physicalBytes() > maxBytes) {
                    Runtime.getRuntime().halt(TOO_MUCH);
                }
                if (look % LOOKS_PER_PARENT == 0 && parent() != program) {
                    Runtime.getRuntime().halt(0);
                }
                pause();
            }
        });
    }

    /** Without native parts on this computer nothing counts, and nothing but the bounded heap needs to be. */
    private static boolean isCounted() {
        try {
            return Pointer.physicalBytes() >= 0;
        } catch (LinkageError e) {
            return false;
        }
    }

    private static long parent() {
        return ProcessHandle.current().parent().map(ProcessHandle::pid).orElse(0L);
    }

    private static void pause() {
        try {
            TimeUnit.MILLISECONDS.sleep(PAUSE_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
