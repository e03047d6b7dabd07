package quarterlight.ui.rust;

import javax.swing.JLabel;
import javax.swing.JTextArea;

/** Sentences that wrap, to be read and copied. */
final class Prose {
    private Prose() {}

    static JTextArea area() {
        JTextArea words = new JTextArea();
        words.setEditable(false);
        words.setLineWrap(true);
        words.setWrapStyleWord(true);
        words.setOpaque(false);
        words.setBorder(null);
        words.setFont(new JLabel().getFont());
        return words;
    }
}
