package quarterlight.ui.notes;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.ZoneId;
import quarterlight.coverage.MeasureLimit;
import quarterlight.coverage.TrialItem;
import quarterlight.coverage.TrialList;
import quarterlight.table.list.UserList;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.field.Drafts;
import quarterlight.ui.kit.field.FormErrors;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.place.Subject;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.PhotoSteps;
import quarterlight.ui.kit.widget.FactTable;
import quarterlight.ui.kit.widget.TextChange;
import quarterlight.ui.kit.widget.UserListDialog;
import quarterlight.ui.kit.widget.Weight;
import quarterlight.ui.kit.widget.WordChoice;
import quarterlight.units.Numerals;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.trial.Trial;
import quarterlight.visit.trial.TrialNames;
import quarterlight.visit.trial.TrialResult;

/** The functions to try by groups and what was found: a letter in the list says the result. Event thread only. */
final class TrialsPane extends JPanel {
    private final transient UiContext parts;
    private final transient OpenVisit visit;
    private final transient NotesModel model;
    private final transient NotesActions actions;
    private final transient Texts texts;
    private final FactTable<NotesModel.TrialLine> table;
    private final JTextField item = new JTextField();
    private final WordChoice<TrialResult> result;
    private final JTextField value = new JTextField(6);
    private final JTextField unit = new JTextField(4);
    private final JTextField note = new JTextField();
    private final JCheckBox runs;
    private final JButton keep;
    private final transient FormErrors faults = new FormErrors();
    private final transient Drafts drafts = new Drafts(List.of(item, value, unit, note));
    private final JLabel hint = new JLabel(" ");
    private final JLabel limit = new JLabel(" ");

    TrialsPane(UiContext parts, OpenVisit visit, NotesModel model, NotesActions actions) {
        super(new MigLayout("insets 0, gap 0, wrap 1, fill", "[grow,fill]", "[][grow,fill][]"));
        this.parts = parts;
        this.visit = visit;
        this.model = model;
        this.actions = actions;
        this.texts = parts.texts();
        result = new WordChoice<>(TrialResult.class, texts.get("notes.column.result"), Optional.empty());
        runs = new JCheckBox(texts.get("notes.runs"));
        runs.setName("trials-runs");
        keep = new JButton(texts.get("notes.keep"));
        table = new FactTable<>(
                texts.get("notes.tab.trials"),
                List.of(
                        column("group", 76, line -> line.listed()
                                .map(TrialItem::group)
                                .map(g -> g.said())
                                .orElse("")),
                        column("item", 200, line -> TrialNames.said(line.item())),
                        column(
                                        "result",
                                        120,
                                        line -> of(line, one -> one.result().said()))
                                .weighed(TrialsPane::weight),
                        column(
                                        "value",
                                        60,
                                        line -> of(line, one -> one.value()
                                                .map(Numerals::typed)
                                                .orElse("")))
                                .numbers(),
                        column("unit", 44, line -> of(line, one -> one.unit().orElse(""))),
                        column("note", 200, line -> of(line, one -> one.note().orElse("")))),
                line -> line.item()
                        + line.kept().map(row -> row.id().toString()).orElse(""));
        table.setName("trials");
        table.onChosen(this::fill);
        for (TrialResult one : TrialResult.values()) {
            if (one == TrialResult.MEASURED) {
                continue;
            }
            table.onKey(letter(one), () -> quick(one));
        }
        table.onKey("ENTER", value::requestFocusInWindow);
        table.onKey("DELETE", this::remove);
        Command grounds = visit.grounds(this::subject);
        Command gone = Command.of(texts, "notes.remove", this::remove);
        table.menu(() -> List.of(grounds, gone));
        table.tips(line -> subject(line).flatMap(visit::glance));
        runs.addActionListener(e -> model.runs(runs.isSelected()));
        List.of(item, value, unit, note).forEach(field -> field.addActionListener(e -> keep()));
        keep.addActionListener(e -> keep());
        drafts.keeping(this::keepRow);
        add(head());
        JScrollPane scroll = new JScrollPane(table);
        Look.bare(scroll);
        add(scroll);
        add(form());
    }

    private FactTable.Column<NotesModel.TrialLine> column(
            String name, int width, Function<NotesModel.TrialLine, String> words) {
        return new FactTable.Column<>(texts.get("notes.column." + name), width, words);
    }

    /** What does not do its work, or was worked round, is seen first; what was not tried steps back. */
    private static Weight weight(NotesModel.TrialLine line) {
        return line.kept()
                .map(row -> switch (row.value().result()) {
                    case DOES_NOT, BYPASSED, HEAVY -> Weight.CAUTION;
                    case NOT_TRIED, NOT_FITTED -> Weight.QUIET;
                    default -> Weight.PLAIN;
                })
                .orElse(Weight.QUIET);
    }

