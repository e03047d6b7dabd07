package quarterlight.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.swing.JLabel;
import javax.swing.JTable;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.coverage.EvidenceKind;
import quarterlight.edit.row.RowEdits;
import quarterlight.store.SampleVisit;
import quarterlight.store.VisitStore;
import quarterlight.ui.kit.Texts;
import quarterlight.visit.CoverageOverride;
import quarterlight.visit.VisitParts;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.statement.Claim;
import quarterlight.visit.statement.Claimant;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Statement;

/** One key leads from doubt to doubt through all stations, says how many are open, and counts down as they are settled or left. */
class FinishRobotTest extends DeskRobot {
    private static final ZoneId HOOD = new ZoneId("hood");
    private static final Texts TEXTS = Texts.load();
    private static final Pattern OPEN = Pattern.compile("(\\d+) open: (.*)");
    private static final int MOST = 400;

    @Override
    protected void make(Path path) throws Exception {
        super.make(path);
        try (VisitStore store = VisitStore.openForEditing(path, CLOCK)) {
            List<Photo> photos = store.read().photos();
            RowEdits edits = new RowEdits(store);
            edits.add(
                    RecordKind.PINS,
                    photos.stream()
                            .skip(1)
                            .map(photo -> VisitParts.pin(photo.id(), HOOD))
                            .toList());
            // of what a visit asks for only the spots of panels, so that there are not hundreds of doubts
            edits.add(
                    RecordKind.COVERAGE,
                    Stream.of(EvidenceKind.values())
                            .filter(kind -> kind != EvidenceKind.SPOTS)
                            .map(kind -> new CoverageOverride(Optional.empty(), kind.word(), 0))
                            .toList());
            edits.add(
                    RecordKind.READINGS,
                    Stream.of("105", "107", "104", "106", "105", "108", "103", "640")
                            .map(um -> SampleVisit.reading(HOOD, um))
                            .toList());
            edits.add(
                    RecordKind.MARKS,
                    List.of(VisitParts.stamp(
                            "Engine block", "?!", HOOD, photos.get(2).id())));
            edits.add(
                    RecordKind.STATEMENTS,
                    List.of(new Statement(
                            HOOD,
                            Facets.of(Condition.DAMAGED),
                            "dented at the front",
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty())));
            edits.add(
                    RecordKind.CLAIMS,
                    List.of(new Claim(
                            "one owner",
                            Claimant.SELLER,
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            false)));
        }
    }

    private String foot() {
        return GuiActionRunner.execute(() -> ((JLabel) robot.finder().findByName("foot-said", true)).getText());
    }

    /** The foot tells work that is under way, then what is open again. */
    private Matcher said() {
        until("the foot says what is open: " + foot(), () -> OPEN.matcher(foot())
                .matches());
        Matcher said = OPEN.matcher(foot());
        assertThat(said.matches()).as(foot()).isTrue();
        return said;
    }

    private void next() {
        robot.pressAndReleaseKeys(KeyEvent.VK_F6);
        robot.waitForIdle();
    }

    /** The zone of the gap whose row is chosen. */
    private Optional<String> chosenGap() {
        JTable gaps = robot.finder().findByName("gaps", JTable.class);
        return GuiActionRunner.execute(() -> Optional.of(gaps.getSelectedRow())
                .filter(row -> row >= 0)
                .map(row -> String.valueOf(gaps.getValueAt(row, 0))));
    }

    private boolean isShown(String name) {
        return !robot.finder()
                .findAll(c -> name.equals(c.getName()) && c.isShowing())
                .isEmpty();
    }

    @Test
    void oneKeyLeadsFromDoubtToDoubtWithTheCountGoingDown() {
        String unpinned = TEXTS.get("doubt.photo", "IMG_100.JPG");
        until("the visit is worked out", () -> {
            next();
            return OPEN.matcher(foot()).matches();
        });
        for (int i = 0; i < MOST && !foot().contains(unpinned); i++) {
            next();
        }
        assertThat(isShown("photos-sheet")).as("a photo is settled in Photos").isTrue();
        int open = Integer.parseInt(said().group(1));

        robot.focusAndWaitForFocusGain(robot.finder().findByName("photos-sheet"));
        robot.pressAndReleaseKeys(KeyEvent.VK_DELETE);
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("it is set aside", () -> held().photos().get(0).setAside().isPresent());
        until(
                "the foot says that it is settled, and no longer that it is open",
                () -> foot().contains("Settled") && foot().contains(unpinned));
        List<String> sentences = new ArrayList<>();
        List<String> places = new ArrayList<>();
        int all = Integer.MAX_VALUE;
        int gapsInHand = 0;
        for (int i = 0; i < Math.min(all, MOST); i++) {
            next();
            all = Integer.parseInt(said().group(1));
            sentences.add(said().group(2));
            if (isShown("gaps")) {
                gapsInHand++;
                assertThat(chosenGap())
                        .as("the row of the gap")
                        .isPresent()
                        .get()
                        .isEqualTo(said().group(2).split(":")[0]);
                until(
                        "the keyboard is in the list of gaps",
                        () -> robot.finder().findByName("gaps").isFocusOwner());
            }
            Stream.of("photos-sheet", "gauge-entry", "marks", "statements", "claims", "pages-make")
                    .filter(this::isShown)
                    .forEach(places::add);
        }
        assertThat(all).as("less is open").isLessThan(open);
        assertThat(sentences).doesNotContain(unpinned).doesNotHaveDuplicates();
        assertThat(sentences)
                .contains(
                        TEXTS.get("doubt.reading", "Hood"),
                        TEXTS.get("doubt.statement", "dented at the front"),
                        TEXTS.get("doubt.claim", "one owner"))
                .anyMatch(one -> one.startsWith("Engine block"));
        assertThat(gapsInHand).as("gaps that were shown").isPositive();
        assertThat(places).contains("gauge-entry", "marks", "statements", "claims");

        robot.pressKey(KeyEvent.VK_SHIFT);
        robot.pressAndReleaseKeys(KeyEvent.VK_F6);
        robot.releaseKey(KeyEvent.VK_SHIFT);
        robot.waitForIdle();
        assertThat(Integer.parseInt(said().group(1))).as("one is left as it is").isEqualTo(all - 1);
    }
}
