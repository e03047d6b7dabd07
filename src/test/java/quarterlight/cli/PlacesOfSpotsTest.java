package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the places of spots are good for: filler that no spot stands on, and panels set against one another. */
class PlacesOfSpotsTest {
    private static final double DISC = Math.PI * 50 * 50 / 1e6;

    @TempDir
    private Path folder;

    private Bench bench;

    @BeforeEach
    void start() {
        bench = new Bench(folder);
    }

    private String visit(String name, String readings) {
        String visit = folder.resolve(name).toString();
        bench.run("new", visit, "--car", "Tamarisk", "--style", "coupe", "--finish", "lacquer")
                .done();
        bench.run("add", "readings", visit, bench.file(name + ".csv", readings)).done();
        return visit;
    }

    /** Nine spots of 5 mil on the hood, from x in the view on, so far apart. */
    private static String row(double from, double step) {
        StringBuilder rows = new StringBuilder("zone,value,unit,view,x,y\n");
        for (int n = 0; n < 9; n++) {
            rows.append(String.format(Locale.US, "hood,%.1f,mil,top,%.4f,0.4%n", 5 + .1 * (n % 3), from + step * n));
        }
        return rows.toString();
    }

    private JsonNode zone(String visit, String id) {
        JsonNode json = bench.run("history", visit, "--json").done().json();
        for (JsonNode zone : json.get("zones")) {
            if (zone.get("zone").asText().equals(id)) {
                return zone;
            }
        }
        throw new AssertionError(id);
    }

    @Test
    void spotsCloseTogetherLeaveMoreRoomForFillerThanSpreadOnes() {
        JsonNode close = zone(visit("close", row(.3, .0001)), "hood");
        JsonNode spread = zone(visit("spread", row(.265, .027)), "hood");
        JsonNode unplaced = zone(visit("unplaced", row(.3, 0).replace(",top,0.3000,0.4", ",,,")), "hood");
        assertThat(close.get("hidden_10cm_patch_missed").asDouble()).isCloseTo(1 - DISC, within(.001));
        assertThat(spread.get("hidden_10cm_patch_missed").asDouble()).isCloseTo(1 - 9 * DISC, within(.001));
        assertThat(unplaced.get("hidden_10cm_patch_missed").asDouble()).isCloseTo(Math.pow(1 - DISC, 9), within(1e-6));
        assertThat(close.get("hidden_10cm_patch").asDouble())
                .isGreaterThan(unplaced.get("hidden_10cm_patch").asDouble());
        assertThat(unplaced.get("hidden_10cm_patch").asDouble())
                .isGreaterThan(spread.get("hidden_10cm_patch").asDouble());
        assertThat(spread.get("hidden_10cm_patch").asDouble()).isGreaterThan(0);
    }

    @Test
    void whereToMeasureNextNamesPlacesThatNoSpotIsNear() {
        JsonNode next = next(visit("spread", row(.265, .027)), "hood");
        assertThat(next.get("places")).hasSize(next.get("spots").asInt());
        for (JsonNode place : next.get("places")) {
            assertThat(place.get("view").asText()).isEqualTo("top");
            assertThat(place.get("x").asDouble()).isBetween(.25, .5);
            assertThat(place.get("y").asDouble()).isBetween(.25, .75);
            assertThat(Math.abs(place.get("y").asDouble() - .4) * 2000)
                    .as("off the row of spots")
                    .isGreaterThan(100);
        }
        assertThat(next(visit("roof", "zone,value,unit\nroof,5,mil\n"), "roof").get("places"))
                .as("the outline of the roof is not known")
                .isEmpty();
    }

    /** One spot of 40 mil among 5: its own place is the first to go to. */
    @Test
    void aDoubtfulSpotIsReadAgainAtItsPlace() {
        String rows = row(.265, .027).replace("hood,5.2,mil,top,0.3190", "hood,40,mil,top,0.3190");
        JsonNode json =
                bench.run("history", visit("doubt", rows), "--json").done().json();
        JsonNode first = json.at("/measure_next/0");
        assertThat(first.get("kind").asText()).isEqualTo("read-again");
        assertThat(first.at("/places/0/x").asDouble()).isCloseTo(.319, within(1e-9));
    }

    private JsonNode next(String visit, String id) {
        for (JsonNode next : bench.run("history", visit, "--json").done().json().get("measure_next")) {
            if (next.get("zone").asText().equals(id)) {
                return next;
            }
        }
        throw new AssertionError(id);
    }

    @Test
    void whatStandsOutAmongPanelsIsSaidInWords() {
        String apart =
                """
                zone,value,unit
                fender-left,120,um
                fender-left,124,um
                fender-left,122,um
                fender-right,180,um
                fender-right,184,um
                fender-right,182,um
                """;
        String out = bench.run("zones", visit("apart", apart)).done().out();
        assertThat(out).contains("fender-left less fender-right: -60 um", "of 1 looked at");
        String alike = apart.replace("18", "12");
        assertThat(bench.run("zones", visit("alike", alike)).done().out()).doesNotContain("less");
    }
}
