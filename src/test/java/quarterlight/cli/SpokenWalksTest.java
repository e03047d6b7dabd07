package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Rows taken down from spoken walks go in as they are, with one word for rust, refinishing and filler each. */
class SpokenWalksTest {
    private static final List<String> KINDS =
            List.of("statements", "readings", "signs", "trials", "claims", "odometer");
    private static final List<String> WORDS = List.of(
            "surface rust",
            "scale",
            "pitted",
            "rusted through",
            "refinished",
            "filler",
            "replated",
            "worn",
            "repaired");

    @TempDir
    private Path folder;

    private static Path walks() throws URISyntaxException {
        return Path.of(Objects.requireNonNull(SpokenWalksTest.class.getResource("walks/README.md"))
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

    private static List<CSVRecord> rows(String file) throws IOException, URISyntaxException {
        try (Reader in = Files.newBufferedReader(walks().resolve(file))) {
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
        String visit = folder.resolve(name).toString();
        List<String> call = new ArrayList<>(List.of("new", visit, "--car", name));
        for (String line : Files.readAllLines(walks().resolve(name + ".facts.txt"))) {
            String key = line.substring(0, line.indexOf('='));
            if (!List.of("walk", "part").contains(key)) {
                call.addAll(List.of("--" + key, line.substring(line.indexOf('=') + 1)));
            }
        }
        assertThat(bench.run(call.toArray(String[]::new)).status()).isZero();
        for (String kind : KINDS) {
            Path file = walks().resolve(name + "." + kind + ".csv");
            if (Files.exists(file)) {
                Bench.Outcome outcome = bench.run("add", kind, visit, file.toString());
                assertThat(outcome.err()).as(kind).isEmpty();
                assertThat(outcome.status()).as(kind).isZero();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void rustRefinishingAndFillerNeedNoSecondWord(String name) throws Exception {
        List<CSVRecord> gold = rows(name + ".gold.csv").stream()
                .filter(row -> row.get("what").equals("statement"))
                // a sentence about the whole car is no statement about a zone
                .filter(row -> !row.get("zone").isEmpty())
                .filter(row ->
                        row.get("value").contains("pitted") || row.get("value").contains("repaired / added coating"))
                .toList();
        if (gold.isEmpty()) {
            return;
        }
        List<CSVRecord> taken = rows(name + ".statements.csv");
        for (CSVRecord row : gold) {
            assertThat(taken)
                    .as(row.get("text"))
                    .filteredOn(one -> one.get("text").equals(row.get("text")))
                    .isNotEmpty()
                    .allSatisfy(one -> assertThat(WORDS).contains(one.get("condition")));
        }
    }
}
