package quarterlight.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Statement;

class PhrasesTest {
    private static List<Statement> wrote(String... texts) {
        return Arrays.stream(texts)
                .map(text -> new Statement(
                        new ZoneId("hood"),
                        Facets.of(Condition.SOUND),
                        text,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()))
                .toList();
    }

    @Test
    void whatBeginsSoComesBeforeALaterWordThenTheMoreOftenThenTheLatest() {
        List<Statement> earlier = wrote(
                "Surface rust at the seam",
                "Seam sealer original",
                "Seam sealer original",
                "Seam opened and welded",
                "Sealer cracked");
        assertThat(Phrases.phrases(earlier, "se"))
                .containsExactly(
                        "Seam sealer original", "Sealer cracked", "Seam opened and welded", "Surface rust at the seam");
        assertThat(Phrases.phrases(earlier, "weld")).containsExactly("Seam opened and welded");
        assertThat(Phrases.phrases(earlier, "eam")).isEmpty();
    }

    @Test
    void whatBeginsSoComesFirstHoweverOftenALaterWordDoes() {
        assertThat(Phrases.phrases(wrote("Seam open", "Dry seam", "Dry seam", "Dry seam"), "seam"))
                .containsExactly("Seam open", "Dry seam");
    }

    @Test
    void caseAndBlanksDoNotMatterAndTheLastSpellingIsOffered() {
        assertThat(Phrases.phrases(wrote("dry  joint", "Dry joint"), " DRY ")).containsExactly("Dry joint");
    }

    @Test
    void whatIsTypedAlreadyIsNotOffered() {
        assertThat(Phrases.phrases(wrote("Dry joint"), "dry joint")).isEmpty();
    }

    @Test
    void nothingTypedOffersTheCommonestAndNeverMoreThanEight() {
        String[] many = IntStream.range(0, 20).mapToObj(i -> "Phrase " + i).toArray(String[]::new);
        assertThat(Phrases.phrases(wrote(many), "")).hasSize(8).startsWith("Phrase 19");
    }
}
