package quarterlight.ui.kit.said;

import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.widget.WordChoice;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.statement.Certainty;
import quarterlight.visit.statement.SaidBy;
import quarterlight.visit.statement.SaidSize;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.statement.StatementDetails;

/** What may be told beside a statement: part, size, certainty, who says so, private, and what it withdraws. Event thread only. */
public final class DetailsLine extends JPanel {
    private final transient Texts texts;
    private final JTextField part = new JTextField();
    private final JTextField size = new JTextField();
    private final WordChoice<Certainty> certainty;
    private final WordChoice<SaidBy> saidBy;
    private final JCheckBox confidential;
    private final JPanel taken = new JPanel(new MigLayout("insets 0, gap 8, fillx", "[grow,fill][]"));
    private final JLabel takenBack = new JLabel(" ");
    private Optional<RecordId> withdraws = Optional.empty();

    /** @param brief true where only part and private make sense */
    public DetailsLine(Texts texts, boolean brief) {
        super(new MigLayout("insets 0, gap 8, fillx, hidemode 3", "[grow,fill][][][][]"));
        this.texts = texts;
        setOpaque(false);
        certainty = new WordChoice<>(
                Certainty.class, texts.get("notes.certainty"), Optional.of(texts.get("notes.certainty.unsaid")));
        saidBy = new WordChoice<>(SaidBy.class, texts.get("notes.said"), Optional.empty());
        confidential = new JCheckBox(texts.get("notes.private"));
        confidential.setToolTipText(texts.get("notes.private.tip"));
        named(part, "part", brief);
        named(size, "size", brief);
        certainty.setName("note-certainty");
        saidBy.setName("note-said-by");
        confidential.setName(brief ? "not-private" : "note-private");
        add(part, "wmin 60");
        if (!brief) {
            add(size, "w 96!");
            add(certainty, "wmin 60");
            saidBy.setToolTipText(texts.get("notes.said"));
            add(saidBy, "wmin 60");
        }
        add(confidential, "wrap");
        taken.setOpaque(false);
        taken.add(takenBack, "wmin 0");
        JButton instead = new JButton(texts.get("notes.withdraw.not"));
        instead.addActionListener(e -> withdraws(Optional.empty()));
        taken.add(instead);
        taken.setVisible(false);
        add(taken, "span, growx, wmin 0");
    }

    private void named(JTextField field, String name, boolean brief) {
        field.setName((brief ? "not-" : "note-") + name);
        field.putClientProperty("JTextField.placeholderText", texts.get("notes." + name + ".hint"));
        Look.named(field, texts.get("notes." + name));
    }

    /** Enter in a field does what Enter in the sentence does. */
    public void onEnter(Runnable work) {
        part.addActionListener(e -> work.run());
        size.addActionListener(e -> work.run());
    }

    public StatementDetails details() {
        return new StatementDetails(
                filled(part),
                certainty.chosen(),
                saidBy.chosen().orElse(SaidBy.INSPECTOR),
                filled(size).map(SaidSize::new),
                confidential.isSelected(),
                withdraws);
    }

    private static Optional<String> filled(JTextField field) {
        return Optional.of(field.getText().strip()).filter(text -> !text.isEmpty());
    }

    public JTextField partField() {
        return part;
    }

    public JTextField sizeField() {
        return size;
    }

    /** Writes the fields alone. */
    public void fill(StatementDetails details) {
        part.setText(details.part().orElse(""));
        size.setText(details.size().map(SaidSize::said).orElse(""));
    }

    /** @param fields writes the fields, which may hold what was typed before */
    public void show(StatementDetails details, Runnable fields) {
        fields.run();
        certainty.choose(details.certainty());
        saidBy.choose(Optional.of(details.saidBy()));
        confidential.setSelected(details.confidential());
        withdraws = details.withdraws();
        taken.setVisible(false);
    }

    /** The statement that is being written will take an earlier one back. */
    public void withdraws(Optional<Recorded<Statement>> earlier) {
        withdraws = earlier.map(Recorded::id);
        takenBack.setText(
                earlier.map(row -> texts.get("notes.withdraw.of", row.value().text()))
                        .orElse(" "));
        takenBack.setToolTipText(takenBack.getText());
        taken.setVisible(earlier.isPresent());
        revalidate();
    }
}
