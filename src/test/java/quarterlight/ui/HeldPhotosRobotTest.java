package quarterlight.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.edit.intake.Intake;
import quarterlight.photo.RealPhotos;
import quarterlight.store.VisitStore;
import quarterlight.task.Progress;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.walk.Snap;
import quarterlight.walk.WalkKind;
import quarterlight.walk.WalkScores;

/**
 * The public sample photos pinned one after the other by counted keys. They were not taken on one walk, so a walk is laid upon them: the places of
 * a simulated inspector, stop after stop, in the order in which the window shows them; their times say nothing of it. Skipped without them.
 */
class HeldPhotosRobotTest extends EveningRobot {
    @Override
    protected void make(Path path) throws Exception {
        try (VisitStore store = VisitStore.create(path, coupe(), CLOCK)) {
            new Intake(store, CLOCK, (photo, jpeg) -> {}).run(List.of(RealPhotos.folder()), Progress.NONE);
        }
    }

    @Test
    void everyHeldPhotoIsPinnedByCountedKeys() {
        WalkScores.Place coupe = WalkScores.Place.coupe();
        List<Snap> walk =
                WalkKind.NEXT_DOOR.inspector(340, coupe.nextDoor(), 11).visit(new Random(3));
        List<PhotoId> order = inOrder();
        Map<PhotoId, ZoneId> places = new TreeMap<>(Comparator.comparingLong(PhotoId::value));
        for (int i = 0; i < order.size(); i++) {
            places.put(order.get(i), walk.get(i).zone());
        }
        assertThat(pinAll(places)).as("keys a photo").isLessThanOrEqualTo(1.7);
    }

    /** The photos as the sheet has them, stepped through once. */
    private List<PhotoId> inOrder() {
        robot.focusAndWaitForFocusGain(named("photos-sheet"));
        press(KeyEvent.VK_HOME);
        java.util.LinkedHashSet<PhotoId> order = new java.util.LinkedHashSet<>();
        int all = held().photos().size();
        for (int i = 0; i < 2 * all; i++) {
            robot.waitForIdle();
            inHand().map(Photo::id).ifPresent(order::add);
            press(KeyEvent.VK_RIGHT);
        }
        return List.copyOf(order);
    }
}
