package quarterlight.ui.notes;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.PartialDate;
import quarterlight.car.WrittenDate;
import quarterlight.language.Language;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.field.Drafts;
import quarterlight.ui.kit.field.FormErrors;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.widget.FactTable;
import quarterlight.ui.kit.widget.WordChoice;
import quarterlight.units.Numerals;
import quarterlight.visit.mark.DistanceUnit;
import quarterlight.visit.mark.OdometerFigure;
import quarterlight.visit.mark.OdometerSource;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;

/** The odometer as a series of dated figures, the earliest first. Event thread only. */
final class FiguresPane extends JPanel {
    private final transient OpenVisit visit;
    private final transient NotesActions actions;
    private final transient Texts texts;
    private final FactTable<Recorded<OdometerFigure>> table;
    private final JTextField figure = new JTextField(8);
    private final JTextField date = new JTextField(8);
    private final JTextField note = new JTextField();
    private final WordChoice<DistanceUnit> unit;
    private final WordChoice<OdometerSource> source;
    private final JCheckBox round;
    private final JButton keep;
    private final transient FormErrors faults = new FormErrors();
    private final transient Drafts drafts = new Drafts(List.of(figure, date, note));

    FiguresPane(UiContext parts, OpenVisit visit, NotesActions actions) {
        super(new MigLayout("insets 0, gap 8, wrap 1, fill", "[grow,fill]", "[][grow,fill]"));
        this.visit = visit;
        this.actions = actions;
        this.texts = parts.texts();
        unit = new WordChoice<>(DistanceUnit.class, texts.get("notes.column.unit"), Optional.empty());
        source = new WordChoice<>(OdometerSource.class, texts.get("notes.column.source"), Optional.empty());
        round = new JCheckBox(texts.get("notes.figure.round"));
        keep = new JButton(texts.get("notes.keep"));
        table = new FactTable<>(
                texts.get("notes.figures"),
                List.of(
                        column("date", 90, one -> one.date()
                                .map(PartialDate::said)
                                .orElse("")),
                        column(
                                "figure",
                                90,
                                one -> Numerals.typed(one.figure()) + "\u2009"
                                        + one.unit().said()),
                        column("source", 80, one -> one.source().said()),
                        column("round", 120, one -> one.wentRound() ? texts.get("notes.figure.round") : ""),
                        column("note", 200, one -> one.note().orElse(""))),
                Recorded::id);
        table.setName("figures");
        table.onChosen(this::fill);
        table.onKey("DELETE", this::remove);
        table.onKey("ESCAPE", this::fresh);
        add(form());
        JScrollPane scroll = new JScrollPane(table);
        Look.bare(scroll);
        add(scroll);
    }

    private FactTable.Column<Recorded<OdometerFigure>> column(
            String name, int width, Function<OdometerFigure, String> words) {
        return new FactTable.Column<>(texts.get("notes.column." + name), width, row -> words.apply(row.value()));
    }

    private JPanel form() {
        JPanel form = new JPanel(new MigLayout("insets 0, gap 8, fillx", "[][][][][][grow,fill][]"));
        named(figure, "figure");
        named(date, "date");
        named(note, "note");
        unit.setName("figure-unit");
        source.setName("figure-source");
        round.setName("figure-round");
        keep.setName("figure-keep");
        keep.addActionListener(e -> keep());
        drafts.keeping(this::keepRow);
        form.add(figure, "w 88!");
        form.add(unit);
        form.add(source);
        form.add(date, "w 96!");
        form.add(round);
        form.add(note, "wmin 40");
        form.add(keep, "wrap");
        form.add(faults.line(), "span, growx, wmin 0, hidemode 3");
        return form;
    }

    private void named(JTextField field, String name) {
        field.setName("figure-" + name);
        field.putClientProperty("JTextField.placeholderText", texts.get("notes.column." + name));
        Look.named(field, texts.get("notes.column." + name));
        field.addActionListener(e -> keep());
    }

    /** The keyboard left a field of a figure that is held already. */
    private void keepRow() {
        table.chosen().filter(row -> visit.isEditable()).ifPresent(row -> figure().filter(
                        one -> !one.equals(row.value()))
                .ifPresent(one -> {
                    drafts.kept();
                    actions.update(RecordKind.ODOMETER, row.id(), one);
                }));
    }

    private void keep() {
        if (!visit.isEditable()) {
            return;
        }
        figure().ifPresent(one -> {
            Optional<Recorded<OdometerFigure>> old = table.chosen();
            if (old.isPresent()) {
                actions.update(RecordKind.ODOMETER, old.get().id(), one);
            } else {
                actions.add(RecordKind.ODOMETER, List.of(one));
            }
            drafts.kept();
            fresh();
            figure.requestFocusInWindow();
        });
    }

    /** The figure as written; what is wrong is said if it cannot be one. */
    private Optional<OdometerFigure> figure() {
        String typed = plain(figure.getText());
        Optional<PartialDate> day = WrittenDate.parse(date.getText());
        faults.at(figure, !typed.matches("[0-9]{1,7}(\\.[0-9])?"), texts.get("notes.figure.needs"))
                .at(date, day.isEmpty() && !date.getText().isBlank(), texts.get("notes.claim.date.bad"));
        if (!faults.none()) {
            return Optional.empty();
        }
        return Optional.of(new OdometerFigure(
                new BigDecimal(typed),
                unit.chosen().orElse(DistanceUnit.MI),
                source.chosen().orElse(OdometerSource.READ),
                day,
                round.isSelected(),
                Optional.of(note.getText().strip()).filter(words -> !words.isEmpty())));
    }

    /** Without signs between thousands, and with a point before decimals, whichever the language in hand uses for which. */
    static String plain(String typed) {
        boolean comma = Language.inHand() == Language.GERMAN;
        return typed.replaceAll("\\s", "")
                .replaceAll((comma ? "\\." : ",") + "(?=\\d{3}(?!\\d))", "")
                .replace(',', '.');
    }

    private void fresh() {
        table.clearSelection();
        drafts.free();
        round.setSelected(false);
        keep.setText(texts.get("notes.keep"));
    }

    private void fill() {
        table.chosen().map(Recorded::value).ifPresent(one -> {
            drafts.show(table.chosen().orElseThrow().id(), () -> {
                figure.setText(Numerals.typed(one.figure()));
                date.setText(one.date().map(PartialDate::text).orElse(""));
                note.setText(one.note().orElse(""));
            });
            unit.choose(Optional.of(one.unit()));
            source.choose(Optional.of(one.source()));
            round.setSelected(one.wentRound());
            keep.setText(texts.get("notes.change"));
        });
    }

    private void remove() {
        table.chosen().ifPresent(row -> actions.remove(RecordKind.ODOMETER, List.of(row.id())));
        fresh();
    }

    void render() {
        table.show(visit.visit().odometer().stream()
                .sorted(Comparator.comparing(
                        row -> row.value().date().map(PartialDate::text).orElse("9999")))
                .toList());
        keep.setEnabled(visit.isEditable());
    }

    /** Chooses one of some rows; none if none stands here. */
    void choose(List<RecordId> rows) {
        table.choose(row -> rows.contains(row.id()));
    }
}
