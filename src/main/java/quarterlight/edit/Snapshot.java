package quarterlight.edit;

import java.nio.file.Path;
import quarterlight.store.VisitFolder;
import quarterlight.store.VisitProblem;
import quarterlight.store.VisitStore;

/**
 * A visit as it stood at one moment, in a copy of its database, so that what is made of it belongs together while somebody goes on
 * editing.
 */
final class Snapshot implements AutoCloseable {
    private final VisitFolder folder;
    private final VisitStore store;

    private Snapshot(VisitFolder folder, VisitStore store) {
        this.folder = folder;
        this.store = store;
    }

    /** @param folder an empty folder for the copy */
    static Snapshot of(VisitStore visit, Path folder) throws VisitProblem {
        VisitFolder copy = new VisitFolder(folder);
        visit.copyDatabase(copy.database());
        return new Snapshot(copy, VisitStore.openForReading(folder));
    }

    VisitStore store() {
        return store;
    }

    /** The database, one plain file. */
    Path database() {
        return folder.database();
    }

    @Override
    public void close() {
        store.close();
    }
}
