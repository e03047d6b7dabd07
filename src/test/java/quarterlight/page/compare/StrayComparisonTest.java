package quarterlight.page.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.car.body.BodyStyle;
import quarterlight.compare.TestCar;
import quarterlight.language.Language;
import quarterlight.language.Sentences;
import quarterlight.language.StrayWords;
import quarterlight.page.print.Paper;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Severity;

/** What a comparison says comes from the bundles of sentences. */
class StrayComparisonTest {
    @TempDir
    Path folder;

    @Test
    void everySentenceOfTheComparisonComesFromABundle() throws Exception {
        List<Path> made = Language.MARKED.during(() -> ComparedCars.pages(
                folder,
                Paper.A4,
                TestCar.of(BodyStyle.COUPE)
                        .named("Tamarisk")
                        .checked(100, 101)
                        .measured("hood", 110, 114, 119)
                        .measured("roof", 110, 112, 113)
                        .pinned(1, "hood", "Hood")
                        .stated("door-front-left", Condition.DAMAGED, "Dented.", Severity.MAJOR)
                        .stated("rocker-left", Condition.RUSTED_THROUGH, "Holes.", Severity.GRAVE),
                TestCar.of(BodyStyle.SEDAN).named("Chicory").measured("hood", 310, 314, 390)));
        assertThat(Files.readString(folder.resolve("compare.html"))).contains(Sentences.MARK, Sentences.MARK_END);
        for (Path page : made) {
            assertThat(StrayWords.in(page, "Tamarisk Chicory Quarterlight build dev"))
                    .as("words of %s that come from no bundle", page.getFileName())
                    .isEmpty();
        }
    }
}
