package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.Reader;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every row taken down from the narrated walks goes in through {@code add}, by rules alone, with one word for rust, refinishing and filler. */
class SpokenWalksTest {
    private static final Set<String> RUST = Set.of("surface rust", "scale", "pitted", "rusted through");
    private static final Set<String> WORK = Set.of("refinished", "filler", "replated");

    /**
     * How many rows do not fit: walks of our own whose gold calls the kind of a mark date, dot, chalk or just mark. None of the given
     * walks has one.
     */
    private static final Map<String, Integer> WITHOUT_A_KIND =
            Map.of("dogwood-sedan", 13, "thistle-wagon", 1, "vetch-coupe", 1, "yarrow-coupe", 2);

    @TempDir
    private Path folder;

    private static Path walks() throws URISyntaxException {
        return Path.of(Objects.requireNonNull(
                                SpokenWalksTest.class.getResource("/quarterlight/words/walks/sorrel-sedan.gold.csv"))
                        .toURI())
                .getParent();
    }

    static List<String> names() throws IOException, URISyntaxException {
        try (Stream<Path> files = Files.list(walks())) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".gold.csv"))
                    .map(name -> name.substring(0, name.length() - ".gold.csv".length()))
                    .sorted()
                    .toList();
        }
    }

    private static List<CSVRecord> rows(String name) throws IOException, URISyntaxException {
        try (Reader in = Files.newBufferedReader(walks().resolve(name + ".gold.csv"))) {
            return CSVFormat.RFC4180
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(in)
                    .getRecords();
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyRowGoesIn(String name) throws Exception {
        Bench bench = new Bench(folder);
        String visit = visit(bench, name);
        GoldRows rows = new GoldRows(name.startsWith("teasel") ? "km" : "mi");
        Map<String, List<GoldRows.Entry>> tables = new LinkedHashMap<>();
        for (CSVRecord row : rows(name)) {
            for (GoldRows.Entry entry : rows.of(row)) {
                tables.computeIfAbsent(entry.kind(), kind -> new ArrayList<>()).add(entry);
            }
        }
        for (Map.Entry<String, List<GoldRows.Entry>> table : tables.entrySet()) {
            Path file = folder.resolve("table.csv");
            write(file, table.getValue());
            String kind = table.getKey().split(" ")[0];
            JsonNode done = bench.run("add", kind, visit, file.toString(), "--keep-good", "--json")
                    .json();
            List<String> refused = new ArrayList<>();
            done.get("refused")
                    .forEach(row -> refused.add(
                            table.getValue().get(row.get("line").asInt() - 2).cells() + ": "
                                    + row.get("reason").asText()));
            assertThat(refused)
                    .as(name + ", " + kind)
                    .hasSize(kind.equals("marks") ? WITHOUT_A_KIND.getOrDefault(name, 0) : 0)
                    .allMatch(row -> row.contains("is none of vin, plate, stamp"));
            assertThat(done.get("added").asInt()).isEqualTo(table.getValue().size() - refused.size());
        }
    }

    private static String visit(Bench bench, String name) throws Exception {
        String visit = bench.folder(name);
        List<String> call = new ArrayList<>(List.of("new", visit, "--car", name));
        for (String line : Files.readAllLines(walks().resolve(name + ".facts.txt"))) {
            String key = line.substring(0, line.indexOf('='));
            if (!List.of("walk", "part").contains(key)) {
                call.addAll(List.of("--" + key, line.substring(line.indexOf('=') + 1)));
            }
        }
        assertThat(bench.run(call.toArray(String[]::new)).status()).isZero();
        return visit;
    }

    private static void write(Path file, List<GoldRows.Entry> entries) throws IOException {
        Set<String> columns = new LinkedHashSet<>();
        entries.forEach(entry -> columns.addAll(entry.cells().keySet()));
        List<String> lines = new ArrayList<>();
        lines.add(CSVFormat.RFC4180.format(columns.toArray()));
        for (GoldRows.Entry entry : entries) {
            lines.add(CSVFormat.RFC4180.format(columns.stream()
                    .map(column -> entry.cells().getOrDefault(column, ""))
                    .toArray()));
        }
        Files.write(file, lines);
    }

    /** The four first walks: 491 rows, of which 54 are sentences that hold nothing. */
    @Test
    void ofTheGivenWalksNoRowIsLeftOut() throws Exception {
        int read = 0;
        int nothing = 0;
        int entered = 0;
        for (String name : names()) {
            if (!name.matches("larkspur-coupe|sorrel-sedan|burdock-pickup|teasel-wagon-[1-8]")) {
                continue;
            }
            for (CSVRecord row : rows(name)) {
                read++;
                boolean empty = new GoldRows("mi").of(row).isEmpty();
                nothing += empty ? 1 : 0;
                entered += empty ? 0 : 1;
                assertThat(empty).as(row.toString()).isEqualTo(row.get("what").equals("nothing"));
            }
        }
        assertThat(read).isEqualTo(491);
        assertThat(nothing).isEqualTo(54);
        assertThat(entered).isEqualTo(437);
    }

    /** Where the gold needs two words for one thing, the table that goes in has one. */
    @Test
    void rustRefinishingAndFillerHaveOneWordEach() throws Exception {
        int rust = 0;
        int work = 0;
        for (String name : names()) {
            for (CSVRecord row : rows(name)) {
                boolean meant = row.get("what").equals("statement")
                        && row.get("value").matches("(missing / )?pitted.*|repaired / added coating.*");
                if (!meant) {
                    continue;
                }
                String word = GoldRows.oneWord(row).orElseThrow(() -> new AssertionError(row.toString()));
                assertThat(RUST.contains(word) ^ WORK.contains(word)).as(word).isTrue();
                rust += RUST.contains(word) ? 1 : 0;
                work += WORK.contains(word) ? 1 : 0;
            }
        }
        assertThat(rust).isGreaterThan(60);
        assertThat(work).isGreaterThan(12);
    }
}
