package quarterlight.ui.kit.widget;

import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import net.miginfocom.swing.MigLayout;
import quarterlight.task.JobRunner;
import quarterlight.ui.kit.SwingJobRunner;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Hairline;
import quarterlight.ui.kit.look.Look;

/** The line at the foot of the window: what lies under the pointer or what a click does, what was done last, and how far long work is. Event thread only. */
public final class ProgressLine extends JPanel implements SwingJobRunner.Display {
    private final JLabel hint = new JLabel(" ");
    private final JLabel what = new JLabel(" ");
    private final JProgressBar bar = new JProgressBar();
    private final JButton cancel;
    private String said = " ";
    private final transient List<JobRunner.Cancel> running = new ArrayList<>();

    public ProgressLine(Texts texts) {
        super(new MigLayout("insets 2 12 2 12, gapx 16, fillx, hidemode 3", "[grow,fill,0::][0::][180!][]", "[26!]"));
        setBorder(new Hairline(Hairline.Side.TOP));
        hint.setName("foot-hint");
        what.setName("foot-said");
        cancel = new JButton(texts.get("progress.cancel"));
        cancel.setName("progress-cancel");
        Look.named(bar, texts.get("progress.name"));
        cancel.addActionListener(e -> {
            running.forEach(JobRunner.Cancel::cancel);
            cancel.setEnabled(false);
        });
        add(Look.secondary(hint), "growx, wmin 0");
        add(what, "wmin 0");
        add(bar, "growx");
        add(cancel);
        reveal(false);
    }

    /** What lies under the pointer, or what a click does now; stands at the left. */
    public void hint(String sentence) {
        hint.setText(sentence.isEmpty() ? " " : sentence);
        hint.setToolTipText(sentence.isEmpty() ? null : sentence);
    }

    /** A short word on what was done last; stays until the next, and comes back after work that told of itself. */
    public void say(String sentence) {
        said = sentence;
        show(sentence);
    }

    /** Corrects a word that no longer holds; anything else that was said since then stays. */
    public void sayInstead(String before, String now) {
        if (said.equals(before)) {
            said = now;
            if (running.isEmpty()) {
                show(now);
            }
        }
    }

    private void show(String sentence) {
        what.setText(sentence);
        what.setToolTipText(sentence);
    }

    @Override
    public void started(String title, JobRunner.Cancel stop) {
        running.add(stop);
        cancel.setEnabled(true);
        bar.setIndeterminate(!Look.still());
        show(title);
        reveal(true);
    }

    @Override
    public void report(int done, int total, String detail) {
        bar.setIndeterminate(total <= 0 && !Look.still());
        bar.setMaximum(Math.max(1, total));
        bar.setValue(done);
        show(detail);
    }

    @Override
    public void ended() {
        if (!running.isEmpty()) {
            running.remove(0);
        }
        if (running.isEmpty()) {
            reveal(false);
            show(said);
        }
    }

    private void reveal(boolean visible) {
        bar.setVisible(visible);
        cancel.setVisible(visible);
    }
}
