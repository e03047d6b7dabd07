package quarterlight.ui.notes;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.PartialDate;
import quarterlight.car.WrittenDate;
import quarterlight.car.ZoneId;
import quarterlight.findings.ClaimedAndFound;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.field.Drafts;
import quarterlight.ui.kit.field.FormErrors;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.place.Subject;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.ZoneField;
import quarterlight.ui.kit.widget.FactTable;
import quarterlight.ui.kit.widget.Weight;
import quarterlight.ui.kit.widget.WordChoice;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.statement.Claim;
import quarterlight.visit.statement.Claimant;
import quarterlight.visit.statement.Judgment;

/** What was claimed, what the visit found of it, and how it stands: one letter in the list decides. Event thread only. */
final class ClaimsPane extends JPanel {
    private static final List<String> SUBJECTS = List.of("", "paint", "rust", "mileage", "numbers");

    private final transient OpenVisit visit;
    private final transient NotesActions actions;
    private final transient Texts texts;
    private final FactTable<Recorded<Claim>> table;
    private final JTextArea found = new JTextArea(5, 20);
    private final ZoneField zone;
    private final JTextField text = new JTextField();
    private final JTextField part = new JTextField();
    private final JTextField date = new JTextField();
    private final JComboBox<String> about = new JComboBox<>(SUBJECTS.toArray(String[]::new));
    private final WordChoice<Claimant> by;
    private final JCheckBox confidential;
    private final transient ClaimPhoto photo;
    private final JButton keep;
    private final transient FormErrors faults = new FormErrors();
    private final transient Drafts drafts = new Drafts(List.of(text, part, date));
    private transient Map<Claim, ClaimedAndFound> laid = Map.of();

    ClaimsPane(UiContext parts, OpenVisit visit, NotesActions actions) {
        super(new MigLayout("insets 0, gap 0, wrap 1, fill", "[grow,fill]", "[][grow,fill][]"));
        this.visit = visit;
        this.actions = actions;
        this.texts = parts.texts();
        by = new WordChoice<>(Claimant.class, texts.get("notes.claim.by"), Optional.empty());
        confidential = new JCheckBox(texts.get("notes.private"));
        photo = new ClaimPhoto(texts, visit);
        keep = new JButton(texts.get("notes.keep"));
        zone = new ZoneField(parts, visit);
        table = new FactTable<>(texts.get("notes.tab.claims"), columns(), Recorded::id);
        table.setName("claims");
        table.onChosen(this::fill);
        for (Judgment judgment : Judgment.values()) {
            String letter = texts.get("notes.claim.key." + judgment.name().toLowerCase(Locale.ROOT));
            table.onKey(letter, () -> decide(Optional.of(judgment)));
        }
        table.onKey("BACK_SPACE", () -> decide(Optional.empty()));
        table.onKey("DELETE", this::remove);
        Command grounds = visit.grounds(this::subject);
        Command gone = Command.of(texts, "notes.remove", this::remove);
        table.menu(() -> List.of(grounds, gone));
        table.tips(row -> visit.glance(new Subject.OfRow(RecordKind.CLAIMS, row.id())));
        table.onKey("ESCAPE", this::fresh);
        add(form());
        JScrollPane scroll = new JScrollPane(table);
        Look.bare(scroll);
        add(scroll);
        add(below());
    }

    private List<FactTable.Column<Recorded<Claim>>> columns() {
        return List.of(
                column("zone", 110, this::place),
                column("claim", 220, Claim::text),
                column(
                        "by",
                        90,
                        one -> one.by().said()
                                + one.date().map(day -> ", " + day.said()).orElse("")),
                column("stands", 130, this::stands)
                        .weighed(row ->
                                row.value().judged().map(ClaimsPane::weight).orElse(Weight.PLAIN)),
                column("found", 220, one -> String.join(" ", found(one))));
    }

    private static Weight weight(Judgment judged) {
        return switch (judged) {
            case CONTRADICTED -> Weight.GRAVE;
            case OPEN -> Weight.CAUTION;
            case SUPPORTED -> Weight.PLAIN;
        };
    }

    private FactTable.Column<Recorded<Claim>> column(String name, int width, Function<Claim, String> words) {
        return new FactTable.Column<>(texts.get("notes.column." + name), width, row -> words.apply(row.value()));
    }

