package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.edit.row.RowKinds;
import quarterlight.table.RowKind;

/**
 * Tables of every kind with rows that nobody would write on purpose: whatever stands in them, a call ends in a sentence, and so does
 * everything that is worked out of the rows that were good. More tables with {@code -Dquarterlight.fuzz.tables=10000}, others with
 * {@code -Dquarterlight.seed=N}.
 */
@Timeout(7200)
class HostileRowsTest {
    private static final int TABLES = Integer.getInteger("quarterlight.fuzz.tables", 100);
    private static final long SEED = Long.getLong("quarterlight.seed", 17);
    /** After so many tables everything is worked out of what the visit holds by then, and a new one begun. */
    private static final int TABLES_OF_A_VISIT = 25;

    private static final List<String> VERBS =
            List.of("zones", "history", "rust", "dates", "gaps", "suggest", "photos", "audit");

    private static final List<String> ODD = List.of(
            "",
            " ",
            "\u00a0",
            "-",
            "0",
            "-0",
            "-1",
            "+1",
            "1.",
            ".5",
            "1e309",
            "1E5",
            "NaN",
            "Infinity",
            "\u22125",
            "99999999999999999999",
            "100000000000000000000000",
            "0.00000000000000000001",
            "2147483648",
            "1.234",
            "1,234",
            "4,5",
            "4.5",
            "4-5",
            "5-4",
            "4-",
            "-4-5",
            "4-5-6",
            "0-0",
            "none",
            "over",
            "OVER",
            "9999",
            "-0001",
            "999999999",
            "0000",
            "1600",
            "0000-00-00",
            "1971-02-30",
            "1971-04",
            "-0001-01-01T00:00",
            "9999-12-31T23:59:59.999999999",
            "+999999999-12-31T23:59:59",
            "-999999999-01-01T00:00:00",
            "+999999999-12-31T23:59:59+18:00",
            "2026-03-08T02:30",
            "2026-11-01T01:30",
            "2026-05-02T24:00",
            "2026-05-02 10:15",
            "2026-05-02T10:15+18:00",
            "\u001b[31mred\u001b[0m",
            "\u0007",
            "\u009b2J",
            "\u202eabc",
            "a\nb",
            "a\r\nb",
            "\"",
            "'",
            "''=1+1",
            "'=1+1",
            "=1+1",
            "=HYPERLINK(\"http://x.invalid\")",
            "@SUM(A1)",
            "+1+1",
            "-1+1",
            "\t=1",
            "\uff1d1",
            "x".repeat(10_001),
            "x".repeat(9_999),
            "\ud83d\ude97",
            "e\u0301",
            "\u0000".replace("\0", "\ufffd"),
            "POLYGON EMPTY",
            "POLYGON((0 0))",
            "POLYGON((0 0,0 0,0 0,0 0))",
            "POLYGON((0 0,10 0,10 10,0 10,0 0))",
            "POLYGON((0 0,10 10,10 0,0 10,0 0))",
            "POLYGON((0 0,1e308 0,1e308 1e308,0 0))",
            "POLYGON((NaN 0,1 1,2 2,NaN 0))",
            "POLYGON((0 0,99999999999999999999 0,5 5,0 0))",
            "POLYGON((0 0,10 0,10 10,0 0),(1 1,2 1,2 2,1 1))",
            "polygon (( 1 1 , 1500 1 , 1500 1100 , 1 1 ))",
            "length:0 0 0 0:0",
            "length:0 0 100 0:25",
            "length:0 0 0.0000001 0:99999999999999999999",
            "length:0 0 100 0:0.00000000000000000001",
            "length:::",
            "rectangle:0 0 100 0 100 50 0 50:100 x 50",
            "rectangle:0 0 1 1 2 2 3 3:100 x 50",
            "rectangle:0 0 0 0 0 0 0 0:0 x 0",
            "rectangle:0 0 100 0 0 50 100 50:100 x 50",
            "coin:0 0 1 1 2 2:19",
            "|",
            "one.jpg|",
            "one.jpg|one.jpg",
            "one.jpg|two.jpg",
            "a1",
            "a1a1a1a1",
            "same.jpg",
            "../one.jpg",
            "/etc/passwd",
            "%s%n",
            "{0}",
            "${jndi:x}",
            "<script>",
            "&amp;",
            "]]>",
            "0 0",
            "1 2, 3 4",
            "1 2,3",
            "-5 -5, 1e9 1e9");

