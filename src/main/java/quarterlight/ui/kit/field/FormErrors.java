package quarterlight.ui.kit.field;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.swing.JComponent;
import javax.swing.JLabel;
import quarterlight.ui.kit.look.Look;
import quarterlight.units.XmlText;

/**
 * What keeps a form from being kept: all of it at once, marked at the fields, said in words below them, and the keyboard at the first. Event
 * thread only.
 */
public final class FormErrors {
    private static final String OUTLINE = "JComponent.outline";

    private final Map<JComponent, String> found = new LinkedHashMap<>();
    private final JLabel said = new JLabel(" ");
    private List<JComponent> marked = List.of();

    public FormErrors() {
        said.setName("faults");
        said.setForeground(Look.palette().caution());
        said.setVisible(false);
    }

    /** The line below the form; not there while nothing is wrong. */
    public JLabel line() {
        return said;
    }

    /** Notes a fault of a field if it is one; of two of the same field the first counts. */
    public FormErrors at(JComponent field, boolean wrong, String sentence) {
        if (wrong) {
            found.putIfAbsent(Objects.requireNonNull(field, "field"), Objects.requireNonNull(sentence, "sentence"));
        }
        return this;
    }

    /** Shows what was noted since the last time; true if there is nothing. */
    public boolean none() {
        marked.forEach(field -> mark(field, null));
        found.forEach(FormErrors::mark);
        marked = List.copyOf(found.keySet());
        said.setForeground(Look.palette().caution());
        said.setText("<html>" + XmlText.escaped(String.join(" ", new LinkedHashSet<>(found.values()))));
        said.setVisible(!found.isEmpty());
        found.clear();
        return marked.isEmpty();
    }

    /** Brings the keyboard to the first field at fault. */
    public void go() {
        marked.stream().findFirst().ifPresent(JComponent::requestFocusInWindow);
    }

    private static void mark(JComponent field, String sentence) {
        field.putClientProperty(OUTLINE, sentence == null ? null : "error");
        field.getAccessibleContext().setAccessibleDescription(sentence);
        field.repaint();
    }
}
