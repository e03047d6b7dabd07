package quarterlight.table;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import quarterlight.table.cell.RowContext;
import quarterlight.table.text.FormulaCell;
import quarterlight.visit.row.Column;

/** Writes values of one kind as CSV (RFC 4180: comma, CR LF) with the columns that {@link CsvFile} reads. */
public final class CsvOut {
    private static final String END = "\r\n";

    private CsvOut() {}

    /** The header and one row per value, in their order; every column stands there, filled or not. */
    public static <T> void write(Appendable out, RowKind<T> kind, List<T> values, RowContext context)
            throws IOException {
        List<String> names = kind.columns().stream()
                .filter(column -> !column.older())
                .map(Column::name)
                .toList();
        out.append(CSVFormat.RFC4180.format(names.toArray())).append(END);
        for (T value : values) {
            Map<String, String> cells = kind.cells(value, context);
            Object[] row = names.stream()
                    .map(name -> FormulaCell.guarded(cells.getOrDefault(name, "")))
                    .toArray();
            out.append(CSVFormat.RFC4180.format(row)).append(END);
        }
    }
}
