package quarterlight.edit.export;

import java.nio.file.Path;
import quarterlight.store.VisitStore;
import quarterlight.store.folder.VisitFolder;
import quarterlight.store.problem.VisitProblem;

/**
 * A visit as it stood at one moment, in a copy of its database, so that what is made of it belongs together while somebody goes on
 * editing.
 */
public final class Snapshot implements AutoCloseable {
    private final VisitFolder folder;
    private final VisitStore store;

    private Snapshot(VisitFolder folder, VisitStore store) {
        this.folder = folder;
        this.store = store;
    }

    /** @param folder an empty folder for the copy */
    public static Snapshot of(VisitStore visit, Path folder) throws VisitProblem {
        VisitFolder copy = new VisitFolder(folder);
        visit.copyDatabase(copy.database());
        return new Snapshot(copy, VisitStore.openForReading(folder));
    }

    public VisitStore store() {
        return store;
    }

    /** The database, one plain file. */
    public Path database() {
        return folder.database();
    }

    @Override
    public void close() {
        store.close();
    }
}
