package quarterlight.store.folder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Locale;
import quarterlight.file.DurableFiles;

/**
 * The small file in each visit that a file manager opens with the program. It names nothing: the visit is the folder in which it lies, so a visit
 * that is moved or copied stays the one that opens.
 */
public final class VisitFile {
    /** How the name of such a file ends; entered with the system when the program is installed. */
    public static final String ENDING = ".quarterlight";

    static final String NAME = "visit" + ENDING;

    private static final System.Logger LOG = System.getLogger(VisitFile.class.getName());
    private static final String TEXT =
            "A visit of Quarterlight. Open this file with the program, or give it the folder in which it lies.\n";

    private VisitFile() {}

    /** The folder of a visit that a user named: by its file in it, or by the folder itself. */
    public static Path folderOf(Path named) {
        Path name = named.getFileName();
        if (name != null && isOne(name.toString()) && Files.isRegularFile(named)) {
            return named.toAbsolutePath().normalize().getParent();
        }
        return named;
    }

    /** Whether a name is that of such a file. */
    public static boolean isOne(String name) {
        return name.toLowerCase(Locale.ROOT).endsWith(ENDING);
    }

    /** @throws IOException if something of that name is there, or it cannot be written */
    static void make(Path folder) throws IOException {
        DurableFiles.fillText(folder.resolve(NAME), TEXT);
    }

    /** Makes the file where a visit of an earlier version has none; a visit without it works all the same. */
    public static void makeIfMissing(Path folder) {
        if (Files.exists(folder.resolve(NAME), LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        try {
            make(folder);
        } catch (IOException e) {
            LOG.log(System.Logger.Level.INFO, "no file to click was made in " + folder, e);
        }
    }
}
