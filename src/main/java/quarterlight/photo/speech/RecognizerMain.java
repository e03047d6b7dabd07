package quarterlight.photo.speech;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import quarterlight.photo.worker.RequestLoop;

/**
 * The recognizer's own process: loads the model it is told, then hears one stretch of sound after the other. {@code RecognizerMain MEMORY_MB OWN_FILE}; the
 * library unpacks its native part into a folder beside that file, which the program removes.
 */
public final class RecognizerMain {
    private RecognizerMain() {}

    public static void main(String[] args) throws IOException {
        Path parts = parts(Path.of(args[1]));
        Files.createDirectories(parts);
        System.setProperty("java.io.tmpdir", parts.toString());
        RequestLoop.run(args, (own, memoryMb) -> new RecognizerTasks()::answer);
    }

    /** Where the native part of the process that owns a file lies while it runs. */
    static Path parts(Path own) {
        return own.resolveSibling(own.getFileName() + ".parts");
    }
}