    private static String of(NotesModel.TrialLine line, Function<Trial, String> words) {
        return line.kept().map(Recorded::value).map(words).orElse("");
    }

    private JComponent head() {
        JPanel head = new JPanel(new MigLayout("insets 8 16 8 16, gap 8, fillx", "[][grow,fill][]"));
        head.add(runs);
        JTextArea caution = new JTextArea(TrialList.caution());
        caution.setEditable(false);
        caution.setFocusable(false);
        caution.setOpaque(false);
        caution.setLineWrap(true);
        caution.setWrapStyleWord(true);
        head.add(Look.secondary(caution), "wmin 0");
        JButton list = new JButton(texts.get("notes.list"));
        list.setName("trials-list");
        list.addActionListener(e -> UserListDialog.open(this, parts, UserList.TRIALS, actions::reload));
        head.add(list);
        return head;
    }

    private JComponent form() {
        JPanel form = new JPanel(new MigLayout("insets 8 16 8 16, gap 8, fillx", "[grow 60,fill][][][][grow,fill][]"));
        named(item, "item");
        named(value, "value");
        named(unit, "unit");
        named(note, "note");
        form.add(item, "wmin 60");
        form.add(result);
        form.add(value, "w 64!");
        form.add(unit, "w 48!");
        form.add(note, "wmin 60");
        form.add(keep, "wrap");
        form.add(Look.secondary(hint), "span, wmin 0, wrap");
        form.add(faults.line(), "span, growx, wmin 0, hidemode 3, wrap");
        limit.setName("trial-limit");
        form.add(Look.secondary(limit), "span, wmin 0");
        value.getDocument().addDocumentListener(new TextChange(this::limited));
        return form;
    }

    private void named(JTextField field, String name) {
        String words = texts.get("notes.column." + name);
        Look.named(field, words);
        field.setName("trial-" + name);
        field.putClientProperty("JTextField.placeholderText", words);
    }

    /** What may be answered to a line; every word if no list says how it is answered, and always what it already says. */
    private static List<TrialResult> answers(NotesModel.TrialLine line) {
        Set<TrialResult> answers = new LinkedHashSet<>(
                line.listed().map(item -> item.nature().answers()).orElse(List.of(TrialResult.values())));
        line.kept().map(row -> row.value().result()).ifPresent(answers::add);
        return List.copyOf(answers);
    }

    /** The letters that answer the line in hand. */
    private String letters(List<TrialResult> answers) {
        String named = answers.stream()
                .filter(one -> one != TrialResult.MEASURED)
                .map(one -> texts.get("notes.trial.letter", letter(one), one.said()))
                .collect(Collectors.joining(", "));
        return texts.get(
                answers.contains(TrialResult.MEASURED) ? "notes.trial.hint.measure" : "notes.trial.hint", named);
    }

    private String letter(TrialResult one) {
        return texts.get("notes.trial.key." + one.name().toLowerCase(Locale.ROOT));
    }

    /** Shows the limit of the measure in hand, and whether the value typed keeps it. */
    private void limited() {
        Optional<MeasureLimit> held =
                table.chosen().flatMap(NotesModel.TrialLine::listed).flatMap(TrialItem::limit);
        Optional<String> of =
                table.chosen().flatMap(NotesModel.TrialLine::listed).flatMap(TrialItem::unit);
        Optional<BigDecimal> typed = number();
        boolean sameUnit = filled(unit).equals(of);
        boolean off =
                held.isPresent() && sameUnit && typed.isPresent() && !held.get().isKept(typed.get());
        limit.setForeground(off ? Look.palette().caution() : Look.palette().secondInk());
        limit.setText(held.map(one -> {
                    String words = MeasureWords.limit(texts, one, of.orElse(""));
                    return typed.isEmpty() || !sameUnit
                            ? words
                            : texts.get(off ? "notes.limit.off" : "notes.limit.kept", words);
                })
                .orElse(" "));
    }

    private void fill() {
        table.chosen().ifPresent(line -> {
            result.offer(answers(line));
            hint.setText(letters(answers(line)));
            Optional<Trial> kept = line.kept().map(Recorded::value);
            drafts.show(line.item(), () -> {
                item.setText(TrialNames.said(line.item()));
                value.setText(of(line, one -> one.value().map(Numerals::typed).orElse("")));
                unit.setText(kept.flatMap(Trial::unit)
                        .or(() -> line.listed().flatMap(TrialItem::unit))
                        .orElse(""));
                note.setText(of(line, one -> one.note().orElse("")));
            });
            result.choose(kept.map(Trial::result)
                    .or(() -> line.listed()
                            .map(listed -> listed.nature().answers().get(0)))
                    .or(() -> Optional.of(TrialResult.WORKS)));
            limited();
            line.listed()
                    .map(TrialItem::zone)
                    .or(() -> kept.flatMap(Trial::zone))
                    .filter(visit.zones()::contains)
                    .ifPresent(zone -> {
                        visit.selection().zones(Set.of(zone));
                        new PhotoSteps(visit).bring(zone);
                    });
        });
    }

