package quarterlight.ui.photos;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.swing.JLabel;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.junit.jupiter.api.Test;
import quarterlight.edit.intake.Intake;
import quarterlight.photo.MediaType;
import quarterlight.photo.film.FilmFrames;
import quarterlight.store.VisitStore;
import quarterlight.task.Progress;
import quarterlight.ui.DeskRobot;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.statement.Certainty;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.SaidBy;
import quarterlight.visit.statement.SaidSize;
import quarterlight.visit.statement.Statement;

/** A film in the large view: stepped by keys, its moments pinned, spoken of and kept. 25 frames a second, begun at 10:02. */
class FilmRobotTest extends DeskRobot {
    @Override
    protected void make(Path path) throws Exception {
        assumeTrue(FilmFrames.available(), "built without native parts");
        Path card = Files.createDirectories(folder.resolve("card"));
        Files.copy(
                Path.of(Objects.requireNonNull(MediaType.class.getResource("numbered-dated.mp4"))
                        .toURI()),
                card.resolve("VID_0007.MP4"));
        try (VisitStore store = VisitStore.create(path, coupe(), CLOCK)) {
            new Intake(store, CLOCK, (photo, jpeg) -> {}).run(List.of(card), Progress.NONE);
        }
    }

    private String time() {
        return ((JLabel) robot.finder().findByName("film-time")).getText();
    }

    /** A second, two frames more, one back. */
    private void stepToOneSecondAndOneFrame() {
        Component sheet = robot.finder().findByName("photos-sheet");
        robot.focusAndWaitForFocusGain(sheet);
        robot.pressAndReleaseKeys(KeyEvent.VK_HOME);
        robot.type('.');
        until("the first frame", () -> time().startsWith("0:00.000"));
        robot.type('>');
        until("a second on", () -> time().startsWith("0:01.000 of 0:02.000  \u00b7  taken 10:02:01.0"));
        robot.type('.');
        robot.type('.');
        robot.type(',');
        until("a frame further", () -> time().startsWith("0:01.040"));
    }

    @Test
    void aMomentIsPinnedByTheSameKeysAsAPhoto() {
        stepToOneSecondAndOneFrame();
        robot.enterText("hood");
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("the moment is pinned", () -> held().pins().size() == 1);
        Pin pin = held().pins().get(0).value();
        assertThat(pin.zone().value()).isEqualTo("hood");
        assertThat(pin.at().orElseThrow()).isCloseTo(1.04, within(1e-6));

        robot.focusAndWaitForFocusGain(robot.finder().findByName("photos-sheet"));
        robot.type('/');
        until("the film as a whole", () -> time().startsWith("Film"));
        robot.enterText("roof");
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("the film is pinned", () -> held().pins().size() == 2);
        assertThat(held().pins().get(1).value().at()).isEmpty();
    }

    @Test
    void aMomentCarriesAStatementAndItsFrameIsKept() {
        stepToOneSecondAndOneFrame();
        robot.pressAndReleaseKeys(KeyEvent.VK_F4);
        DialogFixture sheet = WindowFinder.findDialog("statement-sheet").using(robot);
        sheet.textBox("zone-field").enterText("hood").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        sheet.textBox("note-part").enterText("latch");
        sheet.textBox("note-size").enterText("palm");
        sheet.comboBox("note-certainty").selectItem("likely");
        sheet.comboBox("note-said-by").selectItem("owner");
        sheet.textBox("statement-words").enterText("rattles").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        assertThat(held().statements()).as("nothing is kept before a letter").isEmpty();
        robot.type('z');
        until(
                "the board has the word",
                () -> sheet.toggleButton("facet-noise").target().isSelected());
        sheet.textBox("statement-words").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("the statement is kept", () -> held().statements().size() == 1);
        Statement said = held().statements().get(0).value();
        assertThat(said.is(Condition.NOISE)).isTrue();
        assertThat(said.photo()).isEqualTo(Optional.of(held().photos().get(0).id()));
        assertThat(said.atSeconds().orElseThrow()).isCloseTo(1.04, within(1e-6));
        assertThat(said.details().part()).contains("latch");
        assertThat(said.details().size()).contains(new SaidSize("palm"));
        assertThat(said.details().certainty()).contains(Certainty.LIKELY);
        assertThat(said.details().saidBy()).isEqualTo(SaidBy.OWNER);

        robot.focusAndWaitForFocusGain(robot.finder().findByName("photos-sheet"));
        withControl(KeyEvent.VK_E);
        until("the frame is kept", () -> held().photos().size() == 2);
        Photo frame = held().photos().get(1);
        assertThat(frame.file().kind()).isEqualTo(MediaKind.PHOTO);
        assertThat(frame.file().name()).isEqualTo("VID_0007.MP4 at 1.040 s.png");
    }
}
