package quarterlight.ui.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import javax.swing.JTextArea;
import javax.swing.JToggleButton;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.car.ZoneId;
import quarterlight.ui.SpokenSample;
import quarterlight.ui.WindowParts;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.OpenedVisit;
import quarterlight.ui.kit.widget.FactTable;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.words.Draft;

/** What the walk leaves open stands in the place of the drafts when it is asked for; what is then hidden is not changed. */
@Timeout(120)
class QuestionsTest {
    private static final String WALK =
            """
            [0:03] The seller says there is no rust anywhere.
            [0:13] Left rear wheel arch, I'll come back to that.
            [0:23] The dash is clean.
            [0:33] Left rocker is rusted through.
            """;

    @TempDir
    Path folder;

    @SuppressWarnings("unchecked")
    private static List<Question> shown(WordsKeys keys) {
        return ((FactTable<Question>) WindowParts.named(keys.screen.side(), FactTable.class, "words-questions")).rows();
    }

    private static void turn(WordsKeys keys) throws Exception {
        JToggleButton toggle = WindowParts.named(keys.screen.side(), JToggleButton.class, "words-asking");
        OpenedVisit.until(() -> !shown(keys).isEmpty());
        SwingUtilities.invokeAndWait(toggle::doClick);
        keys.settle();
    }

    @Test
    void contradictionsStandFirstThenPromisesThenSides() throws Exception {
        try (WordsKeys keys =
                new WordsKeys(OpenedVisit.coupe(folder, store -> SpokenSample.add(store, 9, "walk.txt", WALK)))) {
            turn(keys);
            List<Question> questions = shown(keys);
            assertThat(questions.get(0).heard())
                    .extracting(words -> (int) words.atSeconds())
                    .containsExactly(3, 33);
            assertThat(questions.get(0).voices().get(0)).contains("seller", "0:03", "no rust anywhere");
            assertThat(questions.get(1).zones()).containsExactly(new ZoneId("wheel-lip-rear-left"));
            assertThat(questions.get(2).zones()).contains(new ZoneId("rocker-right"));
            assertThat(WindowParts.named(keys.screen.side(), JToggleButton.class, "words-asking")
                            .getText())
                    .contains(String.valueOf(questions.size()));
            assertThat(WindowParts.named(keys.screen.side(), JTextArea.class, "words-question-said")
                            .getText())
                    .contains("0:33", "Left rocker is rusted through");
        }
    }

    @Test
    void whatIsHiddenIsNeitherKeptNorMoved() throws Exception {
        try (WordsKeys keys =
                new WordsKeys(OpenedVisit.coupe(folder, store -> SpokenSample.add(store, 9, "walk.txt", WALK)))) {
            Draft inHand = keys.inHand();
            VisitRecord before = keys.opened.visit().visit();
            turn(keys);
            SwingUtilities.invokeAndWait(() -> {
                for (Command command : keys.screen.commands()) {
                    if (command.isEnabled() && Set.of("Keep", "Drop").contains(command.getValue("Name"))) {
                        throw new AssertionError(command.getValue("Name") + " acts on a hidden draft");
                    }
                }
                keys.opened.visit().selection().zones(Set.of(new ZoneId("roof")));
                keys.screen.zoneChosen(new ZoneId("roof"), new ViewPoint(quarterlight.car.View.TOP, 0.5, 0.5));
            });
            keys.settle();
            assertThat(keys.screen.model().inHand().orElseThrow().written()).isEqualTo(inHand);
            assertThat(keys.opened.visit().visit()).isEqualTo(before);
            turn(keys);
            assertThat(keys.screen.first().getName()).isEqualTo("words-drafts");
        }
    }
}
