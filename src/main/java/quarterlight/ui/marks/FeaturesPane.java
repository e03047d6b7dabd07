package quarterlight.ui.marks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.PartialDate;
import quarterlight.car.WrittenDate;
import quarterlight.edit.row.RowEdits;
import quarterlight.marks.MarksReport;
import quarterlight.marks.judge.JudgedFeature;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.field.Drafts;
import quarterlight.ui.kit.field.FormErrors;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.widget.FactTable;
import quarterlight.ui.kit.widget.Weight;
import quarterlight.visit.mark.Feature;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;

/** Features by the range of builds that have them, against this car: which do not belong, and what would. Event thread only. */
final class FeaturesPane extends JPanel {
    /** A feature of the visit with what is said of it, once that is worked out. */
    private record Row(Recorded<Feature> row, Optional<JudgedFeature> judged) {}

    private static final List<Optional<Boolean>> SEEN =
            List.of(Optional.empty(), Optional.of(true), Optional.of(false));

    private final transient OpenVisit visit;
    private final transient Texts texts;
    private final FactTable<Row> table;
    private final JTextField feature = new JTextField();
    private final JTextField from = new JTextField(8);
    private final JTextField to = new JTextField(8);
    private final JComboBox<String> fitted = new JComboBox<>();
    private final JButton keep;
    private final JButton remove;
    private final transient FormErrors faults = new FormErrors();
    private final transient Drafts drafts = new Drafts(List.of(feature, from, to));

    FeaturesPane(UiContext parts, OpenVisit visit) {
        super(new MigLayout("insets 0, gap 0, wrap 1, fill", "[grow,fill]", "[grow,fill][]"));
        this.visit = visit;
        this.texts = parts.texts();
        table = new FactTable<>(
                texts.get("marks.features"),
                List.of(
                        column("feature", 190, row -> row.row().value().feature()),
                        column("from", 86, row -> row.row().value().from().said()),
                        column("to", 86, row -> row.row().value().to().said()),
                        column("fitted", 96, row -> seen(row.row().value().fitted())),
                        column("verdict", 156, row -> row.judged()
                                        .map(j -> j.verdict().said())
                                        .orElse(""))
                                .weighed(FeaturesPane::weight),
                        column("why", 180, row -> row.judged().map(this::why).orElse(""))),
                row -> row.row().id());
        table.setName("features");
        for (Optional<Boolean> one : SEEN) {
            fitted.addItem(seen(one));
        }
        keep = new JButton(texts.get("marks.feature.keep"));
        remove = new JButton(texts.get("marks.feature.remove"));
        table.onChosen(this::fill);
        table.onKey("DELETE", this::remove);
        table.onKey(texts.get("marks.fitted.key.yes"), () -> mark(Optional.of(true)));
        table.onKey(texts.get("marks.fitted.key.no"), () -> mark(Optional.of(false)));
        table.onKey("ESCAPE", table::clearSelection);
        keep.addActionListener(e -> keep());
        drafts.keeping(this::keepRow);
        remove.addActionListener(e -> remove());
        List.of(feature, from, to).forEach(field -> field.addActionListener(e -> keep()));
        JScrollPane scroll = new JScrollPane(table);
        Look.bare(scroll);
        add(scroll);
        add(form());
    }

    /** A feature that does not go with the build asks for a second look. */
    private static Weight weight(Row row) {
        return row.judged()
                .map(judged -> switch (judged.verdict()) {
                    case DOES_NOT_BELONG, MISSING -> Weight.CAUTION;
                    case BELONGS, RIGHTLY_ABSENT -> Weight.PLAIN;
                    case CANNOT_TELL -> Weight.QUIET;
                })
                .orElse(Weight.QUIET);
    }

    private JPanel form() {
        JPanel form = new JPanel(new MigLayout("insets 8 16 8 16, gap 8, fillx", "[grow,fill][][][][][]"));
        label(form, "feature", feature, "growx, wmin 80");
        label(form, "from", from, "w 80!");
        label(form, "to", to, "w 80!");
        Look.named(fitted, texts.get("marks.column.fitted"));
        form.add(fitted);
        form.add(keep);
        form.add(remove, "wrap");
        form.add(faults.line(), "span, growx, wmin 0, hidemode 3, wrap");
        form.add(Look.secondary(new JLabel(texts.get("marks.features.hint"))), "span, wmin 0");
        return form;
    }

