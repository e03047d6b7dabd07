package quarterlight.ui;

import java.awt.Component;
import java.awt.Window;
import java.awt.event.ActionEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JRootPane;
import javax.swing.JTabbedPane;
import javax.swing.KeyStroke;
import javax.swing.RootPaneContainer;
import javax.swing.SwingUtilities;
import quarterlight.ui.kit.visit.Station;

/** Pictures of what lies behind the stations: their pages, the layer of coverage, the first doubt, and the windows that keys open. */
final class RestPictures {
    private static final int WAIT_MS = 15_000;
    private static final List<String> WITH_VISIT =
            List.of("F1", "ctrl K", "ctrl I", "ctrl N", "ctrl shift L", "F3", "ctrl shift C");
    private static final List<String> WITHOUT = List.of("F1", "ctrl N", "ctrl shift L");

    private RestPictures() {}

    /** Every page of the station in front. */
    static void pages(JFrame frame, Station station, Path folder) throws Exception {
        String name = station.name().toLowerCase(Locale.ROOT);
        AtomicReference<Optional<Component>> found = new AtomicReference<>(Optional.empty());
        SwingUtilities.invokeAndWait(() ->
                found.set(StationPictures.find(frame, c -> c instanceof JTabbedPane tabs && tabs.getTabCount() > 1)));
        if (found.get().isPresent()) {
            JTabbedPane tabs = (JTabbedPane) found.get().get();
            for (int page = 1; page < tabs.getTabCount(); page++) {
                int at = page;
                SwingUtilities.invokeAndWait(() -> tabs.setSelectedIndex(at));
                StationPictures.picture(frame, folder.resolve(name + "-" + (page + 1) + ".png"));
            }
            SwingUtilities.invokeAndWait(() -> tabs.setSelectedIndex(0));
        }
        // a visit without words has no questions
        if (station == Station.WORDS && there(frame, "words-asking")) {
            AbstractButton questions = (AbstractButton) StationPictures.wait(c -> "words-asking".equals(c.getName()));
            SwingUtilities.invokeAndWait(questions::doClick);
            StationPictures.picture(frame, folder.resolve("words-questions.png"));
            SwingUtilities.invokeAndWait(questions::doClick);
        }
    }

    private static boolean there(JFrame frame, String name) throws Exception {
        AtomicReference<Boolean> found = new AtomicReference<>(false);
        SwingUtilities.invokeAndWait(() -> found.set(
                StationPictures.find(frame, c -> name.equals(c.getName())).isPresent()));
        return found.get();
    }

    static void windows(JFrame frame, boolean visit, Path folder) throws Exception {
        if (visit) {
            StationPictures.click("layer-coverage");
            StationPictures.picture(frame, folder.resolve("coverage.png"));
            StationPictures.click("layer-coverage");
            press(frame, "F6");
            StationPictures.picture(frame, folder.resolve("doubt.png"));
        }
        for (String key : visit ? WITH_VISIT : WITHOUT) {
            Set<Window> before = showing();
            press(frame, key);
            Optional<Window> opened = Optional.empty();
            for (int waited = 0; waited < WAIT_MS && opened.isEmpty(); waited += 100) {
                TimeUnit.MILLISECONDS.sleep(100);
                opened = showing().stream()
                        .filter(window -> !before.contains(window) && window instanceof RootPaneContainer)
                        .findFirst();
            }
            if (opened.isPresent()) {
                JRootPane root = ((RootPaneContainer) opened.get()).getRootPane();
                StationPictures.picture(root, folder.resolve("window-" + key.replace(' ', '-') + ".png"));
                Window window = opened.get();
                SwingUtilities.invokeAndWait(window::dispose);
            }
        }
    }

    private static Set<Window> showing() {
        return Stream.of(Window.getWindows()).filter(Component::isShowing).collect(Collectors.toSet());
    }

    /** As the keys do, without waiting for a window that keeps the thread. */
    private static void press(JFrame frame, String keys) {
        JRootPane root = frame.getRootPane();
        Object name = root.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).get(KeyStroke.getKeyStroke(keys));
        Action action = root.getActionMap().get(name);
        SwingUtilities.invokeLater(
                () -> action.actionPerformed(new ActionEvent(root, ActionEvent.ACTION_PERFORMED, "")));
    }
}
