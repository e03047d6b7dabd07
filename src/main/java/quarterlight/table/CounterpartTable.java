package quarterlight.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import quarterlight.car.ZoneId;
import quarterlight.compare.place.Counterpart;
import quarterlight.file.CsvShape;

/** Reads which zones of unlike bodies are laid side by side, {@code counterparts.csv}: common practice in our own choice. */
public final class CounterpartTable {
    private CounterpartTable() {}

    public static List<Counterpart> load() {
        try (InputStream in = CounterpartTable.class.getResourceAsStream("counterparts.csv");
                Reader csv = new InputStreamReader(in, StandardCharsets.UTF_8)) {
            return CsvShape.withHeader().parse(csv).stream()
                    .map(CounterpartTable::row)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException("counterparts.csv cannot be read", e);
        }
    }

    private static Counterpart row(CSVRecord row) {
        List<List<ZoneId>> choices = Arrays.stream(row.get("zones").split(" "))
                .map(choice ->
                        Arrays.stream(choice.split("\\+")).map(ZoneId::new).toList())
                .toList();
        return new Counterpart(row.get("label"), choices, row.get("why"));
    }
}
