package quarterlight.edit.export;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.batik.parser.AWTPathProducer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.io.WKTReader;
import quarterlight.cli.Bench;
import quarterlight.language.Language;

/** What was drawn goes out in every form and comes back the same; what is not a buyer's stays. */
class ExchangeTest {
    private static final String TRACES =
            """
            photo,kind,outline,scale,zone,patch,note
            two.jpg,scale,"POLYGON ((100.25 200, 300 200, 300 380.125, 100.25 380.125, 100.25 200), (150 250, 150 300, 200 300, 200 250, 150 250))",length:10 10 110 10:85.6,roof,lip,"=1+1, 塗装 ""q\"""
            two.jpg,hole,"POLYGON ((10 10, 20 10, 15 20, 10 10))",rectangle:1 1 101 1 101 61 1 61:85.6 x 53.98,roof,,
            """;
    private static final String NOTES =
            """
            photo,shape,points,text,scale,at
            two.jpg,arrow,"500.5 400, 300 200",look here,,
            two.jpg,box,"300 400, 100 200.75",,,
            two.jpg,text,20 30,-2 mil <here>,,
            two.jpg,measure,"10 10, 400 10",gap,length:10 10 110 10:85.6,
            """;

    @TempDir
    private Path folder;

    private Bench bench;
    private String visit;

    @BeforeEach
    void drawOnAPhoto() {
        bench = new Bench(folder);
        visit = bench.visit();
        bench.run("add", "traces", visit, bench.file("traces.csv", TRACES)).done();
        bench.run("add", "notes", visit, bench.file("notes.csv", NOTES)).done();
    }

    private String exported(String form, String... more) {
        String target = bench.folder(form + more.length + ".out");
        bench.run(Stream.concat(Stream.of("export", visit, target, "--as", form), Stream.of(more))
                        .toArray(String[]::new))
                .done();
        return target;
    }

