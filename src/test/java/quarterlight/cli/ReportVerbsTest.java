package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The documents that other tools rely on have the keys and meanings that the design promises. */
class ReportVerbsTest {
    @TempDir
    private Path folder;

    private Bench bench;
    private String visit;

    @BeforeEach
    void fillAVisit() {
        bench = new Bench(folder);
        visit = bench.visit();
    }

    private void add(String kind, String... lines) {
        bench.run("add", kind, visit, bench.file(kind + ".csv", String.join("\n", lines) + "\n"))
                .done();
    }

    private static List<String> keys(JsonNode node) {
        List<String> keys = new ArrayList<>();
        for (Iterator<String> names = node.fieldNames(); names.hasNext(); ) {
            keys.add(names.next());
        }
        return keys;
    }

    private static JsonNode zone(JsonNode document, String id) {
        for (JsonNode zone : document.get("zones")) {
            if (zone.get("zone").asText().equals(id)) {
                return zone;
            }
        }
        throw new AssertionError(id + " is not in " + document);
    }

    @Test
    void zonesGivesTheStatisticsOfEveryZoneThatHasAReading() {
        // mean 4.5 mil of the spots 4 and 5; a spot is the mean of its readings
        add(
                "readings",
                "zone,value,unit,spot,exclude",
                "roof,3.9,mil,a,",
                "roof,4.1,mil,a,",
                "roof,5,mil,b,",
                "roof,50,mil,c,slipped",
                "roof,none,,d,",
                "roof,over,,e,",
                "hood,none,,,");
        JsonNode json = bench.run("zones", visit, "--json").done().json();
        assertThat(json.get("unit").asText()).isEqualTo("um");
        assertThat(json.get("zones")).hasSize(2);
        JsonNode roof = zone(json, "roof");
        assertThat(keys(roof))
                .contains(
                        "zone",
                        "readings",
                        "excluded",
                        "no_metal",
                        "over_range",
                        "spots",
                        "mean_um",
                        "sd_um",
                        "ci95_low_um",
                        "ci95_high_um",
                        "median_um",
                        "mad_um",
                        "min_um",
                        "max_um",
                        "outliers");
        assertThat(roof.get("readings").asInt()).isEqualTo(3);
        assertThat(roof.get("excluded").asInt()).isEqualTo(1);
        assertThat(roof.get("no_metal").asInt()).isEqualTo(1);
        assertThat(roof.get("over_range").asInt()).isEqualTo(1);
        assertThat(roof.get("spots").asInt()).isEqualTo(2);
        assertThat(roof.get("mean_um").asDouble()).isCloseTo(4.5 * 25.4, within(1e-9));
        JsonNode hood = zone(json, "hood");
        assertThat(hood.get("readings").asInt()).isZero();
        assertThat(hood.get("mean_um").isNull()).isTrue();
        assertThat(hood.get("sd_um").isNull()).isTrue();
        assertThat(bench.run("zones", visit).done().out()).contains("roof").contains("114");
    }

    @Test
    void anEmptyVisitGivesEmptyListsAndNoNumbers() {
        assertThat(bench.run("zones", visit, "--json").done().json().get("zones"))
                .isEmpty();
        assertThat(bench.run("rust", visit, "--json").done().json().get("traces"))
                .isEmpty();
        assertThat(bench.run("zones", visit).done().out()).contains("No readings yet");
        JsonNode roof = zone(bench.run("rust", visit, "--json").done().json(), "roof");
        assertThat(roof.get("looked_at").asBoolean()).isFalse();
        assertThat(roof.get("rust_mm2").isNull()).isTrue();
        assertThat(roof.get("need").isNull()).isTrue();
    }

