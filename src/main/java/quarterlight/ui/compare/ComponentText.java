package quarterlight.ui.compare;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.text.JTextComponent;

/** The words that stand in a part of the window, in its order, as they are copied out of it. Event thread only. */
final class ComponentText {
    private ComponentText() {}

    static List<String> of(Container part) {
        List<String> words = new ArrayList<>();
        for (Component child : part.getComponents()) {
            if (child instanceof JTextComponent text) {
                words.add(text.getText());
            } else if (child instanceof JLabel label && label.getText() != null) {
                words.add(label.getText());
            } else if (child instanceof Container container) {
                words.addAll(of(container));
            }
        }
        return words;
    }
}
