package quarterlight.cli.library;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.cli.Bench;
import quarterlight.edit.library.VisitLibrary;
import quarterlight.edit.library.VisitOrder;
import quarterlight.store.VisitOpening;
import quarterlight.store.VisitStore;
import quarterlight.table.ZoneTable;
import quarterlight.task.Progress;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.pin.Recorded;

/** Many visits: listed, searched, archived; and lists that go to another computer. */
class VisitsVerbTest {
    private static final String STATEMENTS =
            """
            zone,text,origin,condition
            quarter-left,Panel from the parts trade,replaced,
            hood,Naïve repair,,filler
            """;

    @TempDir
    private Path folder;

    private Bench bench;
    private String cars;

    @BeforeEach
    void makeVisits() throws IOException {
        bench = new Bench(Files.createDirectory(folder.resolve("home")));
        cars = Files.createDirectories(folder.resolve("cars/2026")).getParent().toString();
        visit("2026/sorrel", "Sorrel coupe", "2026-04-18", "Larkin");
        visit("2026/teasel", "Teasel wagon", "2026-05-02", "Abbot");
        visit("bryony", "Bryony pickup", "2025-11-30", "larkin");
        bench.run("add", "statements", path("2026/sorrel"), bench.file("s.csv", STATEMENTS))
                .done();
        bench.run(
                        "add",
                        "marks",
                        path("bryony"),
                        bench.file("m.csv", "part,kind,text\nblock,casting,3970010\nhead,casting,3991492\n"))
                .done();
        bench.run("add", "marks", path("2026/teasel"), bench.file("n.csv", "part,kind,text\nblock,casting,39700?4\n"))
                .done();
    }

    private void visit(String name, String car, String date, String client) {
        bench.run("new", path(name), "--car", car, "--style", "coupe", "--timezone", "UTC")
                .done();
        bench.run("set", path(name), "date=" + date, "client=" + client).done();
    }

    private String path(String name) {
        return Path.of(cars, name).toString();
    }

    private JsonNode json(String... call) {
        return bench.run(Stream.concat(Stream.of("visits", cars, "--json"), Stream.of(call))
                        .toArray(String[]::new))
                .done()
                .json();
    }

    private static List<String> texts(JsonNode list, String key) {
        List<String> texts = new ArrayList<>();
        list.forEach(one -> texts.add(one.get(key).asText()));
        return texts;
    }

    @Test
    void allAreListedInTheOrderAskedFor() {
        assertThat(texts(json().get("visits"), "car")).containsExactly("Teasel wagon", "Sorrel coupe", "Bryony pickup");
        assertThat(texts(json("--by", "car").get("visits"), "car"))
                .containsExactly("Bryony pickup", "Sorrel coupe", "Teasel wagon");
        assertThat(texts(json("--by", "client").get("visits"), "client")).containsExactly("Abbot", "Larkin", "larkin");
        assertThat(bench.run("visits", path("2026")).done().out())
                .contains("2 visits.")
                .doesNotContain("Bryony");
    }

    @Test
    void everyWordIsFoundWhereverItStands() {
        JsonNode found = json("--find", "replaced quarter").get("found");
        assertThat(texts(found, "text")).containsExactly("Panel from the parts trade; replaced");
        assertThat(texts(found, "visit")).containsExactly(path("2026/sorrel"));
        assertThat(json("--find", "NAIVE").get("found")).hasSize(1);
        assertThat(json("--find", "fill hood").get("found")).hasSize(1);
        assertThat(json("--find", "replaced hood").get("found")).isEmpty();
        assertThat(texts(json("--find", "larkin").get("visits"), "car"))
                .containsExactly("Sorrel coupe", "Bryony pickup");
        assertThat(json("--find", "\"' OR * --").get("found")).isEmpty();
    }

    @Test
    void numbersLikeOneAreFoundNearestFirst() {
        assertThat(texts(json("--like", "3970010").get("found"), "text"))
                .containsExactly("block; casting; 3970010", "block; casting; 39700?4");
        assertThat(json("--like", "1111111").get("found")).isEmpty();
        bench.run("visits", cars, "--like", "1", "--find", "x").complains(2, "not both");
    }

    @Test
    void whatIsFoundNamesItsRowInTheVisit() throws Exception {
        Path settings = folder.resolve("home");
        Path bryony = Path.of(path("bryony"));
        VisitOpening opening = VisitOpening.by(Clock.systemUTC());
        try (VisitLibrary library =
                        VisitLibrary.of(List.of(Path.of(cars)), settings, ZoneTable.load(), opening, Progress.NONE);
                VisitStore store = VisitStore.openForReading(bryony)) {
            Recorded<Mark> head = store.read().marks().get(1);
            assertThat(library.find(head.value().text(), VisitOrder.DATE))
                    .extracting(hit -> hit.row().row())
                    .containsExactly(Optional.of(head.id()));
            assertThat(library.find("pickup", VisitOrder.DATE))
                    .as("the car is no row")
                    .extracting(hit -> hit.row().row())
                    .containsExactly(Optional.empty());
        }
    }

