package quarterlight.edit.list;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.table.TableUnreadable;
import quarterlight.table.list.ListRow;
import quarterlight.table.list.UserList;

/**
 * The lists by which a visit is judged: date patterns, what must be covered, the walk, functions to try. Those that came with a restored visit lie in
 * its folder {@code lists/} and hold for it, whatever the lists of the one who restored it say; else one's own in the folder of settings.
 */
public final class VisitLists {
    /** The folder within a visit, and within an archive. */
    public static final String FOLDER = "lists";

    private static final String README = "README.txt";
    /** Longer is no list of anybody; it is left out when an archive is restored. */
    static final long MAX_BYTES = 1 << 20;

    private VisitLists() {}

    /** Whether lists came with the visit. */
    public static boolean cameWith(Path visit) {
        return Files.isDirectory(visit.resolve(FOLDER), LinkOption.NOFOLLOW_LINKS);
    }

    /** The folder whose lists hold for a visit. */
    public static Path folder(Path visit, Path settings) {
        return cameWith(visit) ? visit.resolve(FOLDER) : settings;
    }

    /** The lists that hold for a visit, whole, by the names of their files, with a note of whose they are. */
    public static Map<String, String> texts(Path visit, Path settings) throws TableUnreadable, IOException {
        Path folder = folder(visit, settings);
        Map<String, String> texts = new LinkedHashMap<>();
        List<String> own = new ArrayList<>();
        for (UserList list : UserList.values()) {
            texts.put(list.file(), list.text(list.cells(rows(list, folder))));
            if (Files.exists(folder.resolve(list.file()))) {
                own.add(list.word());
            }
        }
        Path note = folder.resolve(README);
        texts.put(
                README,
                cameWith(visit) && Files.isRegularFile(note, LinkOption.NOFOLLOW_LINKS) && Files.size(note) < MAX_BYTES
                        ? Files.readString(note)
                        : note(own));
        return texts;
    }

    private static String note(List<String> own) {
        return "The lists by which this visit was judged when it was archived. They hold for it wherever it is restored.\n"
                + "The inspector's own: " + (own.isEmpty() ? "none" : String.join(", ", own))
                + ". All others are those of the program.\n";
    }

    /** Patterns of one's own are read beside the program's, so both go; of the others one's own takes the place of ours. */
    private static List<ListRow> rows(UserList list, Path folder) throws TableUnreadable {
        List<ListRow> inUse = list.inUse(folder);
        if (list != UserList.PATTERNS || !Files.exists(folder.resolve(list.file()))) {
            return inUse;
        }
        Set<String> names = inUse.stream().map(row -> row.cell("name")).collect(Collectors.toSet());
        List<ListRow> both = new ArrayList<>(inUse);
        list.shipped().stream().filter(row -> !names.contains(row.cell("name"))).forEach(both::add);
        return both;
    }
}
