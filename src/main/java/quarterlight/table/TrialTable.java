package quarterlight.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import quarterlight.car.ZoneId;
import quarterlight.coverage.TrialGroup;
import quarterlight.coverage.TrialItem;
import quarterlight.coverage.TrialList;
import quarterlight.units.Worded;

/** Reads the list of functions to try, {@code trials.csv}: the program's own, or that of the inspector, which takes its place. */
public final class TrialTable {
    /** Name of one's own list in the folder of settings. */
    public static final String OWN_FILE = "trials.csv";

    private static final CSVFormat FORMAT = CSVFormat.DEFAULT
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setIgnoreEmptyLines(true)
            .get();

    private TrialTable() {}

    /** The list that the program carries. */
    public static TrialList load() {
        try (InputStream in = TrialTable.class.getResourceAsStream("trials.csv")) {
            return read(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("trials.csv cannot be read", e);
        }
    }

    /** The inspector's own list in the folder of settings if it is there, else the program's. */
    public static TrialList load(Path settings) throws TableUnreadable {
        Path own = settings.resolve(OWN_FILE);
        if (!Files.exists(own)) {
            return load();
        }
        try (Reader in = Files.newBufferedReader(own)) {
            return read(in);
        } catch (IllegalArgumentException e) {
            throw new TableUnreadable(own, e.getMessage() + "; the columns are group, item, unit, zone, running");
        } catch (IOException | UncheckedIOException e) {
            throw new TableUnreadable(own, "cannot be read; check that it is a UTF-8 text");
        }
    }

    private static TrialList read(Reader csv) throws IOException {
        List<TrialItem> items = FORMAT.parse(csv).stream().map(TrialTable::item).toList();
        return new TrialList(items);
    }

    private static TrialItem item(CSVRecord row) {
        String group = row.get("group");
        return new TrialItem(
                Worded.find(TrialGroup.class, group)
                        .orElseThrow(() -> new IllegalArgumentException("line " + (row.getRecordNumber() + 1) + ": "
                                + group + " is none of " + Worded.words(TrialGroup.class))),
                row.get("item").strip(),
                Optional.of(row.get("unit").strip()).filter(unit -> !unit.isEmpty()),
                new ZoneId(row.get("zone").strip()),
                row.get("running").strip().equals("yes"));
    }
}