    @Test
    void aCarOfWhichNothingIsKnownGetsNoChances() {
        assertThat(bench.run("history", visit).done().out())
                .contains("nothing is said of the finish")
                .doesNotContain("as-built", "Factory level");
        JsonNode unknown = bench.run("history", visit, "--json").done().json();
        assertThat(unknown.get("car_level_um").isNull()).isTrue();
        assertThat(unknown.get("car_level_sd_um").isNull()).isTrue();
        assertThat(unknown.get("scenarios").isNull()).isTrue();
        assertThat(keys(unknown.get("prior"))).containsExactly("car_level_um", "car_level_sd_um", "scenarios");
        assertThat(unknown.at("/measure_next/0/zone").asText())
                .as("large panels first, in the order of the walk")
                .isEqualTo("hood");
        add("readings", "zone,value,unit", "roof,4.5,mil");
        assertThat(bench.run("history", visit).done().out()).contains("as-built", "Factory level");
    }

    @Test
    void historyGivesEveryOuterPanelItsChances() {
        add("readings", "zone,value,unit", "roof,4.5,mil", "roof,4.7,mil", "hood,25,mil", "hood,28,mil");
        JsonNode json = bench.run("history", visit, "--json").done().json();
        assertThat(keys(json)).contains("profile", "car_level_um", "car_level_sd_um", "scenarios", "zones");
        assertThat(json.get("prior").isNull()).isTrue();
        assertThat(keys(json.get("scenarios")))
                .containsExactly("as-built", "some-panels", "whole-car-over", "whole-car-stripped");
        JsonNode hood = zone(json, "hood");
        assertThat(keys(hood))
                .contains(
                        "zone",
                        "factory",
                        "over",
                        "stripped",
                        "filler",
                        "not_factory_low",
                        "not_factory_high",
                        "log10_lr_own",
                        "refinish_score",
                        "repair_score",
                        "readable");
        double sum = hood.get("factory").asDouble()
                + hood.get("over").asDouble()
                + hood.get("stripped").asDouble()
                + hood.get("filler").asDouble();
        assertThat(sum).isCloseTo(1, within(1e-7));
        assertThat(hood.get("refinish_score").asInt())
                .isGreaterThan(zone(json, "roof").get("refinish_score").asInt());
        assertThat(bench.run("history", visit).done().out()).contains("They prove nothing");
    }

    @Test
    void rustGivesAreaAndGradesOfATraceOfKnownSize() {
        // a square of 100 px at 2 px a mm: 50 x 50 mm = 2500 mm2, 0.25 % of a square metre: D610 grade 7, Ri 2
        add(
                "traces",
                "photo;kind;outline;scale",
                "two.jpg;surface;POLYGON ((100 100, 200 100, 200 200, 100 200, 100 100));length:0 0 200 0:100");
        JsonNode json = bench.run("rust", visit, "--json").done().json();
        JsonNode roof = zone(json, "roof");
        assertThat(keys(roof))
                .contains(
                        "zone",
                        "looked_at",
                        "rust_mm2",
                        "zone_mm2",
                        "percent",
                        "rust_grade_d610",
                        "ri_iso4628",
                        "holes",
                        "largest_hole_mm2",
                        "need");
        assertThat(roof.get("rust_mm2").asDouble()).isCloseTo(2500, within(1e-6));
        assertThat(roof.get("percent").asDouble()).isCloseTo(0.25, within(1e-9));
        assertThat(roof.get("rust_grade_d610").asInt()).isEqualTo(7);
        assertThat(roof.get("ri_iso4628").asInt()).isEqualTo(2);
        assertThat(keys(json.get("traces").get(0))).contains("photo", "kind", "area_mm2", "area_sd_mm2");
        assertThat(zone(json, "quarter-left").get("zone_mm2").isNull()).isTrue();
        assertThat(bench.run("rust", visit).done().out())
                .contains("2500")
                .contains("7-S")
                .contains("\u00b1 is one standard deviation");
    }

