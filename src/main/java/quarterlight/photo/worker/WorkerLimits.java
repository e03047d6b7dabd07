package quarterlight.photo.worker;

import java.time.Duration;

/**
 * What a worker may use.
 *
 * @param heapMb of the Java machine
 * @param memoryMb of the whole process, native code and its libraries included
 * @param time for one file: time of the processor where the system tells it, so that a busy computer does not count against the file
 */
public record WorkerLimits(int heapMb, int memoryMb, Duration time) {
    /** By the clock a file may take so many times its limit. */
    static final int PATIENCE = 6;

    /** For nearly all files; two such workers and the program stay within 512 MB. */
    public static final WorkerLimits USUAL = new WorkerLimits(72, 160, Duration.ofSeconds(10));

    /** For a file that needs more; it has the memory of both workers, which are stopped meanwhile. */
    public static final WorkerLimits ALONE = new WorkerLimits(224, 320, Duration.ofSeconds(20));

    /** For pictures that are shown in a window with all their pixels, where 48 million of them must find room. */
    public static final WorkerLimits WHOLE = new WorkerLimits(512, 800, Duration.ofSeconds(20));
}
