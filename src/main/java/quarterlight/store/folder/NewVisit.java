package quarterlight.store.folder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import quarterlight.file.DurableFiles;
import quarterlight.file.StagingFolder;
import quarterlight.store.log.ComputerKey;
import quarterlight.store.log.HeadFile;
import quarterlight.store.log.LogChain;
import quarterlight.store.log.LogHead;
import quarterlight.store.problem.EditFailed;
import quarterlight.store.problem.VisitExists;
import quarterlight.store.problem.VisitUnwritable;
import quarterlight.store.rows.FactsTable;
import quarterlight.store.schema.Database;
import quarterlight.store.schema.Schema;
import quarterlight.visit.VisitFacts;

/** Makes the folder of a new visit beside its place and moves it there, so that it is whole or not there at all. */
public final class NewVisit {
    private final Path path;
    private final Schema schema;
    private final ComputerKey key;

    public NewVisit(Path path, Schema schema, ComputerKey key) {
        this.path = path;
        this.schema = schema;
        this.key = key;
    }

    /** @throws VisitExists if something is at the path */
    public void make(VisitFacts facts, Instant madeAt) throws VisitExists, VisitUnwritable {
        requireFree();
        Path place = path.toAbsolutePath().normalize();
        try {
            DurableFiles.createFolders(place.getParent());
            try (StagingFolder unfinished = StagingFolder.beside(place)) {
                Path made = unfinished.folder().resolve("visit");
                fill(new VisitFolder(made), facts, madeAt);
                unfinished.deliver(made);
            }
        } catch (IOException e) {
            requireFree();
            throw new VisitUnwritable(path, reason(e), e);
        } catch (SQLException e) {
            throw new VisitUnwritable(path, EditFailed.reason(e), e);
        }
    }

    private void requireFree() throws VisitExists {
        if (Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
            throw new VisitExists(path);
        }
    }

    private void fill(VisitFolder folder, VisitFacts facts, Instant madeAt) throws IOException, SQLException {
        Files.createDirectory(folder.root());
        Files.createDirectory(folder.originals());
        Files.createDirectory(folder.pages());
        VisitFile.make(folder.root());
        try (Connection connection = Database.open(folder.database())) {
            schema.apply(connection);
            new FactsTable(connection).add(facts, madeAt);
            LogHead head = new LogChain(connection).begin(LogChain.MADE, madeAt);
            try (HeadFile file = HeadFile.open(folder.head(), key)) {
                file.write(head);
                file.force();
            }
        }
    }

    /** File system exceptions name the file alone; their kind says what happened. */
    private static String reason(IOException e) {
        return e.getClass()
                        .getSimpleName()
                        .replaceAll("(?<=[a-z])(?=[A-Z])", " ")
                        .replace(" Exception", "") + " at " + e.getMessage();
    }
}
