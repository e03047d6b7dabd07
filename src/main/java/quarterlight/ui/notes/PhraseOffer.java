package quarterlight.ui.notes;

import java.awt.Dimension;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import quarterlight.ui.kit.look.Look;

/** Sentences of earlier visits below a field, that go on as what is typed there; Up and Down choose one, a click takes it. Event thread only. */
final class PhraseOffer {
    private static final int OFFERED = 3;

    private final JTextField text;
    private final DefaultListModel<String> offered = new DefaultListModel<>();
    private final JList<String> phrases = new JList<>(offered) {
        /** Room for as many as are offered at most, however large the text is. */
        @Override
        public Dimension getPreferredSize() {
            return new Dimension(super.getPreferredSize().width, getPreferredScrollableViewportSize().height);
        }
    };

    /** @param name for those who hear the window */
    PhraseOffer(JTextField text, String name) {
        this.text = text;
        phrases.setVisibleRowCount(OFFERED);
        phrases.setPrototypeCellValue("Ag");
        phrases.setOpaque(false);
        phrases.setFocusable(false);
        Look.secondary(phrases);
        Look.named(phrases, name);
        phrases.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                take();
            }
        });
        key("DOWN", 1);
        key("UP", -1);
    }

    private void key(String stroke, int by) {
        text.getInputMap().put(KeyStroke.getKeyStroke(stroke), stroke);
        text.getActionMap().put(stroke, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                if (!offered.isEmpty()) {
                    phrases.setSelectedIndex(Math.floorMod(phrases.getSelectedIndex() + by, offered.size()));
                }
            }
        });
    }

    JComponent component() {
        return phrases;
    }

    /** Offers the first of some sentences. */
    void offer(List<String> sentences) {
        offered.clear();
        sentences.stream().limit(OFFERED).forEach(offered::addElement);
    }

    /** None is chosen. */
    void letGo() {
        phrases.clearSelection();
    }

    /** Writes the chosen sentence into the field; false if none is chosen. */
    boolean take() {
        Optional<String> chosen = Optional.ofNullable(phrases.getSelectedValue());
        chosen.ifPresent(words -> {
            letGo();
            text.setText(words);
            text.requestFocusInWindow();
        });
        return chosen.isPresent();
    }
}
