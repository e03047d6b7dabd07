package quarterlight.edit.list;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.edit.EditRefused;
import quarterlight.file.DurableFiles;
import quarterlight.table.TableUnreadable;
import quarterlight.table.list.ListRow;
import quarterlight.table.list.UserList;

/** Keeps the user's own lists in the folder of settings: what visits must bring, functions to try, date patterns. Not for the event thread. */
public final class UserLists {
    private static final String BEFORE = ".before";

    private final Path settings;

    /** @param settings the folder; need not exist */
    public UserLists(Path settings) {
        this.settings = Objects.requireNonNull(settings, "settings");
    }

    /** Where the user's own list lies, whether it is there or not. */
    public Path file(UserList list) {
        return settings.resolve(list.file());
    }

    public boolean isOwn(UserList list) {
        return Files.exists(file(list));
    }

    /** The cells of the rows in use: the user's own list, else the program's. */
    public List<List<String>> cells(UserList list) throws TableUnreadable {
        return list.cells(list.inUse(settings));
    }

    /**
     * Makes these rows the user's own list; what was there before stays beside it.
     *
     * @param cells in the order of the columns
     * @throws EditRefused if the rows are no such list; the message says the line, the column and what was expected
     */
    public void keep(UserList list, List<List<String>> cells) throws EditRefused, IOException {
        String text = list.text(cells);
        Optional<String> fault = fault(list, text);
        if (fault.isPresent()) {
            throw new EditRefused(list.word(), say("refused.list", list.word(), fault.get()));
        }
        setAside(list);
        DurableFiles.text(file(list), text);
    }

    private static Optional<String> fault(UserList list, String text) {
        try {
            list.check(list.parse(text));
            return Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.of(e.getMessage());
        }
    }

    /** Makes a file the user's own list. */
    public void take(UserList list, Path from) throws TableUnreadable, EditRefused, IOException {
        List<ListRow> rows = list.read(from);
        keep(list, list.cells(rows));
    }

    /** Goes back to the program's list; the user's own stays beside it. False if there was none. */
    public boolean giveUp(UserList list) throws IOException {
        boolean own = isOwn(list);
        if (own) {
            setAside(list);
            Files.deleteIfExists(file(list));
        }
        return own;
    }

    /** Where the list that was kept before lies. */
    public Path before(UserList list) {
        return settings.resolve(list.file() + BEFORE);
    }

    private void setAside(UserList list) throws IOException {
        if (isOwn(list)) {
            byte[] own = Files.readAllBytes(file(list));
            DurableFiles.write(before(list), out -> out.write(own));
        }
    }
}
