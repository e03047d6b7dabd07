package quarterlight.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.Locale;
import java.util.Properties;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import quarterlight.compare.place.Counterpart;
import quarterlight.coverage.CoverageRule;
import quarterlight.coverage.TrialItem;
import quarterlight.table.CounterpartTable;
import quarterlight.table.list.CoverageTable;
import quarterlight.table.list.TrialTable;

/** The German of the lists and tables that come with the program is found by their English. */
class ListedTextsTest {
    @Test
    void everyFunctionToTryHasItsGerman() throws Exception {
        assertThat(german("trials_de"))
                .containsAll(keys("trials.", TrialTable.load().items().stream().map(TrialItem::item)));
    }

    @Test
    void everyReasonForAskingHasItsGerman() throws Exception {
        assertThat(german("why_de"))
                .containsAll(keys("why.", CoverageTable.load().rules().stream().map(CoverageRule::why)));
    }

    @Test
    void everyPlaceOfUnlikeBodiesHasItsGerman() throws Exception {
        Collection<String> labels =
                CounterpartTable.load().stream().map(Counterpart::label).toList();
        assertThat(german("alike_de"))
                .containsAll(keys("alike.place.", labels.stream()))
                .containsAll(keys("alike.why.", labels.stream()))
                .hasSize(2 * labels.size());
        Counterpart lid = CounterpartTable.load().get(0);
        assertThat(lid.name()).isEqualTo(lid.label());
        assertThat(Language.GERMAN.during(lid::name)).isEqualTo("Vordere Haube");
        assertThat(Language.GERMAN.during(lid::said)).startsWith("Beides ist die Haube");
    }

    private static Collection<String> keys(String beginning, Stream<String> english) {
        return english.map(text -> beginning
                        + text.toLowerCase(Locale.ROOT)
                                .replaceAll("[^a-z0-9]+", "-")
                                .replaceAll("-$", ""))
                .toList();
    }

    private static Collection<String> german(String bundle) throws Exception {
        Properties texts = new Properties();
        try (Reader in = new InputStreamReader(
                Sentences.class.getResourceAsStream(bundle + ".properties"), StandardCharsets.UTF_8)) {
            texts.load(in);
        }
        return new TreeSet<>(texts.stringPropertyNames());
    }
}
