package quarterlight.ui.kit;

import java.util.Objects;
import javax.swing.SwingUtilities;

/**
 * Does something that can wait: once, however often it was asked for, and after the frame that is due by then. What a key changes most
 * visibly is so on the screen before it. Event thread only.
 */
public final class DeferredTask {
    private final Runnable task;
    private boolean asked;

    public DeferredTask(Runnable task) {
        this.task = Objects.requireNonNull(task, "task");
    }

    /** Swing has the frame of this event in its queue when the event ends; two events further it is painted. */
    public void ask() {
        if (!asked) {
            asked = true;
            SwingUtilities.invokeLater(() -> SwingUtilities.invokeLater(this::run));
        }
    }

    private void run() {
        asked = false;
        task.run();
    }
}
