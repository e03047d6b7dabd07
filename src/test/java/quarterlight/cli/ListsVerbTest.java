package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lists of one's own: what visits must bring by style and construction, functions to try, date patterns. */
class ListsVerbTest {
    @TempDir
    Path folder;

    private Bench bench;

    @BeforeEach
    void setUp() {
        bench = new Bench(folder);
    }

    private String visit(String name, String... car) {
        String path = folder.resolve(name).toString();
        List<String> call = new ArrayList<>(List.of("new", path, "--car", name));
        call.addAll(List.of(car));
        bench.run(call.toArray(String[]::new)).done();
        return path;
    }

    private List<String> gaps(String visit) {
        List<String> found = new ArrayList<>();
        JsonNode gaps = bench.run("gaps", visit, "--json").done().json().get("gaps");
        gaps.forEach(gap -> found.add(gap.get("zone").asText() + " "
                + gap.get("want").asInt() + " " + gap.get("lacks").asText()));
        return found;
    }

    @Test
    void onesOwnCoverageTakesThePlaceOfOursByStyleAndConstruction() {
        String own = bench.file(
                "own.csv",
                """
                wants;number;zones;styles;construction;why
                spots;7;hood roof;coupe;;Seven spots.
                photo;2;frame-side-rail-left;;body-on-frame;
                photo;3;bed-floor;pickup;;
                """);
        String coupe = visit("coupe", "--style", "coupe");
        String pickup = visit("pickup", "--style", "pickup", "--construction", "body-on-frame");
        assertThat(gaps(coupe)).hasSizeGreaterThan(100);
        bench.run("lists", "coverage", "--take", own).done();
        assertThat(gaps(coupe)).containsExactly("hood 7 spots", "roof 7 spots");
        assertThat(gaps(pickup)).containsExactly("bed-floor 3 photo", "frame-side-rail-left 2 photo");
        bench.run("lists", "coverage", "--shipped").done();
        assertThat(gaps(coupe)).hasSizeGreaterThan(100);
        assertThat(folder.resolve("coverage.csv.before")).exists();
    }

    @Test
    void onesOwnWalkOrdersTheGaps() {
        String coupe = visit("coupe", "--style", "coupe");
        bench.run(
                        "lists",
                        "coverage",
                        "--take",
                        bench.file("own.csv", "wants,number,zones\nspots,1,hood roof decklid\n"))
                .done();
        bench.run("lists", "walk", "--take", bench.file("walk.csv", "zone\nroof\ndecklid\n"))
                .done();
        assertThat(gaps(coupe)).containsExactly("roof 1 spots", "decklid 1 spots", "hood 1 spots");
    }

    @ParameterizedTest
    @ValueSource(strings = {"coverage", "walk", "trials", "patterns"})
    void whatIsPrintedCanBeTakenAgainAndSaysTheSame(String list) {
        String printed = bench.run("lists", list).done().out();
        bench.run("lists", list, "--take", bench.file("again.csv", printed)).done();
        assertThat(bench.run("lists", list).done().out()).isEqualTo(printed);
        JsonNode document = bench.run("lists", list, "--json").done().json();
        assertThat(document.get("own").asBoolean()).isTrue();
        assertThat(document.get("rows").size()).isEqualTo((int) printed.lines().count() - 1);
    }

    @Test
    void trialsOfOnesOwnHaveTheirUnits() {
        String coupe = visit("coupe", "--style", "coupe");
        bench.run("lists", "trials", "--take", bench.file("own.csv", "group,item,unit\nengine,Vacuum at idle,kPa\n"))
                .done();
        JsonNode untried = bench.run("gaps", coupe, "--json").done().json().get("untried");
        assertThat(untried.findValuesAsText("item")).containsExactly("Vacuum at idle");
        assertThat(bench.run("lists", "trials").done().out()).contains("engine,Vacuum at idle,kPa");
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            coverage | wants,number,zones/spots,3,hod          | line 2, column zones: there is no zone "hod"; the nearest is hood
            coverage | wants,number/spots,0                    | line 2, column number: "0" is not a whole number from 1
            coverage | wants,number/spot,3                     | line 2, column wants: "spot" is none of photo, spots
            coverage | wants,number,styles/spots,3,coupe van   | column styles: "van" is none of
            coverage | wants,number,color/spots,3,red          | line 1: there is no column "color"; the columns are wants, number
            coverage | number/3                                | line 1: the header lacks wants
            coverage | wants,number                            | has no row
            coverage | wants,number,finish/spots,3,perhaps     | column finish: "perhaps" is neither yes nor no
            walk     | zone/roof/roof                          | line 3, column zone: "roof" stands twice
            trials   | group,item/engine,Idles/engine,idles    | line 3, column item: "idles" stands twice
            trials   | group,item/motor,Idles                  | line 2, column group: "motor" is none of engine
            patterns | name,form/shop,{yy}{letter}             | line 2, column form
            patterns | name,form/shop,{yy}/shop,{y}{M}         | line 3, column name
            """)
    void aListThatIsNoneIsRefusedAtItsCellAndNothingChanges(String list, String text, String reason) {
        String own = bench.file("own.csv", text.replace('/', '\n') + "\n");
        bench.run("lists", list, "--take", own).complains(2, "own.csv", reason.strip());
        assertThat(bench.run("lists").done().out()).doesNotContain("one's own  ");
        assertThat(folder.toFile().list()).containsExactly("own.csv");
    }

    @Test
    void aDamagedListOfOnesOwnIsNamedByTheVerbThatNeedsIt() throws Exception {
        String coupe = visit("coupe", "--style", "coupe");
        Files.writeString(folder.resolve("coverage.csv"), "wants,number\nphotos,1\n");
        bench.run("gaps", coupe).complains(2, "coverage.csv", "line 2, column wants");
        bench.run("lists", "coverage", "--shipped").done();
        bench.run("gaps", coupe).done();
    }

    @Test
    void aCallThatSaysTooLittleOrTooMuchIsRefused() {
        bench.run("lists", "--take", bench.file("own.csv", "zone\nroof\n")).complains(2, "name one list");
        bench.run("lists", "walks").complains(2, "coverage, walk, trials, patterns");
        bench.run("lists", "walk", "--take", folder.resolve("none.csv").toString())
                .complains(2, "none.csv", "cannot be read");
        assertThat(bench.run("lists", "--json").done().json().get("lists").findValuesAsText("own"))
                .containsOnly("false");
    }

    @Test
    void aMarkThatAsksForAnUnknownPatternIsRefused() {
        String coupe = visit("coupe", "--style", "coupe");
        String rows = bench.file(
                "marks.csv", "part,kind,text,pattern\nBlock,casting,71/B/18,shop\nHead,casting,1B09,year-leter-day\n");
        JsonNode refused = bench.run("add", "marks", coupe, rows, "--json")
                .complains(2, "marks.csv")
                .json()
                .get("refused");
        assertThat(refused.findValuesAsText("column")).containsExactly("pattern", "pattern");
        assertThat(refused.get(1).get("reason").asText()).contains("the nearest is year-letter-day");
        bench.run("lists", "patterns", "--take", bench.file("own.csv", "name,form\nshop,{yy}/{M}/{d}\n"))
                .done();
        bench.run(
                        "add",
                        "marks",
                        coupe,
                        bench.file(
                                "good.csv",
                                "part,kind,text,pattern\nBlock,casting,71/B/18,shop\nA,tag,77,none\nB,tag,Q71,Q{yy}\n"))
                .done();
    }
}