    @Test
    void photosGivesEveryKeyAndItsPins() {
        JsonNode photos = bench.run("photos", visit, "--json").done().json().get("photos");
        assertThat(photos).hasSize(6);
        assertThat(keys(photos.get(1)))
                .contains(
                        "id",
                        "file",
                        "sha256",
                        "kind",
                        "captured",
                        "captured_source",
                        "offset",
                        "offset_source",
                        "captured_corrected",
                        "captured_utc",
                        "camera",
                        "width",
                        "height",
                        "orientation",
                        "sharpness",
                        "group",
                        "set_aside",
                        "pins");
        assertThat(photos.get(1).get("pins").get(0).get("zone").asText()).isEqualTo("roof");
        assertThat(photos.get(1).get("captured").isNull()).isTrue();
        assertThat(photos.get(1).get("camera").isNull()).isTrue();
        assertThat(bench.run("photos", visit).done().out()).contains("two.jpg").contains("1600\u00d71200");
    }

    @Test
    void auditFindsThatTheOriginalsAreGone() {
        Bench.Outcome outcome = bench.run("audit", visit, "--json").complains(1, "6 missing");
        JsonNode json = outcome.json();
        assertThat(json.get("ok").asBoolean()).isFalse();
        assertThat(json.get("missing")).hasSize(6);
        assertThat(json.get("changed")).isEmpty();
        assertThat(keys(json)).contains("unreferenced");
    }

    @Test
    void gapsGivesWhatIsWantedAndWhatIsThere() {
        JsonNode gap =
                bench.run("gaps", visit, "--json").done().json().get("gaps").get(0);
        assertThat(keys(gap)).contains("zone", "lacks", "want", "have");
        assertThat(gap.get("have").asInt()).isLessThan(gap.get("want").asInt());
    }

    @Test
    void compareGivesBothCarsAndTheChances() {
        add("readings", "zone,value,unit", "roof,4.5,mil", "hood,25,mil", "hood,28,mil");
        JsonNode json = bench.run("compare", visit, visit, "--json").done().json();
        assertThat(json.get("cars")).hasSize(2);
        assertThat(keys(json)).contains("cars", "zones", "refinished", "repaired");
        JsonNode refinished = json.get("refinished");
        assertThat(keys(refinished)).contains("a", "b", "p_a_fewer", "p_equal", "p_b_fewer");
        assertThat(keys(refinished.get("a"))).containsExactly("mean", "low", "high");
        assertThat(refinished.get("p_a_fewer").asDouble())
                .as("a car against itself")
                .isCloseTo(refinished.get("p_b_fewer").asDouble(), within(1e-9));
        bench.run("compare", visit).complains(2, "name 2 to 6");
        bench.run("compare", visit, folder.resolve("nowhere").toString()).complains(3, "no visit at");
        bench.run("compare", visit, visit, visit, visit, visit, visit, visit).complains(2, "7 visits are named");
        bench.run("compare", visit, visit, "--care", "price=3").complains(2, "\"price\" is no concern");
        bench.run("compare", visit, visit, "--detail", "A,C").complains(2, "letters from A to B");
        bench.run("compare", visit, visit, "--unit", "inch").complains(2, "take mil or um");
        bench.run("compare", visit, visit, "--paper", "b5").complains(2, "there is no paper");
    }

    @Test
    void compareGivesWhatMattersFirstWithAClassForEachOfThreeCars() {
        add("statements", "zone,condition,text,severity", "roof,rusted through,Open to the sky.,grave");
        JsonNode json = bench.run("compare", visit, visit, visit, "--detail", "C,A", "--care", "structure=5", "--json")
                .done()
                .json();
        assertThat(keys(json).get(0)).isEqualTo("matters");
        JsonNode first = json.get("matters").get(0);
        assertThat(first.get("severity").asText()).isEqualTo("grave");
        assertThat(first.get("zone").asText()).isEqualTo("roof");
        assertThat(keys(first.get("cars"))).containsExactly("a", "b", "c");
        assertThat(first.get("cars").get("c").get("class").asText()).isEqualTo("found");
        assertThat(first.get("cars").get("c").get("text").asText()).contains("Open to the sky.");
        assertThat(json.get("compared").toString()).isEqualTo("[\"c\",\"a\"]");
        assertThat(json.get("order").asText()).contains("structure 5");
    }
}
