package quarterlight.ui;

import java.util.ArrayDeque;
import java.util.List;
import java.util.Queue;
import javax.swing.Timer;
import quarterlight.ui.kit.visit.Station;

/**
 * Shows every station of the visit that is being opened, one after the other, and closes the window; for the run in which the Java machine
 * records the classes that a start uses. Event thread only.
 */
final class ScreenWarmup {
    /** Long enough for what a station draws in the background. */
    private static final int EACH_MS = 900;

    private final MainWindow window;
    private final Queue<Station> next = new ArrayDeque<>(List.of(Station.values()));
    private final Timer timer = new Timer(EACH_MS, tick -> step());

    ScreenWarmup(MainWindow window) {
        this.window = window;
    }

    void begin() {
        timer.start();
    }

    private void step() {
        if (next.isEmpty()) {
            timer.stop();
            window.quit();
        } else {
            window.bench().ifPresent(bench -> bench.show(next.remove()));
        }
    }
}
