package quarterlight.ui.marks;

import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.AbstractAction;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.ZoneId;
import quarterlight.marks.VisitForms;
import quarterlight.marks.code.DatePattern;
import quarterlight.marks.code.DatePatterns;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.field.FormErrors;
import quarterlight.ui.kit.field.TypedText;
import quarterlight.ui.kit.field.WordOffer;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.TallPanel;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.ZoneField;
import quarterlight.ui.kit.widget.WordChoice;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.mark.MarkStage;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.statement.Origin;

/** The fields of one mark; every letter typed is read at once. Event thread only. */
final class MarkEditor extends TallPanel {
    private final transient OpenVisit visit;
    private final transient MarksModel model;
    private final transient MarksActions actions;
    private final transient Texts texts;
    private final JTextField part = field("part");
    private final JTextField text = field("text");
    private final JTextField expected = field("expected");
    private final JTextField lead = field("lead");
    private final JTextField note = field("note");
    private final WordChoice<MarkKind> kind;
    private final WordChoice<MarkStage> stage;
    private final WordChoice<Origin> origin;
    private final JComboBox<String> pattern = new JComboBox<>();
    private final ZoneField zone;
    private final JLabel photo = new JLabel(" ");
    private final transient FormErrors faults = new FormErrors();
    private boolean filling;
    private transient List<DatePattern> listed = List.of();
    private transient List<String> offered = List.of();

    MarkEditor(UiContext parts, OpenVisit visit, MarksModel model, MarksActions actions) {
        super(new MigLayout("insets 12 16 12 12, gapx 8, gapy 5, wrap 2, fillx", "[][grow,fill]"));
        this.visit = visit;
        this.model = model;
        this.actions = actions;
        this.texts = parts.texts();
        String open = texts.get("marks.unsaid");
        kind = new WordChoice<>(MarkKind.class, texts.get("marks.field.kind"), Optional.empty());
        stage = new WordChoice<>(MarkStage.class, texts.get("marks.field.stage"), Optional.of(open));
        origin = new WordChoice<>(Origin.class, texts.get("marks.field.origin"), Optional.of(open));
        zone = new ZoneField(parts, visit);
        pattern.setEditable(true);
        pattern.setPrototypeDisplayValue("0000000000");
        text.putClientProperty("FlatLaf.style", "font: +5");
        WordOffer.in(part, this::parts);
        row("part", part);
        row("kind", kind);
        row("text", text);
        row("stage", stage);
        row("origin", origin);
        row("pattern", pattern);
        row("expected", expected);
        row("lead", lead);
        add(new JLabel(texts.get("marks.field.zone")), "aligny top, gaptop 5");
        add(zone, "wmin 0");
        add(new JLabel(texts.get("marks.field.photo")));
        add(Look.secondary(photo), "split 2, growx, wmin 0");
        add(new JButton(actions.tieIt()), "growx 0");
        row("note", note);
        kind.addActionListener(e -> written());
        stage.addActionListener(e -> written());
        origin.addActionListener(e -> written());
        pattern.addActionListener(e -> written());
        if (pattern.getEditor().getEditorComponent() instanceof JTextField typed) {
            listen(typed);
        }
        zone.onChange(() -> {
            model.write(model.state().draft().at(zone.zones().stream().findFirst(), Optional.empty()));
            visit.selection().zones(zone.zones());
        });
        add(faults.line(), "span, growx, wmin 0, hidemode 3");
        actions.onRefused(this::showFaults);
        actions.onBegin(() -> (part.getText().isEmpty() ? part : text).requestFocusInWindow());
    }

    private void showFaults() {
        fault("part", part);
        fault("text", text);
        fault("lead", lead);
        faults.none();
        faults.go();
    }

    /** From the top down, for the keyboard goes to the first. */
    private void fault(String name, JTextField at) {
        Map<String, String> problems = model.state().draft().problems();
        faults.at(at, problems.containsKey(name), texts.get(problems.getOrDefault(name, "marks.needs.text")));
    }