    private static final Map<String, List<String>> USUAL = Map.ofEntries(
            Map.entry("zone", List.of("hood", "roof", "door-front-left", "floor-front-left", "trunk-lid")),
            Map.entry("value", List.of("4.1", "100", "4-5", "none")),
            Map.entry("unit", List.of("mil", "um", "mils", "micron")),
            Map.entry("time", List.of("2026-05-02T10:15")),
            Map.entry("spot", List.of("A", "1")),
            Map.entry("view", List.of("left", "top")),
            Map.entry("x", List.of("0.5", "0", "1")),
            Map.entry("y", List.of("0.5", "0", "1")),
            Map.entry("when", List.of("before", "after")),
            Map.entry("on", List.of("bare", "shim")),
            Map.entry("nominal", List.of("5", "0")),
            Map.entry("shown", List.of("5.1", "0.1")),
            Map.entry("photo", List.of("one.jpg", "two.jpg", "three.jpg", "a1a1a1a1", "walk.mp4")),
            Map.entry("at", List.of("3", "0", "12")),
            Map.entry("sign", List.of("overspray", "orange-peel", "tape-line", "runs")),
            Map.entry("seen", List.of("yes", "no")),
            Map.entry("traces.kind", List.of("surface", "scale", "hole", "damage", "crack")),
            Map.entry("marks.kind", List.of("vin", "stamp", "tag", "casting", "label")),
            Map.entry("statements.kind", List.of("as built", "worn", "no rust", "replaced")),
            Map.entry("statements.photo", List.of("one.jpg", "one.jpg|two.jpg", "")),
            Map.entry("notes.shape", List.of("arrow", "box", "text", "measure")),
            Map.entry("notes.points", List.of("1 2, 300 400", "5 5")),
            Map.entry("notes.text", List.of("here", "")),
            Map.entry("coverage.evidence", List.of("photo", "spots", "rust")),
            Map.entry("coverage.want", List.of("0", "2")),
            Map.entry("left-out.photo", List.of("", "one.jpg")),
            Map.entry("hidden.why", List.of("a plate")),
            Map.entry("trials.value", List.of("", "12.5")),
            Map.entry("trials.unit", List.of("", "psi")),
            Map.entry("pins.at", List.of("")),
            Map.entry("statements.at", List.of("")),
            Map.entry("notes.at", List.of("")),
            Map.entry("gauge.unit", List.of("mil", "um")),
            Map.entry(
                    "outline",
                    List.of("POLYGON((10 10,500 10,500 400,10 10))", "POLYGON((0 0,1600 0,1600 1200,0 1200,0 0))")),
            Map.entry("scale", List.of("length:0 0 100 0:25", "rectangle:100 100 300 100 300 200 100 200:85 x 54")),
            Map.entry("part", List.of("engine block", "carburetor")),
            Map.entry("text", List.of("F 12 1", "124370N111111")),
            Map.entry("item", List.of("headlights", "horn")),
            Map.entry("result", List.of("works", "not tried")),
            Map.entry("severity", List.of("note", "grave")),
            Map.entry("feature", List.of("side marker lamps")),
            Map.entry("from", List.of("1970", "1971-04")),
            Map.entry("to", List.of("1972", "1971-05-30")));

    @TempDir
    Path folder;

    @Test
    void noRowIsAFaultOfTheProgram() throws Exception {
        int goodTables = 0;
        Bench bench = null;
        String visit = "";
        for (int n = 0; n < TABLES; n++) {
            if (n % TABLES_OF_A_VISIT == 0) {
                workOut(bench, visit, n);
                bench = new Bench(Files.createDirectories(folder.resolve("visit-" + n)));
                visit = bench.visit();
            }
            Random random = new Random(SEED * 1_000_003 + n);
            List<RowKind<?>> kinds = RowKinds.all();
            RowKind<?> kind = kinds.get(random.nextInt(kinds.size()));
            List<String> columns = new ArrayList<>(
                    kind.columns().stream().map(column -> column.name()).toList());
            Collections.shuffle(columns, random);
            Path file = folder.resolve("table.csv");
            Files.writeString(file, table(kind.word(), columns, random));
            Bench.Outcome outcome = bench.run("add", kind.word(), visit, file.toString(), "--keep-good");
            orderly(outcome, "seed " + SEED + ", table " + n + " of " + kind.word() + ":\n" + Files.readString(file));
            goodTables += outcome.status() < 2 ? 1 : 0;
        }
        workOut(bench, visit, TABLES);
        assertThat(goodTables).as("tables of which at least a row went in").isGreaterThan(TABLES / 20);
    }

    /** Most rows are good but for one or two cells, so that what is odd gets past everything that stands before it. */
    private static String table(String kind, List<String> columns, Random random) {
        String delimiter = List.of(",", ";", "\t").get(random.nextInt(3));
        StringBuilder out = new StringBuilder(String.join(delimiter, columns));
        if (random.nextInt(40) == 0) {
            out.append(delimiter).append(ODD.get(random.nextInt(ODD.size())));
        }
        int rows = 1 + random.nextInt(8);
        for (int row = 0; row < rows; row++) {
            List<String> cells = new ArrayList<>();
            for (String column : columns) {
                List<String> usual = USUAL.getOrDefault(kind + "." + column, USUAL.getOrDefault(column, List.of("")));
                cells.add(usual.get(random.nextInt(usual.size())));
            }
            for (int odd = random.nextInt(3); odd > 0; odd--) {
                cells.set(random.nextInt(cells.size()), ODD.get(random.nextInt(ODD.size())));
            }
            cells.replaceAll(cell -> random.nextInt(300) == 0 ? cell : "\"" + cell.replace("\"", "\"\"") + "\"");
            out.append('\n').append(String.join(delimiter, cells));
        }
        return out.append('\n').toString();
    }

    private void workOut(Bench bench, String visit, int n) {
        if (bench == null) {
            return;
        }
        String which = "seed " + SEED + ", what was taken in before table " + n + ", ";
        for (String verb : VERBS) {
            orderly(bench.run(verb, visit), which + verb);
            orderly(bench.run(verb, visit, "--json"), which + verb);
        }
        orderly(bench.run("pages", visit), which + "pages");
        orderly(bench.run("export", visit, folder.resolve("export-" + n).toString()), which + "export");
        orderly(
                bench.run(
                        "archive",
                        visit,
                        folder.resolve("archive-" + n + ".zip").toString()),
                which + "archive");
    }

    private static void orderly(Bench.Outcome outcome, String which) {
        assertThat(outcome.err()).as(which).doesNotContain("fault of the program", "Exception", "\tat ");
        assertThat(outcome.status()).as(which + outcome.err()).isBetween(0, 2);
        for (String said : List.of(outcome.out(), outcome.err())) {
            assertThat(said.chars().filter(c -> Character.isISOControl(c) && c != '\n' && c != '\t' && c != '\r'))
                    .as(which)
                    .isEmpty();
        }
    }
}
