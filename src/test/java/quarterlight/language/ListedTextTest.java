package quarterlight.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import quarterlight.coverage.CoverageRule;
import quarterlight.coverage.TrialItem;
import quarterlight.table.CounterpartTable;
import quarterlight.table.list.CoverageTable;
import quarterlight.table.list.TrialTable;

class ListedTextTest {
    @Test
    void everyTextOfTheListsThatComeWithTheProgramHasItsGermanAndNoneIsLeftOver() throws Exception {
        Set<String> keys = new TreeSet<>();
        for (TrialItem item : TrialTable.load().items()) {
            keys.add("list.trial." + ListedText.key(item.item()));
        }
        for (CoverageRule rule : CoverageTable.load().rules()) {
            keys.add("list.why." + ListedText.key(rule.why()));
        }
        CounterpartTable.load().forEach(place -> {
            keys.add("list.place." + ListedText.key(place.label()));
            keys.add("list.alike." + ListedText.key(place.label()));
        });
        Properties german = new Properties();
        try (Reader in = new InputStreamReader(
                Sentences.class.getResourceAsStream("list_de.properties"), StandardCharsets.UTF_8)) {
            german.load(in);
        }
        assertThat(german.stringPropertyNames()).containsExactlyInAnyOrderElementsOf(keys);
    }

    @Test
    void aTextOfTheProgramsOwnIsSaidInTheLanguageInHandAndAnyOtherAsItWasWritten() throws Exception {
        assertThat(ListedText.said("list.trial.", "Parking brake")).isEqualTo("Parking brake");
        assertThat(Language.GERMAN.during(() -> ListedText.said("list.trial.", "Parking brake")))
                .isEqualTo("Feststellbremse");
        assertThat(Language.GERMAN.during(() -> ListedText.said("list.trial.", "Sliding roof")))
                .isEqualTo("Sliding roof");
    }

    @Test
    void aNameWithinASentenceHasASmallLetterButInGerman() throws Exception {
        assertThat(Sentences.within("Left fender")).isEqualTo("left fender");
        assertThat(Language.GERMAN.during(() -> Sentences.within("Kotflügel links")))
                .isEqualTo("Kotflügel links");
    }
}
