package quarterlight.ui.kit.look;

import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.text.DefaultCaret;

/** Sentences that wrap, to be read and copied; new ones do not scroll the pane around them. */
public final class Prose {
    private Prose() {}

    public static JTextArea area() {
        JTextArea words = new JTextArea();
        words.setEditable(false);
        words.setLineWrap(true);
        words.setWrapStyleWord(true);
        words.setOpaque(false);
        words.setBorder(null);
        words.setFont(new JLabel().getFont());
        if (words.getCaret() instanceof DefaultCaret caret) {
            caret.setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
        }
        return words;
    }
}
