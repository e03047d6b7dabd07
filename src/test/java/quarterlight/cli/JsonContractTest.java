package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every key that {@code docs/formats.md} promises is printed, and every key that is printed stands there. */
class JsonContractTest {
    private static final Pattern HEADING = Pattern.compile("### JSON: (\\w+)");
    private static final Pattern KEY = Pattern.compile("\\| `([\\w.\\[\\]]+)` \\|.*");

    @TempDir
    private Path folder;

    private static List<String> promised(String verb) throws IOException {
        List<String> keys = new ArrayList<>();
        boolean here = false;
        for (String line : Files.readAllLines(
                Path.of(System.getProperty("quarterlight.basedir", ".")).resolve("docs/formats.md"))) {
            Matcher heading = HEADING.matcher(line);
            Matcher key = KEY.matcher(line);
            if (heading.matches() || line.startsWith("## ")) {
                here = heading.matches() && heading.group(1).equals(verb);
            } else if (here && key.matches()) {
                keys.add(key.group(1));
            }
        }
        return keys;
    }

    /** The keys of the document, and of the rows of its lists of rows that the promise opens. */
    private static Set<String> printed(JsonNode document, List<String> promised) {
        TreeSet<String> keys = new TreeSet<>();
        document.fieldNames().forEachRemaining(name -> {
            if (promised.stream().noneMatch(key -> key.startsWith(name + "[]."))) {
                keys.add(name);
                return;
            }
            document.get(name)
                    .forEach(row -> row.fieldNames().forEachRemaining(inner -> keys.add(name + "[]." + inner)));
        });
        return keys;
    }

    @ParameterizedTest
    @ValueSource(strings = {"zones", "history", "gaps"})
    void isWhatIsPrinted(String verb) throws Exception {
        Bench bench = new Bench(folder);
        String visit = bench.folder("v");
        bench.run("new", visit, "--car", "Sorrel", "--style", "coupe", "--year", "1971", "--timezone", "UTC")
                .done();
        Path table = Files.writeString(
                folder.resolve("t.csv"),
                "zone,value,unit\nhood,5.1,mil\nhood,5.3,mil\nhood,5.2,mil\nroof,5.0,mil\nroof,5.4,mil\n");
        bench.run("add", "readings", visit, table.toString()).done();
        List<String> promised = promised(verb);
        assertThat(promised).isNotEmpty().doesNotHaveDuplicates();
        assertThat(printed(bench.run(verb, visit, "--json").done().json(), promised))
                .containsExactlyInAnyOrderElementsOf(promised);
    }

    @Test
    void isWhatAComparisonPrints() throws Exception {
        Bench bench = new Bench(folder);
        List<String> visits = new ArrayList<>();
        for (String name : List.of("first", "second")) {
            String visit = bench.folder(name);
            bench.run("new", visit, "--car", name, "--style", "coupe", "--year", "1971", "--timezone", "UTC")
                    .done();
            bench.run(
                            "add",
                            "readings",
                            visit,
                            bench.file("r.csv", "zone,value,unit\nhood,5.1,mil\nroof,5.0,mil\nroof,5.4,mil\n"))
                    .done();
            bench.run(
                            "add",
                            "statements",
                            visit,
                            bench.file("s.csv", "zone,condition,severity,text\nhood,damaged,major,A dent.\n"))
                    .done();
            bench.run("add", "trials", visit, bench.file("t.csv", "item,result\nheater,works\n"))
                    .done();
            visits.add(visit);
        }
        List<String> promised = promised("compare");
        JsonNode document = bench.run("compare", visits.get(0), visits.get(1), "--json")
                .done()
                .json();
        assertThat(promised).isNotEmpty().doesNotHaveDuplicates();
        assertThat(printed(document, promised)).containsExactlyInAnyOrderElementsOf(promised);
        for (String row : List.of("matters[].cars", "heads", "one_hour", "claims", "zones[].a", "zones[].contrasts")) {
            assertThat(told(row)).as(row).containsAll(inner(document, row));
        }
    }

    /** The words in code marks on the line of a key. */
    private static List<String> told(String key) throws IOException {
        String line = Files.readAllLines(
                        Path.of(System.getProperty("quarterlight.basedir", ".")).resolve("docs/formats.md"))
                .stream()
                .filter(one -> one.startsWith("| `" + key + "` |"))
                .findFirst()
                .orElseThrow();
        return Pattern.compile("`(\\w+)`")
                .matcher(line)
                .results()
                .map(found -> found.group(1))
                .toList();
    }

    /** The keys of the objects that lie at a place, whatever letter they belong to. */
    private static Set<String> inner(JsonNode document, String key) {
        TreeSet<String> keys = new TreeSet<>();
        boolean rows = key.contains("[].");
        String last = key.substring(key.lastIndexOf('.') + 1);
        for (JsonNode row : rows ? document.get(key.substring(0, key.indexOf('['))) : List.of(document)) {
            JsonNode found = row.get(last);
            if (last.equals("a")) {
                found.fieldNames().forEachRemaining(keys::add);
            } else {
                found.forEach(one -> (one.isArray() ? one : List.of(one))
                        .forEach(each -> each.fieldNames().forEachRemaining(keys::add)));
            }
        }
        return keys;
    }
}