    /** Says the result alone; value and note stay as they were. */
    private void quick(TrialResult said) {
        table.chosen().filter(line -> visit.isEditable()).ifPresent(line -> {
            if (!answers(line).contains(said)) {
                hint.setText(texts.get("notes.trial.not", said.said(), letters(answers(line))));
                return;
            }
            Optional<Trial> old = line.kept().map(Recorded::value);
            actions.tried(
                    line.kept().map(Recorded::id),
                    new Trial(
                            line.item(),
                            said,
                            old.flatMap(Trial::value),
                            old.flatMap(Trial::unit),
                            zone(line),
                            old.flatMap(Trial::note)));
            table.requestFocusInWindow();
        });
    }

    private Optional<ZoneId> zone(NotesModel.TrialLine line) {
        return line.kept()
                .flatMap(row -> row.value().zone())
                .or(() -> line.listed().map(TrialItem::zone).filter(visit.zones()::contains));
    }

    /** The keyboard left a field of a line that has an answer already. */
    private void keepRow() {
        table.chosen()
                .filter(line -> visit.isEditable() && line.kept().isPresent())
                .filter(line -> line.item().equalsIgnoreCase(model.named(item.getText())))
                .ifPresent(line -> trial(Optional.of(line))
                        .filter(trial -> !trial.equals(line.kept().orElseThrow().value()))
                        .ifPresent(trial -> {
                            drafts.kept();
                            actions.tried(line.kept().map(Recorded::id), trial);
                        }));
    }

    private void keep() {
        if (!visit.isEditable()) {
            return;
        }
        Optional<NotesModel.TrialLine> line =
                table.chosen().filter(one -> one.item().equalsIgnoreCase(model.named(item.getText())));
        trial(line).ifPresent(trial -> {
            drafts.kept();
            actions.tried(line.flatMap(NotesModel.TrialLine::kept).map(Recorded::id), trial);
            table.requestFocusInWindow();
        });
    }

    /** The trial as written; what is wrong is said if it cannot be one. */
    private Optional<Trial> trial(Optional<NotesModel.TrialLine> line) {
        String name = model.named(item.getText());
        Optional<BigDecimal> number = number();
        boolean lacksNumber = number.isEmpty() && result.chosen().equals(Optional.of(TrialResult.MEASURED));
        boolean noNumber = lacksNumber || !value.getText().isBlank() && number.isEmpty();
        faults.at(item, name.isEmpty(), texts.get("notes.trial.needs"))
                .at(value, noNumber, texts.get("notes.trial.number"));
        if (!faults.none()) {
            return Optional.empty();
        }
        return Optional.of(new Trial(
                name,
                result.chosen().orElse(TrialResult.WORKS),
                number,
                number.isPresent() ? filled(unit) : Optional.empty(),
                line.isPresent() ? zone(line.get()) : visit.selection().zone(),
                filled(note)));
    }

    private Optional<BigDecimal> number() {
        String typed = value.getText().strip().replace(',', '.').replace('\u2212', '-');
        return typed.matches("-?[0-9]{1,9}(\\.[0-9]{1,6})?") ? Optional.of(new BigDecimal(typed)) : Optional.empty();
    }

    private static Optional<String> filled(JTextField field) {
        return Optional.of(field.getText().strip()).filter(words -> !words.isEmpty());
    }

    private void remove() {
        table.chosen()
                .flatMap(NotesModel.TrialLine::kept)
                .ifPresent(row -> actions.remove(RecordKind.TRIALS, List.of(row.id())));
    }

    /** The trial in hand, if it was tried. */
    /** Chooses one of some rows; none if none stands here. */
    void choose(List<RecordId> rows) {
        table.choose(row -> row.kept().filter(kept -> rows.contains(kept.id())).isPresent());
    }

    Optional<Subject> subject() {
        return table.chosen().flatMap(TrialsPane::subject);
    }

    private static Optional<Subject> subject(NotesModel.TrialLine line) {
        return line.kept().map(row -> new Subject.OfRow(RecordKind.TRIALS, row.id()));
    }

    JComponent first() {
        return table;
    }

    void render() {
        runs.setSelected(model.runs(visit.visit()));
        Optional<String> name = table.chosen().map(NotesModel.TrialLine::item);
        table.show(new ArrayList<>(model.trials(visit.visit(), visit.zones())));
        if (table.chosen().isEmpty()) {
            name.ifPresent(was -> table.choose(line -> line.item().equals(was)));
        }
        if (table.chosen().isEmpty()) {
            result.offer(List.of(TrialResult.values()));
        }
        keep.setEnabled(visit.isEditable());
    }
}
