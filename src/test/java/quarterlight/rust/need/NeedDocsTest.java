package quarterlight.rust.need;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The two tables of the repair need in {@code docs/methods/rust.md} are those of the code, no more and no less. */
class NeedDocsTest {
    private static String docs() throws IOException {
        return Files.readString(
                Path.of(System.getProperty("quarterlight.basedir", ".")).resolve("docs/methods/rust.md"));
    }

    static String clauses() {
        StringBuilder rows = new StringBuilder("| zone | found | need | why |\n| --- | --- | --- | --- |\n");
        for (NeedClause clause : NeedClause.values()) {
            rows.append(String.format(
                    Locale.ROOT,
                    "| %s | %s, %s%s | %s | %s |\n",
                    clause.load().word(),
                    clause.measure().words(),
                    clause.limitInWords(),
                    clause.from() > 0 && clause.holdsWhenUnknown() ? ", or of unknown size" : "",
                    clause.need().word(),
                    clause.why()));
        }
        return rows.toString();
    }

    static String loads() {
        StringBuilder rows =
                new StringBuilder("| zones | unibody, subframe | on a frame | why |\n| --- | --- | --- | --- |\n");
        for (LoadTable.Row row : LoadTable.rows()) {
            rows.append(String.format(
                    Locale.ROOT,
                    "| %s | %s | %s | %s |\n",
                    String.join(", ", row.families()),
                    row.unibody().word(),
                    row.onFrame().word(),
                    row.why()));
        }
        return rows.toString();
    }

    @Test
    void theDocsShowTheClausesOfTheRule() throws IOException {
        assertThat(docs()).contains(clauses());
    }

    @Test
    void theDocsShowWhichZoneCarriesLoad() throws IOException {
        assertThat(docs()).contains(loads());
        assertThat(Stream.of(docs().split("\n")).filter(line -> line.startsWith("| fuel-tank,")))
                .hasSize(1);
    }
}