    @Test
    void theIndexFollowsTheVisitsAndMayBeDeletedOrDamaged() throws IOException {
        assertThat(json().get("visits")).hasSize(3);
        bench.run("set", path("bryony"), "client=Somebody else altogether").done();
        assertThat(json("--find", "altogether").get("visits")).hasSize(1);
        try (Stream<Path> all = Files.walk(Path.of(path("bryony")))) {
            for (Path file : all.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
        assertThat(json("--find", "altogether").get("found")).isEmpty();
        Path index = folder.resolve("home/visits.index");
        Files.writeString(index, "no database, but long enough to be looked at as one, at least a little");
        assertThat(json().get("visits")).hasSize(2);
        byte[] pages = Files.readAllBytes(index);
        java.util.Arrays.fill(pages, 4096, pages.length, (byte) 0x5A);
        Files.write(index, pages);
        assertThat(json("--find", "replaced").get("found"))
                .as("pages damaged behind a sound head")
                .hasSize(1);
        Files.delete(index);
        assertThat(json("--find", "replaced").get("found")).hasSize(1);
    }

    @Test
    void visitsAreOnlyReadAndWhatCannotBeReadIsTold() throws IOException {
        List<String> before = files();
        Files.createDirectory(Path.of(cars, "broken"));
        Files.writeString(Path.of(cars, "broken/visit.db"), "this is no database at all, but long enough to look at");
        Bench.Outcome outcome = bench.run("visits", cars, "--json").complains(1, "broken", "cannot be read");
        assertThat(outcome.json().get("visits")).hasSize(3);
        assertThat(outcome.json().get("remarks")).hasSize(1);
        Files.delete(Path.of(cars, "broken/visit.db"));
        Files.delete(Path.of(cars, "broken"));
        assertThat(files()).isEqualTo(before);
        bench.run("visits", path("nowhere")).complains(2, "is not there", "drive is connected");
    }

    private List<String> files() throws IOException {
        try (Stream<Path> all = Files.walk(Path.of(cars))) {
            List<String> files = new ArrayList<>();
            for (Path file : all.filter(Files::isRegularFile).sorted().toList()) {
                files.add(file + " " + Files.getLastModifiedTime(file) + " " + Files.size(file));
            }
            return files;
        }
    }

    @Test
    void everyVisitIsArchivedOnceAndProvedEachTime() throws IOException {
        String target = folder.resolve("copies").toString();
        JsonNode first = bench.run("backup", target, cars, "--json").done().json();
        assertThat(texts(first.get("visits"), "made")).containsExactly("true", "true", "true");
        bench.run("set", path("bryony"), "client=Other").done();
        JsonNode second = bench.run("backup", target, cars, "--json").done().json();
        assertThat(texts(second.get("visits"), "made")).containsExactly("false", "false", "true");
        Path archive = Path.of(second.get("visits").get(0).get("archive").asText());
        bench.run("audit", archive.toString()).done();
        byte[] bytes = Files.readAllBytes(archive);
        for (int i = 1; i < 20; i++) {
            bytes[bytes.length * i / 20] ^= 0x55;
        }
        Files.write(archive, bytes);
        Bench.Outcome damaged = bench.run("backup", target, cars);
        assertThat(damaged.status()).isEqualTo(1);
        assertThat(damaged.out()).contains("2 of 3 visits");
    }

    @Test
    void listsOfOnesOwnGoToAnotherComputerAsOneFile() throws IOException {
        bench.run("lists", "walk", "--take", bench.file("w.csv", "zone\nroof\nhood\n"))
                .done();
        Path phrases = Files.writeString(folder.resolve("home/phrases.txt"), "Seam sealer is original\nSpare is dry\n");
        String bundle = bench.folder("mine.json");
        bench.run("lists", "--export", bundle).done();
        Path second = Files.createDirectory(folder.resolve("second"));
        Files.writeString(second.resolve("phrases.txt"), "Spare is dry\nTop is tight\n");
        Bench other = new Bench(second);
        assertThat(other.run("lists", "--import", bundle).done().out()).contains("coverage-walk.csv", "phrases.txt");
        assertThat(other.run("lists", "walk").done().out())
                .isEqualTo(bench.run("lists", "walk").done().out());
        assertThat(second.resolve("phrases.txt")).hasContent("Seam sealer is original\nSpare is dry\nTop is tight\n");
        assertThat(phrases).hasContent("Seam sealer is original\nSpare is dry\n");
        other.run("lists", "--import", other.file("no.json", "{\"format\":\"else\"}"))
                .complains(2, "no file of lists");
        String bad = Files.readString(Path.of(bundle)).replace("roof", "spoiler-of-nobody");
        other.run("lists", "--import", other.file("bad.json", bad)).complains(2, "coverage-walk.csv", "cannot be used");
        String outside = Files.readString(Path.of(bundle)).replace("coverage-walk.csv", "../coverage-walk.csv");
        other.run("lists", "--import", other.file("out.json", outside)).complains(2, "no list of this program");
        bench.run("lists", "--export", bundle).complains(2, "exists already");
    }
}
