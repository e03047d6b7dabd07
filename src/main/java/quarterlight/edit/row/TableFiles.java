package quarterlight.edit.row;

import static quarterlight.language.Sentences.say;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneCatalog;
import quarterlight.edit.EditRefused;
import quarterlight.marks.code.DatePatterns;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.CsvFile;
import quarterlight.table.RowKind;
import quarterlight.table.TableRead;
import quarterlight.table.TableSource;
import quarterlight.table.TableUnreadable;
import quarterlight.table.cell.RowContext;

/** Tables whose kind is not said: the kind is the one whose columns the table has. */
public final class TableFiles {
    private final VisitStore store;
    private final ZoneCatalog catalog;
    private final DatePatterns patterns;

    /** @param patterns the date patterns at hand */
    public TableFiles(VisitStore store, ZoneCatalog catalog, DatePatterns patterns) {
        this.patterns = Objects.requireNonNull(patterns, "patterns");
        this.store = Objects.requireNonNull(store, "store");
        this.catalog = Objects.requireNonNull(catalog, "catalog");
    }

    /** A table and the kind it is of. */
    public record Known<T>(RowKind<T> kind, TableRead<T> table) {
        /** Adds the good rows as one edit. */
        public RowEdits.Added add(VisitStore store) throws EditRefused, VisitProblem {
            return new RowEdits(store).add(kind.kind(), table.values());
        }
    }

    /**
     * Reads a table.
     *
     * @param sheet of a workbook, where several hold something
     * @throws TableUnreadable if it cannot be read
     * @throws EditRefused if its columns are those of no kind
     */
    public Known<?> read(Path file, Optional<String> sheet) throws TableUnreadable, EditRefused, VisitProblem {
        TableSource source = TableSource.of(file, sheet);
        RowContext context = RowContext.of(store.read(), catalog, patterns);
        List<Known<?>> usable = new ArrayList<>();
        for (RowKind<?> kind : RowKinds.all()) {
            Known<?> known = read(source, kind, context);
            if (known.table().usable()) {
                usable.add(known);
            }
        }
        if (usable.isEmpty()) {
            throw new EditRefused(
                    "table", say("refused.table.kind", file.getFileName(), String.join(", ", RowKinds.words())));
        }
        return usable.get(0);
    }

    private static <T> Known<T> read(TableSource source, RowKind<T> kind, RowContext context) {
        return new Known<>(kind, CsvFile.read(source, kind, context));
    }
}
