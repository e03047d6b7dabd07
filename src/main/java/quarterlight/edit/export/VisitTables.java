package quarterlight.edit.export;

import static java.time.format.DateTimeFormatter.ISO_OFFSET_DATE_TIME;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import quarterlight.capture.CorrectedTime;
import quarterlight.capture.CorrectedTimes;
import quarterlight.car.ZoneCatalog;
import quarterlight.edit.row.RowKinds;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitUnreadable;
import quarterlight.table.CsvOut;
import quarterlight.table.RowKind;
import quarterlight.table.cell.RowContext;
import quarterlight.table.drawn.Drawings;
import quarterlight.table.json.JsonObject;
import quarterlight.table.json.StoredRowsText;
import quarterlight.table.text.FormulaCell;
import quarterlight.units.XmlText;
import quarterlight.visit.StoredRows;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.fact.Facts;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Recorded;

/**
 * The tables of a visit as they go out: kinds of rows as CSV that can be added again, facts as the keys by which they are set, all
 * else as it is kept; and every table as JSON as it is kept.
 */
public final class VisitTables {
    private static final String FACTS = "facts";

    /** A tenth of a millimeter on the globe, and without the traces of binary arithmetic. */
    private static final MathContext DIGITS = new MathContext(10);

    private static final String PHOTOS = "photos";

    private final VisitRecord visit;
    private final RowContext context;
    private final Disclosure disclosure;
    private final List<StoredRows> tables = new ArrayList<>();

    private VisitTables(VisitStore store, ZoneCatalog catalog, Disclosure disclosure) throws VisitUnreadable {
        VisitRecord whole = store.read();
        this.visit = disclosure.of(whole);
        this.context = RowContext.of(visit, catalog);
        this.disclosure = disclosure;
        CorrectedTimes times = CorrectedTimes.of(visit);
        OpenRows open = new OpenRows(visit);
        for (StoredRows kept : store.tables()) {
            StoredRows table = disclosure == Disclosure.FOR_BUYER ? open.of(kept) : kept;
            disclosure
                    .of(table.table().equals(PHOTOS) ? withTimes(table, times) : table)
                    .ifPresent(tables::add);
        }
    }

    public static VisitTables of(VisitStore store, ZoneCatalog catalog, Disclosure disclosure) throws VisitUnreadable {
        return new VisitTables(store, catalog, disclosure);
    }

    public VisitRecord visit() {
        return visit;
    }

    /** The photos with two more columns: when they were taken, after the clocks were set right. */
    private static StoredRows withTimes(StoredRows photos, CorrectedTimes times) {
        List<String> columns = new ArrayList<>(photos.columns());
        columns.add("captured_corrected");
        columns.add("captured_utc");
        int id = photos.columns().indexOf("id");
        List<List<Optional<Object>>> rows = photos.rows().stream()
                .map(row -> {
                    Optional<CorrectedTime> time =
                            times.of(new PhotoId((Long) row.get(id).orElseThrow()));
                    List<Optional<Object>> longer = new ArrayList<>(row);
                    longer.add(time.map(t -> ISO_OFFSET_DATE_TIME.format(t.local())));
                    longer.add(time.map(t -> ISO_OFFSET_DATE_TIME.format(t.utc())));
                    return longer;
                })
                .toList();
        return new StoredRows(PHOTOS, columns, rows);
    }

    /** The files by their names, CSV and JSON of each table. */
    public Map<String, String> csvAndJson() {
        Map<String, String> files = new LinkedHashMap<>(csv());
        for (StoredRows table : tables) {
            files.put(table.table() + ".json", StoredRowsText.document(table));
        }
        return files;
    }

    /** The CSV files by their names. */
    Map<String, String> csv() {
        Map<String, String> files = new LinkedHashMap<>();
        for (StoredRows table : tables) {
            files.put(table.table() + ".csv", csv(table));
        }
        return files;
    }

    private String csv(StoredRows table) {
        if (table.table().equals(FACTS)) {
            return facts();
        }
        return RowKinds.find(table.table()).map(this::rows).orElseGet(() -> StoredRowsText.csv(table));
    }

    /** One row per key. */
    private String facts() {
        List<List<Optional<Object>>> rows = new ArrayList<>();
        Facts.cells(visit.facts()).forEach((key, value) -> {
            if (disclosure.tellsFact(key)) {
                rows.add(List.of(Optional.of(key), Optional.of(value)));
            }
        });
        return StoredRowsText.csv(new StoredRows(FACTS, List.of("key", "value"), rows));
    }

    private <T> String rows(RowKind<T> kind) {
        StringBuilder out = new StringBuilder();
        try {
            CsvOut.write(
                    out,
                    kind,
                    kind.kind().of(visit).stream().map(Recorded::value).toList(),
                    context);
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory can be written", e);
        }
        return out.toString();
    }

    /** The rows of each table for a workbook, the header first, by its name; cells as they were typed. */
    Map<String, List<List<String>>> sheets() throws IOException {
        Map<String, List<List<String>>> sheets = new LinkedHashMap<>();
        for (StoredRows table : tables) {
            List<List<String>> rows = new ArrayList<>();
            try (CSVParser parser = CSVParser.parse(csv(table), CSVFormat.RFC4180)) {
                for (CSVRecord row : parser) {
                    rows.add(row.stream()
                            .map(FormulaCell::plain)
                            .map(XmlText::clean)
                            .toList());
                }
            }
            sheets.put(table.table(), rows);
        }
        return sheets;
    }

    /** What was drawn on photos. */
    Drawings drawings() {
        return VisitDrawings.of(visit, context);
    }

    /** All tables as one document, for people and programs that go on with the numbers; an archive keeps every digit. */
    String document() {
        JsonObject document =
                new JsonObject().put("format", "quarterlight visit").put("format_version", 1);
        for (StoredRows table : tables) {
            List<JsonObject> rows = StoredRowsText.json(table, DIGITS);
            if (table.table().equals(FACTS)) {
                document.put(FACTS, rows.get(0));
            } else {
                document.put(StoredRowsText.key(table), rows);
            }
        }
        return document.text();
    }
}
