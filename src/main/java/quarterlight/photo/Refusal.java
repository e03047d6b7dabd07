package quarterlight.photo;

import static quarterlight.language.Sentences.say;

import java.io.FileNotFoundException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Objects;
import quarterlight.language.Retold;

/**
 * A file or folder that was not taken in.
 *
 * @param reason in words that can follow the file's name and a colon
 */
public record Refusal(Path file, String reason) {
    public Refusal {
        Objects.requireNonNull(file, "file");
        reason = Retold.of(reason);
    }

    /** What the file system's complaint means, in a few words. */
    public static String because(Exception e) {
        if (e instanceof AccessDeniedException) {
            return say("problem.media.access");
        }
        if (e instanceof NoSuchFileException || e instanceof FileNotFoundException) {
            return say("problem.media.gone");
        }
        if (e instanceof FileSystemLoopException) {
            return say("problem.media.circle");
        }
        Throwable cause = e.getCause() == null ? e : e.getCause();
        String message = cause.getMessage();
        return message == null || message.isBlank()
                ? say("problem.media.disk")
                : message.lines().findFirst().orElse("");
    }
}