    private String place(Claim claim) {
        String where = claim.zone().map(visit::label).orElse(texts.get("notes.claim.car"));
        return claim.part().map(one -> where + ", " + one).orElse(where);
    }

    private String stands(Claim claim) {
        return claim.judged()
                .map(Judgment::said)
                .or(() -> Optional.ofNullable(laid.get(claim))
                        .map(one ->
                                texts.get("notes.claim.proposed", one.proposed().said())))
                .orElse(texts.get("notes.claim.working"));
    }

    private List<String> found(Claim claim) {
        return Optional.ofNullable(laid.get(claim)).map(ClaimedAndFound::found).orElse(List.of());
    }

    private JComponent form() {
        JPanel form = new JPanel(new MigLayout("insets 12 16 8 16, gap 8, fillx", "[grow,fill][][]"));
        zone.field().setName("claim-zone");
        named(text, "text");
        named(part, "part");
        named(date, "date");
        about.setEditable(true);
        about.setName("claim-about");
        about.setToolTipText(texts.get("notes.claim.about"));
        Look.named(about, texts.get("notes.claim.about"));
        by.setName("claim-by");
        confidential.setName("claim-private");
        confidential.setToolTipText(texts.get("notes.private.tip"));
        keep.setName("claim-keep");
        List.of(text, part, date).forEach(field -> field.addActionListener(e -> keep()));
        keep.addActionListener(e -> keep());
        drafts.keeping(this::keepRow);
        zone.then(text);
        form.add(text, "wmin 60");
        form.add(by);
        form.add(keep, "wrap");
        form.add(zone, "span, growx, wmin 0, wrap");
        form.add(part, "split 3, growx, wmin 60");
        form.add(date, "w 120!");
        form.add(new JLabel(texts.get("notes.claim.about")), "growx 0");
        form.add(about, "w 120!");
        form.add(confidential, "wrap");
        form.add(photo.tie(), "span, growx, wmin 0, wrap");
        form.add(faults.line(), "span, growx, wmin 0, hidemode 3");
        return form;
    }

    private void named(JTextField field, String name) {
        field.setName("claim-" + name);
        field.putClientProperty("JTextField.placeholderText", texts.get("notes.claim." + name));
        Look.named(field, texts.get("notes.claim." + name));
    }

    private JComponent below() {
        JPanel below = new JPanel(new MigLayout("insets 8 16 8 16, gap 8, fillx, hidemode 3", "[grow,fill][]"));
        found.setName("claim-found");
        found.setEditable(false);
        found.setLineWrap(true);
        found.setWrapStyleWord(true);
        Look.named(found, texts.get("notes.column.found"));
        JScrollPane scroll = new JScrollPane(found);
        Look.bare(scroll);
        below.add(scroll, "wmin 0, hmin 96, grow");
        below.add(photo.picture(), "w 240!, h 160!, wrap");
        below.add(Look.secondary(new JLabel(texts.get("notes.claim.hint"))), "newline, span, wmin 0");
        return below;
    }

    private void decide(Optional<Judgment> judgment) {
        table.chosen().filter(row -> visit.isEditable()).ifPresent(row -> {
            Claim old = row.value();
            actions.update(
                    RecordKind.CLAIMS,
                    row.id(),
                    new Claim(
                            old.text(),
                            old.by(),
                            old.zone(),
                            old.part(),
                            old.date(),
                            old.about(),
                            old.photo(),
                            judgment,
                            old.confidential()));
            table.requestFocusInWindow();
        });
    }

    /** The keyboard left a field of a claim that is held already. */
    private void keepRow() {
        table.chosen().filter(row -> visit.isEditable()).ifPresent(row -> claim(Optional.of(row))
                .filter(claim -> !claim.equals(row.value()))
                .ifPresent(claim -> {
                    drafts.kept();
                    actions.update(RecordKind.CLAIMS, row.id(), claim);
                }));
    }

    private void keep() {
        Optional<Recorded<Claim>> old = table.chosen();
        if (!visit.isEditable()) {
            return;
        }
        claim(old).ifPresent(claim -> {
            if (old.isPresent()) {
                actions.update(RecordKind.CLAIMS, old.get().id(), claim);
            } else {
                actions.add(RecordKind.CLAIMS, List.of(claim));
            }
            drafts.kept();
            fresh();
            text.requestFocusInWindow();
        });
    }

