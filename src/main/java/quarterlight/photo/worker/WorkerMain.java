package quarterlight.photo.worker;

import java.io.IOException;
import quarterlight.photo.decode.Pictures;

/**
 * The worker: a process that decodes what it is asked to, one file after the other, and ends with its input; pixels go through a file.
 * {@code WorkerMain MEMORY_MB PIXEL_FILE}.
 */
public final class WorkerMain {
    /** What a worker takes before it has a picture in hand. */
    private static final int WITHOUT_PICTURE_MB = 64;

    private WorkerMain() {}

    public static void main(String[] args) throws IOException {
        RequestLoop.run(args, (pixels, memoryMb) -> {
            Pictures.prepare();
            return new WorkerTasks(pixels, memoryMb - WITHOUT_PICTURE_MB << 20)::answer;
        });
    }
}
