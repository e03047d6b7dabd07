package quarterlight.ui.compare;

import java.awt.Color;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import javax.swing.JTextArea;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Prose;

/** Sentences of the comparison on the screen. Event thread only. */
final class Sentence {
    private Sentence() {}

    static JTextArea of(String text) {
        JTextArea area = Prose.area();
        area.setText(text);
        area.setFocusable(false);
        // how many lines it takes is known only once it has its width
        area.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                if (area.getPreferredSize().height != area.getHeight()) {
                    area.revalidate();
                }
            }
        });
        Look.named(area, text);
        return area;
    }

    static JTextArea of(String text, Color ink) {
        JTextArea area = of(text);
        area.setForeground(ink);
        return area;
    }

    static JTextArea strong(String text, Color ink) {
        JTextArea area = of(text, ink);
        area.putClientProperty("FlatLaf.styleClass", "semibold");
        return area;
    }
}
