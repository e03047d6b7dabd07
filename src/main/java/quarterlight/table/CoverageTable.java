package quarterlight.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import quarterlight.car.BodyStyle;
import quarterlight.car.Construction;
import quarterlight.car.ZoneGroup;
import quarterlight.car.ZoneId;
import quarterlight.coverage.CoverageRule;
import quarterlight.coverage.CoverageRules;
import quarterlight.coverage.Want;
import quarterlight.units.Worded;

/** Reads what a visit must bring, {@code coverage.csv}, and the walk round the car, {@code coverage-walk.csv}. */
public final class CoverageTable {
    private static final CSVFormat FORMAT = CSVFormat.DEFAULT
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setIgnoreEmptyLines(true)
            .get();

    private CoverageTable() {}

    /** The rules that the program carries. */
    public static CoverageRules load() {
        try (InputStream rules = CoverageTable.class.getResourceAsStream("coverage.csv");
                InputStream walk = CoverageTable.class.getResourceAsStream("coverage-walk.csv")) {
            return read(
                    new InputStreamReader(rules, StandardCharsets.UTF_8),
                    new InputStreamReader(walk, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("coverage.csv cannot be read", e);
        }
    }

    /**
     * Reads rules and walk.
     *
     * @throws IllegalArgumentException if a word is none of its list, or a number is below 1; the message names both
     */
    static CoverageRules read(Reader rules, Reader walk) throws IOException {
        List<CoverageRule> rows =
                FORMAT.parse(rules).stream().map(CoverageTable::rule).toList();
        List<ZoneId> zones = FORMAT.parse(walk).stream()
                .map(row -> new ZoneId(row.get("zone").strip()))
                .toList();
        return new CoverageRules(rows, zones);
    }

    private static CoverageRule rule(CSVRecord row) {
        return new CoverageRule(
                word(Want.class, row.get("wants")),
                Integer.parseInt(row.get("number").strip()),
                set(row.get("groups"), word -> word(ZoneGroup.class, word)),
                set(row.get("zones"), ZoneId::new),
                set(row.get("except"), ZoneId::new),
                row.get("finish").strip().equals("yes"),
                row.get("structural").strip().equals("yes"),
                set(row.get("styles"), word -> word(BodyStyle.class, word)),
                set(row.get("construction"), word -> word(Construction.class, word)),
                row.get("why").strip());
    }

    private static <T> Set<T> set(String cell, Function<String, T> read) {
        Set<T> found = new LinkedHashSet<>();
        Arrays.stream(cell.strip().split(" +"))
                .filter(word -> !word.isEmpty())
                .forEach(word -> found.add(read.apply(word)));
        return found;
    }

    private static <E extends Enum<E> & Worded> E word(Class<E> type, String word) {
        return Worded.find(type, word)
                .orElseThrow(() -> new IllegalArgumentException(word + " is none of " + Worded.words(type)));
    }
}
