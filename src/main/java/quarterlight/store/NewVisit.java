package quarterlight.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import quarterlight.store.rows.FactsTable;
import quarterlight.visit.VisitFacts;

/** Makes the folder of a new visit beside its place and moves it there, so that it is whole or not there at all. */
final class NewVisit {
    private static final System.Logger LOG = System.getLogger(NewVisit.class.getName());

    private final Path path;
    private final Schema schema;

    NewVisit(Path path, Schema schema) {
        this.path = path;
        this.schema = schema;
    }

    /** @throws VisitExists if something is at the path */
    void make(VisitFacts facts, Instant madeAt) throws VisitExists, VisitUnwritable {
        requireFree();
        Path place = path.toAbsolutePath().normalize();
        Path unfinished = place.resolveSibling(".unfinished-" + UUID.randomUUID());
        try {
            Files.createDirectories(unfinished.getParent());
            fill(new VisitFolder(unfinished), facts, madeAt);
            requireFree();
            Files.move(unfinished, place, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            throw new VisitUnwritable(path, reason(e), e);
        } catch (SQLException e) {
            throw new VisitUnwritable(path, Failed.reason(e), e);
        } finally {
            clear(unfinished);
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
        try (Connection connection = Database.open(folder.database())) {
            schema.apply(connection);
            new FactsTable(connection).add(facts, madeAt);
        }
    }

    /** File system exceptions name the file alone; their kind says what happened. */
    private static String reason(IOException e) {
        return e.getClass()
                        .getSimpleName()
                        .replaceAll("(?<=[a-z])(?=[A-Z])", " ")
                        .replace(" Exception", "") + " at " + e.getMessage();
    }

    private static void clear(Path unfinished) {
        if (!Files.exists(unfinished)) {
            return;
        }
        try (Stream<Path> all = Files.walk(unfinished)) {
            List<Path> deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
            for (Path each : deepestFirst) {
                Files.delete(each);
            }
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "an unfinished visit stays at " + unfinished, e);
        }
    }
}
