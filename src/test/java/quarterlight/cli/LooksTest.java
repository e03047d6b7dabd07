package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What can be asked without a window: photos that look alike, and what one look would close. */
class LooksTest {
    @TempDir
    private Path folder;

    private String visit(Bench bench) {
        String visit = bench.folder("v");
        bench.run("new", visit, "--car", "Sorrel", "--style", "coupe", "--year", "1971", "--timezone", "UTC")
                .done();
        return visit;
    }

    @Test
    void photosOfOneMomentThatLookAlikeAreTold() {
        Bench bench = new Bench(folder);
        String visit = visit(bench);
        TestPhotos.write(folder.resolve("card/a.jpg"), 5, "2026:02:28 10:00:00");
        TestPhotos.write(folder.resolve("card/b.jpg"), 5, "2026:02:28 10:02:00");
        TestPhotos.write(folder.resolve("card/c.jpg"), 5, "2019:07:01 09:00:00");
        assertThat(bench.run("intake", visit, folder.resolve("card").toString()).status())
                .isZero();
        JsonNode document = bench.run("photos", visit, "--json").done().json();
        Map<String, Long> ids = new TreeMap<>();
        document.get("photos")
                .forEach(photo ->
                        ids.put(photo.get("file").asText(), photo.get("id").asLong()));
        assertThat(document.get("alike")).hasSize(1);
        List<Long> set = new ArrayList<>();
        document.get("alike").get(0).forEach(id -> set.add(id.asLong()));
        assertThat(set)
                .as("the picture of another year is none of them")
                .containsExactlyInAnyOrder(ids.get("a.jpg"), ids.get("b.jpg"));
        assertThat(bench.run("photos", visit).done().out()).contains("Photos that look alike: ");
    }

    @Test
    void gapsAreGroupedByWhatOneLookClosesAndListedWithAll() {
        Bench bench = new Bench(folder);
        String visit = visit(bench);
        JsonNode document = bench.run("gaps", visit, "--json").done().json();
        int gaps = document.get("gaps").size();
        int looks = document.get("looks").size();
        assertThat(gaps).isGreaterThan(100);
        assertThat(looks).isBetween(5, 30);
        int grouped = 0;
        for (JsonNode look : document.get("looks")) {
            grouped += look.get("gaps").asInt();
        }
        assertThat(grouped).as("every gap is closed by one look").isEqualTo(gaps);

        String told = bench.run("gaps", visit).done().out();
        assertThat(told).contains(gaps + " gaps, closed by " + looks + " looks; --all lists each.");
        assertThat(lines(told)).isEqualTo(looks);
        String all = bench.run("gaps", visit, "--all").done().out();
        assertThat(all).doesNotContain("--all lists each");
        assertThat(lines(all)).isEqualTo(gaps);
    }

    /** The rows of the table that is printed first. */
    private static int lines(String printed) {
        List<String> lines = printed.lines().toList();
        int rule = 0;
        while (!lines.get(rule).startsWith("\u2500")) {
            rule++;
        }
        int end = lines.subList(rule, lines.size()).indexOf("");
        return (end < 0 ? lines.size() - rule : end) - 1;
    }
}