    private void label(JPanel form, String name, JTextField field, String place) {
        String words = texts.get("marks.column." + name);
        Look.named(field, words);
        field.setName("feature-" + name);
        field.putClientProperty("JTextField.placeholderText", words);
        form.add(field, place);
    }

    private FactTable.Column<Row> column(String name, int width, java.util.function.Function<Row, String> text) {
        return new FactTable.Column<>(texts.get("marks.column." + name), width, text);
    }

    private String seen(Optional<Boolean> fitted) {
        return texts.get("marks.fitted." + fitted.map(yes -> yes ? "yes" : "no").orElse("open"));
    }

    private String why(JudgedFeature judged) {
        return judged.instead().isEmpty()
                ? judged.why()
                : judged.why() + " " + texts.get("marks.instead", String.join("; ", judged.instead()));
    }

    void render(Optional<MarksReport> report) {
        List<Recorded<Feature>> kept = visit.visit().features();
        List<JudgedFeature> judged = report.map(MarksReport::features).orElse(List.of());
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < kept.size(); i++) {
            Recorded<Feature> one = kept.get(i);
            rows.add(new Row(
                    one,
                    judged.stream()
                            .filter(said -> said.feature().equals(one.value()))
                            .findFirst()));
        }
        table.show(rows);
        keep.setEnabled(visit.isEditable());
        remove.setEnabled(visit.isEditable());
    }

    private void fill() {
        Optional<Feature> chosen = table.chosen().map(row -> row.row().value());
        table.chosen()
                .ifPresentOrElse(
                        row -> drafts.show(row.row().id(), () -> {
                            Feature one = row.row().value();
                            feature.setText(one.feature());
                            from.setText(one.from().text());
                            to.setText(one.to().text());
                        }),
                        drafts::free);
        fitted.setSelectedIndex(SEEN.indexOf(chosen.map(Feature::fitted).orElse(Optional.empty())));
        chosen.flatMap(Feature::zone).ifPresent(zone -> visit.selection().zones(java.util.Set.of(zone)));
    }

    /** The keyboard left a field of a feature that is held already. */
    private void keepRow() {
        table.chosen().map(Row::row).filter(row -> visit.isEditable()).ifPresent(row -> written()
                .filter(one -> !one.equals(row.value()))
                .ifPresent(one -> {
                    drafts.kept();
                    update(row.id(), one);
                }));
    }

    private void keep() {
        written().ifPresent(written -> {
            drafts.kept();
            Optional<RecordId> id = table.chosen().map(row -> row.row().id());
            if (id.isPresent()) {
                update(id.get(), written);
            } else {
                visit.edit(store -> new RowEdits(store).add(RecordKind.FEATURES, List.of(written)), added -> {
                    feature.setText("");
                    drafts.kept();
                    feature.requestFocusInWindow();
                });
            }
        });
    }

    /** The feature as written; what is wrong is said if it cannot be one. */
    private Optional<Feature> written() {
        Optional<PartialDate> first = WrittenDate.parse(from.getText());
        Optional<PartialDate> last = WrittenDate.parse(to.getText());
        faults.at(feature, feature.getText().isBlank(), texts.get("marks.feature.needs"))
                .at(from, first.isEmpty(), texts.get("marks.feature.from"))
                .at(to, last.isEmpty(), texts.get("marks.feature.to"));
        if (!faults.none()) {
            return Optional.empty();
        }
        Optional<Feature> old = table.chosen().map(row -> row.row().value());
        return Optional.of(new Feature(
                feature.getText().strip(),
                first.get(),
                last.get(),
                SEEN.get(Math.max(0, fitted.getSelectedIndex())),
                old.flatMap(Feature::zone).or(() -> visit.selection().zone()),
                old.flatMap(Feature::note)));
    }

    private void mark(Optional<Boolean> seen) {
        table.chosen().filter(row -> visit.isEditable()).ifPresent(row -> {
            Feature old = row.row().value();
            update(row.row().id(), new Feature(old.feature(), old.from(), old.to(), seen, old.zone(), old.note()));
        });
    }

    private void update(RecordId id, Feature value) {
        visit.edit(
                store -> {
                    new RowEdits(store).update(RecordKind.FEATURES, id, value);
                    return id;
                },
                done -> {});
    }

    private void remove() {
        table.chosen().filter(row -> visit.isEditable()).ifPresent(row -> {
            RecordId id = row.row().id();
            visit.edit(
                    store -> {
                        new RowEdits(store).remove(RecordKind.FEATURES, List.of(id));
                        return id;
                    },
                    done -> {});
        });
    }
}
