package quarterlight.edit.export;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import quarterlight.edit.EditRefused;
import quarterlight.file.StagingFolder;

/** Where something new shall be made, refused in a sentence if it cannot be there. */
public final class Targets {
    private Targets() {}

    /** @throws EditRefused if something is at the target, or the folder for it is not there */
    public static StagingFolder beside(Path target) throws EditRefused, IOException {
        Path parent = target.toAbsolutePath().normalize().getParent();
        if (parent == null || !Files.isDirectory(parent)) {
            throw new EditRefused(
                    target.toString(),
                    parent == null
                            ? say("refused.target.above", target)
                            : say("refused.target.folder", target, parent));
        }
        try {
            return StagingFolder.beside(target);
        } catch (FileAlreadyExistsException e) {
            throw taken(target);
        }
    }

    /** Refuses before any work is done what {@link #deliver} would refuse after it. */
    public static void requireFree(Path target) throws EditRefused {
        if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            throw taken(target);
        }
    }

    static EditRefused taken(Path target) {
        return new EditRefused(target.toString(), say("refused.target.taken", target));
    }

    /** Moves what was made to its target. */
    public static void deliver(StagingFolder unfinished, Path made, Path target) throws EditRefused, IOException {
        try {
            unfinished.deliver(made);
        } catch (FileAlreadyExistsException e) {
            throw taken(target);
        }
    }

    /** @throws EditRefused if the target lies within the folder that goes into it */
    public static void requireOutside(Path visit, Path target) throws EditRefused, IOException {
        Path parent = target.toAbsolutePath().normalize().getParent();
        if (parent != null && Files.isDirectory(parent) && parent.toRealPath().startsWith(visit.toRealPath())) {
            throw new EditRefused(target.toString(), say("refused.target.inside", target, visit));
        }
    }
}
