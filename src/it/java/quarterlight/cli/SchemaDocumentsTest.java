package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.finish.history.Scenario;
import quarterlight.finish.number.ProcessModel;
import quarterlight.photo.MediaSamples;
import quarterlight.photo.speech.RecognizerModel;
import quarterlight.store.SampleVisit;
import quarterlight.table.json.JsonSchemas;
import quarterlight.units.Worded;

/**
 * Every document that the program writes holds by its schema, in the hands of a validator that is not ours, and a document that is broken anywhere does not:
 * a stray field, one left out, a value of another kind.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SchemaDocumentsTest {
    /** They print a text for the system and no document. */
    private static final Set<String> WITHOUT_JSON = Set.of("desk", "completion", "man");

    /** Tables that do not go to a buyer. */
    private static final Set<String> OF_ONES_OWN =
            Set.of("hidden", "left_out", "released", "decisions", "dropped", "intake_remarks", "clocks", "edit_log");

    /** Whose numbers have no more digits than somebody could have measured. */
    private static final Set<String> ROUNDED = Set.of(
            "zones", "history", "rust", "findings", "dates", "suggest", "gaps", "photos", "listen", "compare", "visit");

    private Path folder;

    private Bench bench;

    private int roundedNumbers;

    /** What was written, by the name of its schema. */
    private final Map<String, List<JsonNode>> documents = new LinkedHashMap<>();

    @BeforeAll
    void writeEveryDocument(@TempDir Path temporary) throws Exception {
        folder = temporary;
        bench = DemoOnce.bench(folder);
        JsonNode demo = keep("demo", DemoOnce.in(folder).toString());
        String a = demo.get("visits").get(0).asText();
        String b = demo.get("visits").get(1).asText();
        for (String name :
                List.of("zones", "history", "rust", "findings", "dates", "suggest", "gaps", "photos", "listen")) {
            verb(name, a);
            verb(name, b);
        }
        assertThat(verb("compare", a, b).get("cars")).hasSize(2);
        verb("compare", a, b, a);
        verb("audit", a);
        exported(a);
        found(Path.of(a).getParent().toString());
        String own = changed();
        keptAndProved(own);
        for (String name : List.of("schemas", "key")) {
            verb(name);
        }
        verb("diagram", "check", diagram());
        keep("error", bench.run("zones", "nowhere", "--json").out());
        everyTableFilled();
    }

    private String diagram() throws IOException {
        Path drawn = Path.of(System.getProperty("quarterlight.basedir", ".")).resolve("diagrams/coupe.svg");
        String without = Files.readString(drawn).replaceFirst("data-zone=\"hood\"", "data-zone=\"hat\"");
        return bench.file("own.svg", without);
    }

    private JsonNode verb(String... call) {
        String[] whole = Stream.concat(Stream.of(call), Stream.of("--json")).toArray(String[]::new);
        Bench.Outcome outcome = bench.run(whole);
        JsonNode document = keep(call[0], outcome.out());
        assertThat(document.has("error"))
                .as(String.join(" ", call) + ": " + outcome.err())
                .isFalse();
        return document;
    }

    private JsonNode keep(String schema, String document) {
        JsonNode read = SchemaCheck.read(document);
        if (ROUNDED.contains(schema)) {
            roundedNumbers += SchemaCheck.roundedNumbers(document);
        }
        documents.computeIfAbsent(schema, name -> new ArrayList<>()).add(read);
        return read;
    }

    private void keptAndProved(String visit) throws IOException {
        String whole = bench.folder("whole.zip");
        verb("sheet", visit, "--out", bench.folder("sheet.pdf"));
        verb("pages", visit, "--short", "--out", bench.folder("short"));
        verb("compare", visit, bench.folder("bare"), "--out", bench.folder("compared"));
        verb("backup", bench.folder("copies"), Path.of(visit).getParent().toString());
        verb("archive", visit, whole);
        verb("archive", visit, bench.folder("buyer.zip"), "--for-buyer");
        verb("audit", whole);
        verb("restore", whole, bench.folder("restored"));
        try (java.util.zip.ZipFile zip = new java.util.zip.ZipFile(whole)) {
            for (var entry : java.util.Collections.list(zip.entries())) {
                if (entry.getName().matches(".*/data/tables/.*\\.json")) {
                    keep(
                            "table",
                            new String(
                                    zip.getInputStream(entry).readAllBytes(), java.nio.charset.StandardCharsets.UTF_8));
                }
            }
        }
        assertThat(documents.get("table")).hasSizeGreaterThan(20);
    }

    private void exported(String visit) throws IOException {
        for (String form : List.of("tables", "coco", "geojson", "annotations")) {
            export(visit, form);
        }
        for (String option : List.of("--for-buyer", "--with-places")) {
            String target = bench.folder("export" + option);
            bench.run("export", visit, target, option).done();
            keep("visit", Files.readString(Path.of(target, "visit.json")));
        }
    }

    private void export(String visit, String form) throws IOException {
        Path target = Path.of(bench.folder(Path.of(visit).getFileName() + "." + form));
        verb("export", visit, target.toString(), "--as", form);
        boolean tables = form.equals("tables");
        keep(tables ? "visit" : form, Files.readString(tables ? target.resolve("visit.json") : target));
    }

    private void found(String home) throws IOException {
        verb("visits", home);
        assertThat(verb("visits", home, "--find", "replaced").get("found")).isNotEmpty();
        verb("visits", home, "--like", "3970010");
        verb("lists");
        for (String list : List.of("coverage", "walk", "trials", "patterns")) {
            verb("lists", list);
        }
        bench.run("lists", "walk", "--take", bench.file("walk.csv", "zone\nroof\nhood\n"))
                .done();
        String bundle = bench.folder("lists.json");
        verb("lists", "--export", bundle);
        keep("lists-bundle", Files.readString(Path.of(bundle)));
    }

    /** The verbs that change a visit, on one of their own. */
    private String changed() throws Exception {
        String visit =
                Files.createDirectory(folder.resolve("mine")).resolve("own").toString();
        verb("new", visit, "--car", "Larkspur", "--style", "coupe", "--year", "1967", "--timezone", "UTC");
        verb("set", visit, "client=Larkin", "odometer=81234 mi");
        Path card = Files.createDirectories(folder.resolve("card"));
        MediaSamples.wav(card.resolve("memo.wav"), 2);
        Files.copy(Path.of(MediaSamples.class.getResource("numbered.mp4").toURI()), card.resolve("walk.mp4"));
        TestPhotos.write(card.resolve("IMG_1.JPG"), 1, "2026:02:28 10:00:00");
        Files.writeString(card.resolve("broken.jpg"), "no photo");
        verb("intake", visit, card.toString());
        verb("listen", visit, "--recognize", RecognizerModel.file().toString());
        String words = bench.file(
                "walk.vtt",
                """
                WEBVTT

                00:00.500 --> 00:02.000
                The left front fender was replaced.

                00:02.000 --> 00:04.000
                The horn works.
                """);
        verb("words", visit, words, "--of", "walk.mp4");
        List<String> ids = new ArrayList<>();
        verb("listen", visit)
                .get("drafts")
                .forEach(draft -> ids.add(draft.get("id").asText()));
        assertThat(ids).hasSizeGreaterThan(1);
        verb("listen", visit, "--keep", ids.get(0));
        verb("listen", visit, "--drop", ids.get(1));
        verb("listen", visit);
        verb("intake", visit, "--frame-of", "walk.mp4", "--at", "1");
        String camera =
                verb("photos", visit).get("cameras").get(0).get("camera").asText();
        verb("clock", visit, "--camera", camera, "--shift", "+00:01:00");
        verb("photos", visit);
        verb("add", "readings", visit, bench.file("good.csv", "zone,value,unit\nhood,5.1,mil\nhood,none,\n"));
        verb(
                "add",
                "readings",
                visit,
                bench.file("bad.csv", "zone,value,unit\nhat,5.1,mil\nhood,x,mil\n"),
                "--keep-good");
        String bare = bench.folder("bare");
        verb("new", bare, "--car", "Bare", "--style", "pickup", "--timezone", "UTC");
        for (String name :
                List.of("zones", "history", "rust", "findings", "dates", "suggest", "gaps", "photos", "listen")) {
            verb(name, bare);
            verb(name, visit);
        }
        return visit;
    }

    /** A visit that has rows of every kind, with every column filled in one and empty in another. */
    private void everyTableFilled() throws IOException {
        Path sample = Files.createDirectories(folder.resolve("sample"));
        try (InputStream in = SampleVisit.class.getResourceAsStream("schema-0011.db")) {
            Files.copy(in, sample.resolve("visit.db"));
        }
        bench.run("set", sample.toString(), "diagram=shipped").done();
        for (String form : List.of("tables", "coco", "geojson", "annotations")) {
            export(sample.toString(), form);
        }
        verb("photos", sample.toString());
    }

    @TestFactory
    Stream<DynamicTest> everyDocumentHolds() {
        return documents.entrySet().stream()
                .map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> {
                    SchemaCheck schema = SchemaCheck.of(entry.getKey());
                    for (JsonNode document : entry.getValue()) {
                        assertThat(schema.objections(document))
                                .as(document.toString()
                                        .substring(
                                                0,
                                                Math.min(
                                                        300, document.toString().length())))
                                .isEmpty();
                    }
                }));
    }

    @TestFactory
    Stream<DynamicTest> noBrokenDocumentHolds() {
        return documents.entrySet().stream()
                .map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> {
                    SchemaCheck schema = SchemaCheck.of(entry.getKey());
                    Set<String> unnoticed = new TreeSet<>();
                    for (JsonNode document : entry.getValue()) {
                        unnoticed.addAll(schema.unnoticed(document));
                    }
                    unnoticed.removeIf(what -> mayStand(entry.getKey(), what));
                    assertThat(unnoticed).isEmpty();
                }));
    }

    /** What a break may do unnoticed: cells of a list are by the columns of that list; and some fields stand only where there is something to say. */
    private static boolean mayStand(String schema, String what) {
        String sometimes =
                switch (schema) {
                    case "lists" -> "\\.rows\\[\\].*";
                    case "coco", "geojson", "annotations" ->
                        ".*(note|patch|text|at|scale|outline|points|keypoints|skeleton) left out";
                    case "compare" -> ".*\\.c left out";
                    case "visit", "table" -> ".*(latitude_deg|longitude_deg|diagram) left out";
                    default -> "";
                };
        return what.matches(sometimes)
                || schema.equals("visit") && OF_ONES_OWN.contains(what.replaceAll("\\W|left out", ""));
    }

    @Test
    void numbersAreRounded() {
        assertThat(roundedNumbers).isGreaterThan(1000);
    }

    @Test
    void everySchemaHasADocumentAndEveryVerbWithOneASchema() {
        assertThat(documents.keySet()).containsExactlyInAnyOrderElementsOf(JsonSchemas.names());
        assertThat(JsonSchemas.names())
                .containsAll(Verbs.NAMES.stream()
                        .filter(verb -> !WITHOUT_JSON.contains(verb))
                        .toList());
    }

    @Test
    void everySchemaIsOneByTheSchemaOfSchemas() {
        SchemaCheck meta = SchemaCheck.ofSchemas();
        Set<String> ids = new TreeSet<>();
        for (String name : JsonSchemas.names()) {
            JsonNode schema = SchemaCheck.read(JsonSchemas.text(name));
            assertThat(meta.objections(schema)).as(name).isEmpty();
            assertThat(schema.get("$id").asText()).isEqualTo("urn:quarterlight:schema:" + name);
            assertThat(ids.add(schema.get("title").asText())).as(name).isTrue();
        }
        assertThat(meta.objections(SchemaCheck.read("{\"type\":\"car\"}"))).isNotEmpty();
    }

    @Test
    void closedListsAreThoseOfTheProgram() {
        Map<String, List<String>> words = SchemaWords.all();
        Set<String> met = new TreeSet<>();
        for (String name : JsonSchemas.names()) {
            JsonNode defs = SchemaCheck.read(JsonSchemas.text(name)).path("$defs");
            defs.properties().forEach(def -> {
                if (words.containsKey(def.getKey())) {
                    List<String> listed = new ArrayList<>();
                    def.getValue().get("enum").forEach(word -> listed.add(word.asText()));
                    assertThat(listed).as(name + ": " + def.getKey()).isEqualTo(words.get(def.getKey()));
                    met.add(def.getKey());
                }
            });
        }
        assertThat(met).containsExactlyInAnyOrderElementsOf(words.keySet());
        JsonNode history = SchemaCheck.read(JsonSchemas.text("history")).get("properties");
        assertThat(keys(history.at("/scenarios"))).isEqualTo(words(Scenario.values()));
        assertThat(keys(history.at("/zones/items/properties/jury"))).isEqualTo(words(ProcessModel.values()));
    }

    private static List<String> keys(JsonNode object) {
        List<String> keys = new ArrayList<>();
        object.get("properties").fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    private static List<String> words(Worded... constants) {
        return Stream.of(constants).map(Worded::word).toList();
    }
}
