package quarterlight.ui.kit.field;

import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.AbstractAction;
import javax.swing.JLabel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import quarterlight.ui.kit.look.Look;

/**
 * Offers within a field the first word of a list that goes on as was typed; Down takes it. Nothing enters the field unasked. Event thread only.
 */
public final class WordOffer {
    private static final int LEAST = 2;

    private final JTextField field;
    private final Supplier<List<String>> words;
    private final JLabel label = Look.secondary(new JLabel());
    private String typed = "";
    private String taken = "";

    private WordOffer(JTextField field, Supplier<List<String>> words) {
        this.field = field;
        this.words = words;
    }

    /** @param words the likeliest first; asked at each letter */
    public static void in(JTextField field, Supplier<List<String>> words) {
        WordOffer offer = new WordOffer(field, words);
        field.putClientProperty("JTextField.trailingComponent", offer.label);
        field.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent e) {
                offer.show();
            }

            @Override
            public void removeUpdate(DocumentEvent e) {
                offer.show();
            }

            @Override
            public void changedUpdate(DocumentEvent e) {
                offer.show();
            }
        });
        field.getInputMap().put(KeyStroke.getKeyStroke("DOWN"), "take-offer");
        field.getActionMap().put("take-offer", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                offer.take();
            }
        });
    }

    /** Takes the word offered; once more the next one that begins with what was typed, after the last the first. */
    private void take() {
        String there = field.getText();
        if (!there.equals(taken)) {
            typed = there;
        }
        List<String> all = beginningWith(typed);
        if (!all.isEmpty()) {
            taken = all.get((all.indexOf(there) + 1) % all.size());
            field.setText(taken);
        }
    }

    /** The word offered for what stands in the field: the next one where the one that stands there was taken. */
    private Optional<String> found() {
        String there = field.getText();
        List<String> all = beginningWith(there.equals(taken) ? typed : there);
        return all.stream().skip(all.indexOf(there) + 1L).findFirst();
    }

    private List<String> beginningWith(String letters) {
        String begun = letters.strip().toLowerCase(Locale.ROOT);
        return begun.length() < LEAST
                ? List.of()
                : words.get().stream()
                        .filter(word -> word.length() > begun.length()
                                && word.toLowerCase(Locale.ROOT).startsWith(begun))
                        .toList();
    }

    private void show() {
        label.setText(found().map(word -> word + " \u2193 ").orElse(""));
    }
}
