package quarterlight.ui.notes;

import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.ZoneId;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.field.TypedText;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.units.XmlText;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.statement.Basis;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Origin;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.statement.StatementDetails;

/** The odometer held against the papers and against the wear; each answer becomes a statement. Event thread only. */
final class OdometerPane extends JPanel {
    private static final ZoneId PAPERS = new ZoneId("identity-papers");
    private static final ZoneId WEAR = new ZoneId("pedals");
    private static final List<Facets> ANSWERS =
            List.of(Facets.of(Condition.SOUND), Facets.of(Origin.DOES_NOT_BELONG), Facets.of(Condition.NOT_LOOKED_AT));

    private final transient UiContext parts;
    private final transient OpenVisit visit;
    private final transient NotesActions actions;
    private final transient Texts texts;
    private final JTextField reading = new JTextField();
    private final JLabel said = new JLabel(" ");
    private final FiguresPane figures;

    OdometerPane(UiContext parts, OpenVisit visit, NotesActions actions) {
        super(new MigLayout("insets 16, gap 8, fillx, wrap 4", "[][][grow,fill][]"));
        this.parts = parts;
        this.visit = visit;
        this.actions = actions;
        this.texts = parts.texts();
        figures = new FiguresPane(parts, visit, actions);
        add(Look.secondary(new JLabel(texts.get("notes.odometer.hint"))), "span, wmin 0");
        JButton keep = new JButton(texts.get("notes.keep"));
        label("notes.odometer.reading", reading);
        reading.setName("odometer");
        add(reading, "span 2, growx, wmin 0");
        add(keep);
        keep.addActionListener(e -> keepReading());
        reading.addActionListener(e -> keepReading());
        TypedText.keeping(reading, this::keepReading);
        row("papers", PAPERS, Basis.FROM_PAPERS);
        row("wear", WEAR, Basis.SEEN);
        add(Look.secondary(said), "span, wmin 0, gaptop 8");
        add(Look.secondary(new JLabel(texts.get("notes.figures"))), "span, wmin 0, gaptop 16");
        add(figures, "span, grow, push, wmin 0");
    }

    private void label(String key, JTextField field) {
        JLabel label = new JLabel(texts.get(key));
        label.setLabelFor(field);
        Look.named(field, texts.get(key));
        add(label);
    }

    private void row(String name, ZoneId zone, Basis basis) {
        JTextField words = new JTextField();
        words.setName("odometer-" + name);
        label("notes.odometer." + name, words);
        words.putClientProperty("JTextField.placeholderText", texts.get("notes.odometer.tip." + name));
        JComboBox<String> answer = new JComboBox<>();
        ANSWERS.forEach(kind ->
                answer.addItem(texts.get("notes.odometer.answer." + kind.codes().replace(' ', '_'))));
        Look.named(answer, texts.get("notes.odometer." + name));
        add(answer);
        add(words, "wmin 0");
        JButton keep = new JButton(texts.get("notes.keep"));
        add(keep);
        Runnable work = () -> keep(name, zone, basis, ANSWERS.get(answer.getSelectedIndex()), words);
        words.addActionListener(e -> work.run());
        keep.addActionListener(e -> work.run());
    }

    private void keepReading() {
        String typed = reading.getText().strip();
        if (visit.isEditable() && !typed.equals(visit.visit().facts().odometer().orElse(""))) {
            actions.fact("odometer", typed);
        }
    }

    private void keep(String name, ZoneId zone, Basis basis, Facets kind, JTextField words) {
        if (!visit.isEditable() || words.getText().isBlank()) {
            parts.problems().remark(texts.get("notes.needs.text"));
            return;
        }
        String sentence = texts.get(
                "notes.odometer.sentence." + name,
                visit.visit().facts().odometer().orElse(texts.get("notes.odometer.unread")),
                words.getText().strip());
        actions.state(
                List.of(zone),
                kind,
                sentence,
                Optional.empty(),
                Optional.of(kind.is(Condition.NOT_LOOKED_AT) ? Basis.NOT_ESTABLISHED : basis),
                visit.selection().photo(),
                List.of(),
                StatementDetails.NONE);
        words.setText("");
    }

    void render() {
        figures.render();
        String kept = visit.visit().facts().odometer().orElse("");
        if (!reading.isFocusOwner() && !reading.getText().equals(kept)) {
            reading.setText(kept);
        }
        reading.setEditable(visit.isEditable());
        List<String> held = visit.visit().statements().stream()
                .map(Recorded::value)
                .filter(row -> row.zone().equals(PAPERS) || row.zone().equals(WEAR))
                .map(Statement::text)
                .filter(text -> text.startsWith(texts.get("notes.odometer.begin")))
                .toList();
        said.setText(
                held.isEmpty()
                        ? texts.get("notes.odometer.none")
                        : "<html>" + XmlText.escaped(String.join("\n", held)).replace("\n", "<br>") + "</html>");
    }

    /** Chooses one of some figures; none if none stands here. */
    void choose(List<RecordId> rows) {
        figures.choose(rows);
    }
}
