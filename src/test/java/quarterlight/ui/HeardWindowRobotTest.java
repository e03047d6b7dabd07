package quarterlight.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Predicate;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleState;
import javax.swing.AbstractButton;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import quarterlight.ui.kit.visit.Station;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.Recorded;

/** The window as those use it who hear it: what a screen reader is given of every station, and a photo pinned through that alone. */
class HeardWindowRobotTest extends DeskRobot {
    @Test
    void aPhotoIsPinnedThroughTheAccessibleTreeAlone() throws Exception {
        act(named(AccessibleRole.LIST, "Contact sheet"), "IMG_103.JPG");
        until(
                "the photo is in hand",
                () -> part("IMG_103.JPG").getAccessibleStateSet().contains(AccessibleState.SELECTED));
        until("the drawing is heard", () -> heard(c -> c.getAccessibleName().startsWith("Hood"))
                .isPresent());
        act(named(AccessibleRole.CANVAS, "Body diagram"), "Hood");
        until("the pin is kept", () -> !held().pins().isEmpty());
        assertThat(held().pins())
                .extracting(Recorded::value)
                .extracting(Pin::zone)
                .extracting(Object::toString)
                .allMatch(zone -> zone.contains("hood"));
        assertThat(held().photo(held().pins().get(0).value().photo())
                        .orElseThrow()
                        .file()
                        .name())
                .isEqualTo("IMG_103.JPG");
        until("its cell says so", () -> part("IMG_103.JPG").getAccessibleName().contains("Hood"));
    }

    @Test
    void everythingThatTakesTheKeyboardHasANameInEveryStation() throws Exception {
        List<String> nameless = new ArrayList<>();
        int seen = 0;
        for (Station station : Station.values()) {
            AbstractButton button =
                    (AbstractButton) robot.finder().find(c -> ("station-" + station.digit()).equals(c.getName()));
            SwingUtilities.invokeAndWait(button::doClick);
            robot.waitForIdle();
            List<AccessibleContext> all = on(() -> {
                List<AccessibleContext> found = new ArrayList<>();
                walk(window.target().getAccessibleContext(), found);
                return found;
            });
            seen += all.size();
            SwingUtilities.invokeAndWait(() -> all.stream()
                    .filter(HeardWindowRobotTest::takesKeyboard)
                    .filter(c -> c.getAccessibleName() == null
                            || c.getAccessibleName().isBlank())
                    .forEach(c -> nameless.add(station + ": " + c.getAccessibleRole() + " in "
                            + c.getAccessibleParent().getClass().getName())));
        }
        assertThat(nameless).isEmpty();
        assertThat(seen).as("what was walked over").isGreaterThan(300);
    }

    private static boolean takesKeyboard(AccessibleContext c) {
        return c.getAccessibleComponent() != null
                && c.getAccessibleComponent().isFocusTraversable()
                && c.getAccessibleStateSet().contains(AccessibleState.SHOWING)
                && !List.of(
                                AccessibleRole.ROOT_PANE,
                                AccessibleRole.PANEL,
                                AccessibleRole.LAYERED_PANE,
                                AccessibleRole.SCROLL_PANE,
                                AccessibleRole.VIEWPORT,
                                AccessibleRole.SPLIT_PANE,
                                AccessibleRole.SCROLL_BAR,
                                AccessibleRole.FRAME,
                                AccessibleRole.LABEL,
                                AccessibleRole.FILLER,
                                AccessibleRole.MENU_BAR)
                        .contains(c.getAccessibleRole());
    }

    private static void walk(AccessibleContext at, List<AccessibleContext> into) {
        into.add(at);
        for (int i = 0; i < Math.min(400, at.getAccessibleChildrenCount()); i++) {
            Accessible child = at.getAccessibleChild(i);
            if (child != null && child.getAccessibleContext() != null && into.size() < 20_000) {
                walk(child.getAccessibleContext(), into);
            }
        }
    }

    private AccessibleContext named(AccessibleRole role, String name) {
        return heard(c -> c.getAccessibleRole().equals(role)
                        && c.getAccessibleName() != null
                        && c.getAccessibleName().contains(name)
                        && c.getAccessibleChildrenCount() > 0)
                .orElseThrow();
    }

    private AccessibleContext part(String name) {
        return heard(c -> c.getAccessibleName() != null
                        && c.getAccessibleName().startsWith(name)
                        && c.getAccessibleRole().equals(AccessibleRole.LIST_ITEM))
                .orElseThrow();
    }

    private Optional<AccessibleContext> heard(Predicate<AccessibleContext> wanted) {
        return on(() -> {
            List<AccessibleContext> all = new ArrayList<>();
            walk(window.target().getAccessibleContext(), all);
            return all.stream()
                    .filter(c -> c.getAccessibleName() != null)
                    .filter(wanted)
                    .findFirst();
        });
    }

    /** Does what a child of something offers, as a screen reader does. */
    private static void act(AccessibleContext parent, String child) {
        boolean done = on(() -> {
            for (int i = 0; i < parent.getAccessibleChildrenCount(); i++) {
                AccessibleContext one = parent.getAccessibleChild(i).getAccessibleContext();
                if (one.getAccessibleName().startsWith(child)) {
                    return one.getAccessibleAction().doAccessibleAction(0);
                }
            }
            return false;
        });
        assertThat(done).as(child).isTrue();
    }

    private static <T> T on(java.util.function.Supplier<T> question) {
        AtomicReference<T> answer = new AtomicReference<>();
        try {
            SwingUtilities.invokeAndWait(() -> answer.set(question.get()));
        } catch (InterruptedException | java.lang.reflect.InvocationTargetException e) {
            throw new IllegalStateException(e);
        }
        return answer.get();
    }
}
