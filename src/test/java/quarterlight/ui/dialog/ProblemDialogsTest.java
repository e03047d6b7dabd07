package quarterlight.ui.dialog;

import static org.assertj.core.api.Assertions.assertThat;

import javax.swing.JTextArea;
import org.junit.jupiter.api.Test;

class ProblemDialogsTest {
    private static final int LINES = 5;

    /** The dialog is packed by this height; what is missing of it is taken from the button. */
    @Test
    void aMessageIsAsHighAsItsWrappedLines() {
        JTextArea one = ProblemDialogs.message("Made the archive.");
        int line = one.getFontMetrics(one.getFont()).getHeight();
        assertThat(one.getPreferredSize().height).isBetween(line, 2 * line);
        JTextArea wrapped = ProblemDialogs.message("W".repeat(40) + " " + ("W".repeat(40) + " ").repeat(LINES - 1));
        assertThat(wrapped.getPreferredSize().width).isEqualTo(one.getPreferredSize().width);
        assertThat(wrapped.getPreferredSize().height).isGreaterThanOrEqualTo(LINES * line);
    }
}
