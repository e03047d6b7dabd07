package quarterlight.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import quarterlight.table.cell.RowContext;

/** Tables of a few lines, read beside the usual visit. */
final class FewRows {
    private final Path folder;
    private final RowContext context = VisitFixture.usual().context();

    FewRows(Path folder) {
        this.folder = folder;
    }

    RowContext context() {
        return context;
    }

    <T> TableRead<T> read(RowKind<T> kind, String text) {
        try {
            return CsvFile.read(Files.writeString(folder.resolve("t.csv"), text), kind, context);
        } catch (IOException | TableUnreadable e) {
            throw new AssertionError(e);
        }
    }

    /** Why the one row of a table is refused. */
    String refusal(RowKind<?> kind, String text) {
        TableRead<?> read = read(kind, text);
        assertThat(read.usable()).as("%s", read.refused()).isTrue();
        assertThat(read.rows()).isEmpty();
        return read.refused().get(0).sentence("t.csv");
    }

    static String lines(String... lines) {
        return String.join("\n", lines) + "\n";
    }
}
