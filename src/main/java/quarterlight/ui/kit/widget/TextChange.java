package quarterlight.ui.kit.widget;

import java.util.Objects;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/** Does one thing at every change of a text. Event thread only. */
public final class TextChange implements DocumentListener {
    private final Runnable task;

    public TextChange(Runnable task) {
        this.task = Objects.requireNonNull(task, "task");
    }

    @Override
    public void insertUpdate(DocumentEvent e) {
        task.run();
    }

    @Override
    public void removeUpdate(DocumentEvent e) {
        task.run();
    }

    @Override
    public void changedUpdate(DocumentEvent e) {
        task.run();
    }
}