    /** The claim as written; what is wrong is said if it cannot be one. */
    private Optional<Claim> claim(Optional<Recorded<Claim>> old) {
        Optional<PartialDate> day = WrittenDate.parse(date.getText());
        faults.at(text, text.getText().isBlank(), texts.get("notes.claim.needs"))
                .at(date, day.isEmpty() && !date.getText().isBlank(), texts.get("notes.claim.date.bad"));
        if (!faults.none()) {
            return Optional.empty();
        }
        return Optional.of(new Claim(
                text.getText().strip(),
                by.chosen().orElse(Claimant.SELLER),
                zone.zones().stream().findFirst(),
                filled(part.getText()),
                day,
                filled(String.valueOf(about.getEditor().getItem()).toLowerCase(Locale.ROOT)),
                photo.tied(),
                old.flatMap(row -> row.value().judged()),
                confidential.isSelected()));
    }

    private static Optional<String> filled(String typed) {
        return Optional.of(typed.strip()).filter(words -> !words.isEmpty());
    }

    private void fresh() {
        table.clearSelection();
        drafts.free();
        about.setSelectedItem("");
        zone.zones(Set.of());
        confidential.setSelected(false);
        photo.show(Optional.empty());
        keep.setText(texts.get("notes.keep"));
        found.setText("");
    }

    private void fill() {
        table.chosen().map(Recorded::value).ifPresent(one -> {
            drafts.show(table.chosen().orElseThrow().id(), () -> {
                text.setText(one.text());
                part.setText(one.part().orElse(""));
                date.setText(one.date().map(PartialDate::text).orElse(""));
            });
            by.choose(Optional.of(one.by()));
            zone.zones(one.zone().map(Set::of).orElse(Set.of()));
            one.zone().ifPresent(where -> visit.selection().zones(Set.of(where)));
            about.setSelectedItem(one.about().orElse(""));
            confidential.setSelected(one.confidential());
            one.photo().ifPresent(shown -> visit.selection().photos(List.of(shown)));
            photo.show(one.photo());
            keep.setText(texts.get("notes.change"));
            told(one);
        });
    }

    private void told(Claim one) {
        List<String> rows = found(one);
        found.setText(
                rows.isEmpty()
                        ? texts.get(visit.findings().isEmpty() ? "working.out" : "notes.claim.nothing")
                        : rows.stream().map(row -> "\u2013 " + row).collect(Collectors.joining("\n")));
        found.setCaretPosition(0);
    }

    private void remove() {
        table.chosen().ifPresent(row -> actions.remove(RecordKind.CLAIMS, List.of(row.id())));
        fresh();
    }

    /** The list. */
    JComponent table() {
        return table;
    }

    /** Chooses one of some rows; none if none stands here. */
    void choose(List<RecordId> rows) {
        table.choose(row -> rows.contains(row.id()));
    }

    /** The claim in hand. */
    Optional<Subject> subject() {
        return table.chosen().map(row -> new Subject.OfRow(RecordKind.CLAIMS, row.id()));
    }

    JComponent first() {
        return text;
    }

    /** Another photo is in hand: it is the one that can be tied. */
    void selected() {
        photo.render();
    }

    /** A zone was clicked on the diagram: the claim is of it. */
    void zoneChosen(ZoneId clicked) {
        zone.zones(new LinkedHashSet<>(List.of(clicked)));
        text.requestFocusInWindow();
    }

    void render() {
        laid = visit.findings()
                .map(car -> ClaimedAndFound.of(car.beside(visit.visit())).stream()
                        .collect(Collectors.toMap(ClaimedAndFound::claim, one -> one, (one, other) -> one)))
                .orElse(Map.of());
        table.show(visit.visit().claims());
        if (visit.visit().claims().isEmpty()) {
            found.setText(texts.get("notes.claim.none"));
        } else {
            table.chosen().map(Recorded::value).ifPresentOrElse(this::told, () -> found.setText(""));
        }
        keep.setEnabled(visit.isEditable());
    }
}