    private JTextField field(String name) {
        JTextField made = new JTextField();
        TypedText.keeping(made, () -> actions.keepRow()).setName("mark-" + name);
        listen(made);
        made.getInputMap().put(KeyStroke.getKeyStroke("ENTER"), "keep");
        made.getActionMap().put("keep", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                actions.keep();
            }
        });
        return made;
    }

    private void listen(JTextField made) {
        made.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent e) {
                written();
            }

            @Override
            public void removeUpdate(DocumentEvent e) {
                written();
            }

            @Override
            public void changedUpdate(DocumentEvent e) {
                written();
            }
        });
    }

    private void row(String name, JComponent control) {
        JLabel label = new JLabel(texts.get("marks.field." + name));
        label.setLabelFor(control);
        Look.named(control, texts.get("marks.field." + name));
        control.setToolTipText(texts.get("marks.tip." + name));
        add(label);
        add(control, "wmin 0");
    }

    /** Parts that bear marks: those of this visit first. */
    private List<String> parts() {
        return Stream.concat(
                        visit.visit().marks().stream().map(row -> row.value().part()),
                        Stream.of(texts.get("marks.parts").split(";")).map(String::strip))
                .distinct()
                .toList();
    }

    /** The patterns to choose from: forms that other marks of the visit bear stand before those of the list. */
    void patterns(DatePatterns patterns) {
        listed = patterns.all();
        offerPatterns();
    }

    private void offerPatterns() {
        List<String> names = Stream.of(
                        Stream.of("", DatePattern.NONE),
                        VisitForms.of(visit.visit()).all().stream().map(DatePattern::name),
                        listed.stream().map(DatePattern::name))
                .flatMap(some -> some)
                .distinct()
                .toList();
        if (names.equals(offered)) {
            return;
        }
        offered = names;
        filling = true;
        Object before = pattern.getEditor().getItem();
        pattern.setModel(new DefaultComboBoxModel<>(names.toArray(String[]::new)));
        pattern.setSelectedItem(before);
        filling = false;
    }

    private String chosenPattern() {
        return pattern.getEditor().getItem() instanceof String typed ? typed : "";
    }

    private void written() {
        if (!filling) {
            MarkDraft old = model.state().draft();
            model.write(new MarkDraft(
                    part.getText(),
                    kind.chosen().orElse(old.kind()),
                    text.getText(),
                    stage.chosen(),
                    chosenPattern(),
                    expected.getText(),
                    lead.getText(),
                    old.zone(),
                    old.point(),
                    old.photo(),
                    note.getText(),
                    origin.chosen()));
        }
    }

    void render() {
        offerPatterns();
        filling = true;
        MarkDraft draft = model.state().draft();
        fill(part, draft.part());
        fill(text, draft.text());
        fill(expected, draft.expected());
        fill(lead, draft.leadDays());
        fill(note, draft.note());
        kind.choose(Optional.of(draft.kind()));
        stage.choose(draft.stage());
        origin.choose(draft.origin());
        if (!chosenPattern().equals(draft.pattern())) {
            pattern.setSelectedItem(draft.pattern());
        }
        if (draft.problem().isEmpty()) {
            faults.none();
        }
        List<ZoneId> zones = draft.zone().stream().toList();
        zone.zones(java.util.Set.copyOf(zones));
        photo.setText(draft.photo()
                .flatMap(id -> visit.visit().photo(id))
                .map(Photo::file)
                .map(file -> file.name())
                .orElse(texts.get("marks.photo.none")));
        List.of(part, text, expected, lead, note).forEach(field -> field.setEditable(visit.isEditable()));
        List.of(kind, stage, origin, pattern, zone).forEach(control -> control.setEnabled(visit.isEditable()));
        filling = false;
    }

    private static void fill(JTextField field, String words) {
        if (!field.getText().equals(words)) {
            field.setText(words);
        }
    }
}