    private static List<String> rows(Path export, String table) throws IOException {
        return Files.readAllLines(export.resolve(table + ".csv"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"coco", "geojson", "annotations", "xlsx"})
    void whatWasDrawnComesBackAsItWas(String form) throws Exception {
        Path before = Path.of(exported("tables"));
        String file = exported(form);
        Bench other = new Bench(Files.createDirectory(folder.resolve("other")));
        String second = other.visit();
        for (String table : List.of("traces", "notes")) {
            List<String> call = new ArrayList<>(List.of("add", table, second, file));
            if (form.equals("xlsx")) {
                call.addAll(List.of("--sheet", table));
            }
            other.run(call.toArray(String[]::new)).done();
        }
        String after = other.folder("after");
        other.run("export", second, after).done();
        for (String table : List.of("traces", "notes")) {
            assertThat(rows(Path.of(after), table))
                    .isEqualTo(rows(before, table))
                    .hasSizeGreaterThan(2);
        }
    }

    @Test
    void coordinatesAreThoseOfAnotherReader() throws Exception {
        var outline = new WKTReader()
                .read(TRACES.lines().skip(1).findFirst().orElseThrow().split("\"")[1]);
        ObjectMapper json = new ObjectMapper();
        JsonNode coco = json.readTree(Path.of(exported("coco")).toFile());
        JsonNode first = coco.get("annotations").get(0);
        assertThat(first.get("area").asDouble()).isCloseTo(outline.getArea(), within(0.001));
        assertThat(first.get("bbox").toString()).isEqualTo("[100.25,200,199.75,180.125]");
        List<String> pairs = new ArrayList<>();
        JsonNode ring = first.get("segmentation").get(0);
        for (int i = 0; i < ring.size(); i += 2) {
            pairs.add(ring.get(i) + " " + ring.get(i + 1));
        }
        pairs.add(pairs.get(0));
        double cut = new WKTReader()
                .read("POLYGON ((" + String.join(", ", pairs) + "))")
                .getArea();
        assertThat(cut).isIn(outline.getArea(), outline.getArea() + 2 * 2500);
        JsonNode marked = json.readTree(Path.of(exported("annotations")).toFile())
                .get("first")
                .get("items")
                .get(0)
                .get("target");
        String path =
                marked.get("selector").get("value").asText().split("d=\"")[1].split("\"")[0];
        var shape =
                AWTPathProducer.createShape(new java.io.StringReader(path), java.awt.geom.PathIterator.WIND_EVEN_ODD);
        assertThat(shape.getBounds2D().getWidth())
                .isEqualTo(outline.getEnvelopeInternal().getWidth());
        assertThat(shape.contains(175, 275)).as("within the inner ring").isFalse();
        assertThat(shape.contains(120, 220)).isTrue();
    }

    /** What other programs read is the same from a window that speaks German; a drawing is for people and speaks as the window does. */
    @ParameterizedTest
    @ValueSource(strings = {"tables", "coco", "geojson", "annotations", "xmp"})
    void exportsAreTheSameWhateverTheWindowSpeaks(String form) throws Exception {
        Map<String, String> english = files(Path.of(exported(form)));
        Map<String, String> german = files(Path.of(Language.GERMAN.during(() -> exported(form, "--json"))));
        assertThat(english).isNotEmpty();
        assertThat(german).containsOnlyKeys(english.keySet());
        german.forEach((file, text) -> assertThat(text).as(file).isEqualTo(english.get(file)));
    }

    /** Every file below a path by its place there, or the only one. */
    private static Map<String, String> files(Path made) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(made)) {
            for (Path file : all.filter(Files::isRegularFile)
                    .filter(one -> !one.toString().endsWith(".svg"))
                    .toList()) {
                files.put(made.relativize(file).toString(), new String(Files.readAllBytes(file), ISO_8859_1));
            }
        }
        return files;
    }

    @Test
    void spreadsheetsGetAMarkOnlyIfAsked() throws IOException {
        assertThat(Files.readString(Path.of(exported("tables", "--bom")).resolve("traces.csv")))
                .startsWith("\uFEFFphoto,");
        assertThat(Files.readString(Path.of(exported("tables")).resolve("traces.csv")))
                .startsWith("photo,");
        bench.run(
                        "add",
                        "traces",
                        visit,
                        Path.of(bench.folder("tables1.out"), "traces.csv").toString())
                .done();
    }

    @Test
    void aFileGoesToStandardOutputAndAFolderDoesNot() throws IOException {
        String printed =
                bench.run("export", visit, "-", "--as", "geojson").done().out();
        assertThat(printed).isEqualTo(Files.readString(Path.of(exported("geojson")), UTF_8));
        bench.run("export", visit, "-").complains(2, "cannot go to standard output");
        bench.run("export", visit, "-", "--as", "coco", "--json").complains(2, "cannot go to standard output");
        bench.run("export", visit, "x", "--as", "cocoa").complains(2, "no form \"cocoa\"", "nearest is coco");
        bench.run("export", visit, "x", "--for-buyer", "--with-places").complains(2, "never go to a buyer");
    }

    @ParameterizedTest
    @ValueSource(strings = {"coco", "geojson", "annotations", "xlsx", "xmp", "tables"})
    void aBuyerGetsNothingOfAZoneLeftOut(String form) throws Exception {
        bench.run("add", "left-out", visit, bench.file("out.csv", "zone\nroof\n"))
                .done();
        String all = text(Path.of(exported(form)));
        String open = text(Path.of(exported(form, "--for-buyer")));
        assertThat(all).contains("塗装", "look here");
        assertThat(open).doesNotContain("塗装", "look here", "two.jpg");
    }

    private static String text(Path made) throws IOException {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> files = Files.walk(made)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                all.append(file.getFileName());
                byte[] bytes = Files.readAllBytes(file);
                if (bytes.length > 1 && bytes[0] == 'P' && bytes[1] == 'K') {
                    try (var zip = new java.util.zip.ZipInputStream(Files.newInputStream(file))) {
                        while (zip.getNextEntry() != null) {
                            all.append(new String(zip.readAllBytes(), UTF_8));
                        }
                    }
                } else {
                    all.append(new String(bytes, UTF_8));
                }
            }
        }
        return all.toString();
    }
}
