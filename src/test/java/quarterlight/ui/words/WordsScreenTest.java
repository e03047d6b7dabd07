package quarterlight.ui.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.car.ZoneId;
import quarterlight.ui.SpokenSample;
import quarterlight.ui.WindowParts;
import quarterlight.ui.kit.OpenedVisit;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.statement.Statement;
import quarterlight.words.Draft;
import quarterlight.words.DraftKind;

/** Drafts are kept, dropped and changed by keys, nothing enters that was not on the screen, and undo takes each step back. */
@Timeout(120)
class WordsScreenTest {
    @TempDir
    Path folder;

    private WordsKeys keys() throws Exception {
        return keys(SpokenSample.WALK);
    }

    private WordsKeys keys(String words) throws Exception {
        return new WordsKeys(OpenedVisit.coupe(folder, store -> SpokenSample.add(store, 9, "walk.txt", words)));
    }

    private static VisitRecord visit(WordsKeys keys) {
        return keys.opened.visit().visit();
    }

    private static void choose(WordsKeys keys, DraftKind what) throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            List<DraftRow> shown = keys.screen.model().shown();
            for (int i = 0; i < shown.size(); i++) {
                if (shown.get(i).read().what() == what) {
                    keys.table().setRowSelectionInterval(i, i);
                    return;
                }
            }
            throw new AssertionError("no draft of " + what);
        });
    }

    @Test
    void enterKeepsWithTheMomentAndTheWordsAndGoesOn() throws Exception {
        try (WordsKeys keys = keys()) {
            choose(keys, DraftKind.STATEMENT);
            Draft draft = keys.inHand();
            int before = keys.table().getRowCount();
            keys.press("ENTER");
            Statement kept = visit(keys).statements().get(0).value();
            assertThat(kept.text()).isEqualTo(draft.words().strip());
            assertThat(kept.atSeconds()).contains(draft.atSeconds());
            assertThat(kept.photo()).contains(visit(keys).photos().get(0).id());
            assertThat(keys.table().getRowCount()).isEqualTo(before - 1);
            assertThat(keys.inHand()).isNotEqualTo(draft);
            SwingUtilities.invokeAndWait(keys.opened.visit()::undo);
            keys.settle();
            assertThat(visit(keys).statements()).isEmpty();
            assertThat(keys.inHand()).as("what undo brought back is in hand").isEqualTo(draft);
        }
    }

    @Test
    void howManyAreOpenIsNotCutInASmallWindow() throws Exception {
        try (WordsKeys keys = keys()) {
            JLabel count = WindowParts.named(keys.screen.side(), JLabel.class, "words-count");
            assertThat(count.getPreferredSize().width).isPositive().isLessThanOrEqualTo(count.getWidth());
        }
    }

    @Test
    void whatIsDroppedIsNotOfferedAgainUntilUndo() throws Exception {
        try (WordsKeys keys = keys()) {
            choose(keys, DraftKind.SIGN);
            Draft draft = keys.inHand();
            keys.press("DELETE");
            assertThat(visit(keys).dropped()).hasSize(1);
            assertThat(visit(keys).signs()).isEmpty();
            assertThat(keys.screen.model().shown()).extracting(DraftRow::read).doesNotContain(draft);
            SwingUtilities.invokeAndWait(keys.opened.visit()::undo);
            keys.settle();
            assertThat(visit(keys).dropped()).isEmpty();
            assertThat(keys.inHand()).isEqualTo(draft);
        }
    }

    @Test
    void lettersChangeTheZoneAndTheReadingIsNotOfferedAgain() throws Exception {
        try (WordsKeys keys = keys()) {
            choose(keys, DraftKind.THICKNESS);
            Draft read = keys.inHand();
            keys.zone("roof");
            assertThat(keys.inHand().zones()).containsExactly(new ZoneId("roof"));
            assertThat(visit(keys).readings())
                    .as("nothing is kept by that alone")
                    .isEmpty();
            keys.press("ENTER");
            assertThat(visit(keys).readings())
                    .singleElement()
                    .satisfies(row -> assertThat(row.value().zone()).isEqualTo(new ZoneId("roof")));
            assertThat(visit(keys).dropped()).singleElement().satisfies(row -> {
                assertThat(row.value().said()).contains("hood");
                assertThat(row.value().instead().orElseThrow()).contains("roof");
            });
            assertThat(keys.screen.model().shown()).extracting(DraftRow::id).doesNotContain(read.id());
            SwingUtilities.invokeAndWait(keys.opened.visit()::undo);
            keys.settle();
            assertThat(visit(keys).readings()).isEmpty();
            assertThat(visit(keys).dropped()).isEmpty();
        }
    }

    @Test
    void aDraftWithoutAPlaceIsNotKeptAndSaysWhy() throws Exception {
        try (WordsKeys keys = keys("[0:03] That one is dented.\n")) {
            assertThat(keys.table().getRowCount())
                    .as("more likely wrong than right")
                    .isZero();
            SwingUtilities.invokeAndWait(() -> keys.screen.model().showAll(true));
            VisitRecord before = visit(keys);
            keys.press("ENTER");
            assertThat(visit(keys)).isEqualTo(before);
            assertThat(keys.opened.told()).anyMatch(told -> told.contains("no zone is known"));
            keys.zone("hood");
            keys.press("ENTER");
            assertThat(visit(keys).statements()).hasSize(1);
        }
    }

    @Test
    void sureOnesAreSelectedToBeSeenAndKeptByOneKeyAsOneStep() throws Exception {
        try (WordsKeys keys = keys()) {
            long sure = keys.screen.model().shown().stream()
                    .filter(DraftRow::isSure)
                    .count();
            assertThat(sure).isGreaterThan(1);
            VisitRecord before = visit(keys);
            keys.press("shift ENTER");
            assertThat(visit(keys)).as("selecting keeps nothing").isEqualTo(before);
            int selected = keys.table().getSelectedRowCount();
            assertThat(selected).isBetween(2, (int) sure);
            keys.press("ENTER");
            assertThat(keys.screen.model().count(DraftRow.State.KEPT)).isEqualTo(selected);
            SwingUtilities.invokeAndWait(keys.opened.visit()::undo);
            keys.settle();
            assertThat(visit(keys)).isEqualTo(before);
        }
    }

    @Test
    void whatWasNeverOnTheScreenIsNotKept() throws Exception {
        StringBuilder walk = new StringBuilder();
        int second = 0;
        for (String part : List.of("hood", "roof", "left front door", "right front door", "left front fender")) {
            for (String how : List.of("dented", "cracked", "pitted", "repainted", "worn", "missing", "leaking")) {
                walk.append("[%d:%02d] The %s is %s.\n".formatted(second / 60, second % 60, part, how));
                second += 15;
            }
        }
        try (WordsKeys keys = keys(walk.toString())) {
            int rows = keys.table().getRowCount();
            assertThat(rows).isGreaterThan(24);
            SwingUtilities.invokeAndWait(() -> keys.table().setRowSelectionInterval(0, rows - 1));
            keys.press("ENTER");
            long kept = keys.screen.model().count(DraftRow.State.KEPT);
            assertThat(kept).isBetween(2L, rows - 3L);
            assertThat(keys.opened.told()).anyMatch(told -> told.contains(String.valueOf(rows - kept)));
        }
    }

    @Test
    void tabGoesToWhatIsInDoubt() throws Exception {
        try (WordsKeys keys = keys()) {
            SwingUtilities.invokeAndWait(() -> keys.table().setRowSelectionInterval(0, 0));
            keys.press("TAB");
            DraftRow row = keys.screen.model().inHand().orElseThrow();
            assertThat(row.isOpen()).isTrue();
            assertThat(row.isSure()).isFalse();
        }
    }
}
