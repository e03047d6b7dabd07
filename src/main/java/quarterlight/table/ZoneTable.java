package quarterlight.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneGroup;
import quarterlight.car.ZoneId;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Construction;
import quarterlight.car.body.DriveSide;
import quarterlight.car.body.EnginePlace;
import quarterlight.file.CsvShape;
import quarterlight.units.Worded;

/** Reads the zone table that the program carries, {@code zones.csv}. */
public final class ZoneTable {
    private ZoneTable() {}

    /** Read once, since it never changes. */
    private static final class Shipped {
        private static final ZoneCatalog ZONES = shipped();
    }

    /** The zones of the program's own table. */
    public static ZoneCatalog load() {
        return Shipped.ZONES;
    }

    private static ZoneCatalog shipped() {
        try (InputStream in = ZoneTable.class.getResourceAsStream("zones.csv")) {
            return read(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("zones.csv cannot be read", e);
        }
    }

    static ZoneCatalog read(Reader csv) throws IOException {
        CSVFormat format = CsvShape.withHeader();
        List<Zone> zones = format.parse(csv).stream().map(ZoneTable::zone).toList();
        return new ZoneCatalog(zones);
    }

    private static Zone zone(CSVRecord row) {
        return new Zone(
                new ZoneId(row.get("id")),
                row.get("label"),
                word(ZoneGroup.class, row.get("group")),
                filled(row.get("side")).map(side -> word(DriveSide.class, side)),
                row.get("finish").equals("yes"),
                row.get("structural").equals("yes"),
                filled(row.get("mirror")).map(ZoneId::new),
                words(BodyStyle.class, row.get("styles")),
                words(Construction.class, row.get("construction")),
                words(EnginePlace.class, row.get("engine")));
    }

    private static Optional<String> filled(String cell) {
        return Optional.of(cell).filter(text -> !text.isBlank());
    }

    private static <E extends Enum<E> & Worded> E word(Class<E> type, String word) {
        return Worded.find(type, word)
                .orElseThrow(() -> new IllegalArgumentException(word + " is none of " + Worded.words(type)));
    }

    private static <E extends Enum<E> & Worded> Set<E> words(Class<E> type, String cell) {
        Set<E> found = EnumSet.noneOf(type);
        Arrays.stream(cell.strip().split(" +")).forEach(word -> found.add(word(type, word)));
        return found;
    }
}
