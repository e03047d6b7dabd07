package quarterlight.ui.library;

import java.util.Optional;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;
import quarterlight.edit.library.VisitOrder;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.widget.TextChange;
import quarterlight.ui.kit.widget.WordChoice;

/** What is asked for: words or a number, and the order. Event thread only. */
final class LibrarySearch extends JPanel {
    private static final long serialVersionUID = 1;
    private static final int PAUSE_MS = 150;

    private final transient LibraryModel model;
    private final JTextField field = new JTextField();
    private final JToggleButton words;
    private final JToggleButton number;
    private final WordChoice<VisitOrder> order;
    /** Asks once the typing pauses. */
    private final Timer pause = new Timer(PAUSE_MS, e -> ask());

    /** @param down the down arrow was pressed: the list is wanted */
    LibrarySearch(Texts texts, LibraryModel model, Runnable down) {
        super(new MigLayout("insets 0, gapx 8", "[grow,fill,120::][][]16[][]"));
        this.model = model;
        pause.setRepeats(false);
        field.setName("library-find");
        Look.named(field, texts.get("library.find"));
        field.putClientProperty("JTextField.placeholderText", texts.get("library.find.example"));
        field.putClientProperty("JTextField.showClearButton", true);
        field.getDocument().addDocumentListener(new TextChange(pause::restart));
        field.addActionListener(e -> ask());
        field.registerKeyboardAction(e -> down.run(), KeyStroke.getKeyStroke("DOWN"), JComponent.WHEN_FOCUSED);
        words = toggle(texts.get("library.words"), "library-words", texts.get("library.words.tip"));
        number = toggle(texts.get("library.number"), "library-number", texts.get("library.number.tip"));
        words.setSelected(true);
        ButtonGroup group = new ButtonGroup();
        group.add(words);
        group.add(number);
        order = new WordChoice<>(VisitOrder.class, texts.get("library.order"), Optional.empty());
        order.setName("library-order");
        order.choose(Optional.of(VisitOrder.DATE));
        order.addActionListener(e -> order.chosen().ifPresent(by -> model.change(question -> question.by(by))));
        JLabel by = new JLabel(texts.get("library.order"));
        by.setLabelFor(order);
        add(field, "h 28!");
        add(words);
        add(number);
        add(Look.secondary(by));
        add(order);
    }

    private JToggleButton toggle(String text, String name, String tip) {
        JToggleButton toggle = Look.toggle(new JToggleButton(text));
        toggle.setName(name);
        toggle.setToolTipText(tip);
        toggle.addActionListener(e -> ask());
        return toggle;
    }

    private void ask() {
        pause.stop();
        String text = field.getText().strip();
        boolean like = number.isSelected();
        model.change(question -> question.asking(text, like));
    }

    /** The field takes the keyboard, all of it marked. */
    void take() {
        field.requestFocusInWindow();
        field.selectAll();
    }
}
