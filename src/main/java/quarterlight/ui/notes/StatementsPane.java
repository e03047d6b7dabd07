package quarterlight.ui.notes;

import java.awt.event.ActionEvent;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.AbstractAction;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.ZoneId;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.field.Drafts;
import quarterlight.ui.kit.field.FormErrors;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.place.Subject;
import quarterlight.ui.kit.said.DetailsLine;
import quarterlight.ui.kit.said.FacetBoard;
import quarterlight.ui.kit.said.SlashLetter;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.ZoneField;
import quarterlight.ui.kit.widget.FactTable;
import quarterlight.ui.kit.widget.TextChange;
import quarterlight.ui.kit.widget.WordChoice;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.statement.Basis;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.statement.StatementDetails;

/** Statements by zone: pick zones, type, Enter; sentences of earlier visits are offered below. Event thread only. */
final class StatementsPane extends JPanel {
    private final transient UiContext parts;
    private final transient OpenVisit visit;
    private final transient NotesModel model;
    private final transient NotesActions actions;
    private final transient Texts texts;
    private final boolean notLookedAt;
    private final FactTable<Recorded<Statement>> table;
    private final ZoneField zone;
    private final JTextField text = new JTextField();
    private final FacetBoard what;
    private final DetailsLine details;
    private final JButton withdraw;
    private final WordChoice<Severity> severity;
    private final WordChoice<Basis> basis;
    private final JCheckBox photo;
    private final transient PhraseOffer phrases;
    private final JButton keep;
    private final transient FormErrors faults = new FormErrors();
    private final transient Drafts drafts;
    private transient Optional<PhotoId> seen = Optional.empty();
    private boolean ofHand;
    private boolean filling;

    /** @param notLookedAt true for what was not looked at and why, false for all else */
    StatementsPane(UiContext parts, OpenVisit visit, NotesModel model, NotesActions actions, boolean notLookedAt) {
        super(new MigLayout("insets 0, gap 0, wrap 1, fill", "[grow,fill]", "[][grow,fill]"));
        this.parts = parts;
        this.visit = visit;
        this.model = model;
        this.actions = actions;
        this.texts = parts.texts();
        this.notLookedAt = notLookedAt;
        StatementColumns columns = new StatementColumns(texts, visit);
        phrases = new PhraseOffer(text, texts.get("notes.phrases"));
        what = new FacetBoard(texts);
        details = new DetailsLine(texts, notLookedAt);
        drafts = new Drafts(List.of(text, details.partField(), details.sizeField())).keeping(this::keepRow);
        withdraw = new JButton(texts.get("notes.withdraw"));
        severity = new WordChoice<>(
                Severity.class, texts.get("notes.severity"), Optional.of(texts.get("notes.severity.unsaid")));
        basis = new WordChoice<>(Basis.class, texts.get("notes.basis"), Optional.of(texts.get("notes.basis.unsaid")));
        photo = new JCheckBox(texts.get("notes.photo", 0));
        photo.setName("note-photos");
        zone = new ZoneField(parts, visit);
        zone.field().setName(notLookedAt ? "not-zone" : "note-zone");
        keep = new JButton(texts.get("notes.keep"));
        table = new FactTable<>(
                texts.get(notLookedAt ? "notes.tab.not" : "notes.tab.statements"),
                columns.of(notLookedAt),
                Recorded::id);
        table.strike(columns::isWithdrawn);
        table.order(columns.graveFirst());
        table.setName(notLookedAt ? "not-looked-at" : "statements");
        table.onChosen(this::fill);
        table.onKey("DELETE", this::remove);
        table.onKey(texts.get("notes.withdraw.key"), this::withdraw);
        table.onKey("ESCAPE", this::fresh);
        Command grounds = visit.grounds(this::subject);
        Command back = Command.of(texts, "notes.withdraw", this::withdraw);
        Command gone = Command.of(texts, "notes.remove", this::remove);
        table.menu(() -> List.of(grounds, back, gone));
        table.tips(row -> visit.glance(new Subject.OfRow(RecordKind.STATEMENTS, row.id())));
        JScrollPane scroll = new JScrollPane(table);
        Look.bare(scroll);
        add(entry());
        add(scroll);
        wire();
    }

    private JComponent entry() {
        JPanel entry = new JPanel(new MigLayout("insets 12 16 8 16, gap 8, fillx, hidemode 3", "[grow,fill]"));
        if (notLookedAt) {
            entry.add(Look.secondary(new JLabel(texts.get("notes.not.hint"))), "wmin 0, wrap");
        }
        entry.add(zone, "wmin 0, wrap");
        entry.add(text, "split 3, growx, wmin 0");
        entry.add(keep, "growx 0");
        entry.add(withdraw, "growx 0, wrap");
        entry.add(phrases.component(), "wmin 0, hmin pref, wrap");
        if (!notLookedAt) {
            entry.add(what, "wmin 0, wrap");
            entry.add(severity, "split 3, growx, wmin 60");
            entry.add(basis, "growx, wmin 60");
            entry.add(photo, "growx 0, wrap");
        }
        entry.add(details, "wmin 0, wrap");
        entry.add(faults.line(), "wmin 0, hidemode 3");
        return entry;
    }

    private void wire() {
        Look.named(text, texts.get("notes.column.text"));
        text.setName(notLookedAt ? "not-text" : "note-text");
        text.putClientProperty(
                "JTextField.placeholderText", texts.get(notLookedAt ? "notes.not.text" : "notes.text.hint"));
        text.addActionListener(e -> enter());
        keep.addActionListener(e -> keep());
        withdraw.setToolTipText(texts.get("notes.withdraw.tip"));
        withdraw.setName(notLookedAt ? "not-withdraw" : "note-withdraw");
        withdraw.addActionListener(e -> withdraw());
        if (!notLookedAt) {
            text.addKeyListener(new SlashLetter(text, what));
            what.onDone(text::requestFocusInWindow);
        }
        details.onEnter(this::keep);
        key(text, "ESCAPE", this::fresh);
        text.getDocument().addDocumentListener(new TextChange(this::offer));
        zone.then(text);
        zone.onChange(() -> visit.selection().zones(zone.zones()));
        model.onChange(this::offer);
    }

    private static void key(JComponent component, String stroke, Runnable work) {
        component.getInputMap().put(KeyStroke.getKeyStroke(stroke), stroke);
        component.getActionMap().put(stroke, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                work.run();
            }
        });
    }

    private void offer() {
        if (!filling) {
            phrases.offer(model.phrases(visit.visit(), text.getText(), notLookedAt));
            what.suggest(model.said(text.getText()));
        }
    }

    private void enter() {
        if (!phrases.take()) {
            keep();
        }
    }

    private void keep() {
        String words = text.getText().strip();
        if (!visit.isEditable()) {
            return;
        }
        Optional<Facets> said = facets();
        faults.at(zone.field(), zone.zones().isEmpty(), texts.get("notes.needs.zone"))
                .at(text, words.isEmpty(), texts.get("notes.needs.text"))
                .at(what, said.isEmpty() && !words.isEmpty(), texts.get("notes.needs.what"));
        if (!faults.none()) {
            faults.go();
            return;
        }
        Optional<Recorded<Statement>> old = table.chosen();
        Facets chosen = said.get();
        if (old.isPresent()) {
            actions.update(
                    RecordKind.STATEMENTS, old.get().id(), changed(old.get().value(), chosen));
        } else {
            actions.state(
                    List.copyOf(zone.zones()),
                    chosen,
                    words,
                    severity.chosen(),
                    basis.chosen(),
                    inHand().stream().findFirst(),
                    rest(inHand()),
                    details.details());
        }
        drafts.kept();
        fresh();
        (ofHand ? text : zone.field()).requestFocusInWindow();
    }

    private Optional<Facets> facets() {
        return notLookedAt ? Optional.of(Facets.of(Condition.NOT_LOOKED_AT)) : what.chosen();
    }

    /** A statement that is held already, as it is written now. */
    private Statement changed(Statement before, Facets said) {
        Optional<PhotoId> first = shown(before).stream().findFirst();
        return new Statement(
                zone.zones().iterator().next(),
                said,
                text.getText().strip(),
                severity.chosen(),
                basis.chosen(),
                first,
                first.equals(before.photo()) ? before.atSeconds() : Optional.empty(),
                rest(shown(before)),
                details.details());
    }

    /** The keyboard left a field of a statement that is held already. */
    private void keepRow() {
        Optional<Recorded<Statement>> old = table.chosen().filter(row -> visit.isEditable());
        if (old.isEmpty() || text.getText().isBlank() || zone.zones().isEmpty()) {
            return;
        }
        facets().map(said -> changed(old.get().value(), said))
                .filter(one -> !one.equals(old.get().value()))
                .ifPresent(one -> {
                    drafts.kept();
                    actions.update(RecordKind.STATEMENTS, old.get().id(), one);
                });
    }

    /** The selected photos, the one in hand first. */
    private List<PhotoId> inHand() {
        return photo.isSelected() ? visit.selection().photos() : List.of();
    }

    /** The photos that were tied to it stay, unless others are taken. */
    private List<PhotoId> shown(Statement before) {
        return inHand().isEmpty() ? before.photos() : inHand();
    }

    private static List<PhotoId> rest(List<PhotoId> photos) {
        return photos.subList(Math.min(1, photos.size()), photos.size());
    }

    /** Ready for the next one: the zones stay. */
    private void fresh() {
        table.clearSelection();
        phrases.letGo();
        what.choose(Optional.empty());
        severity.choose(Optional.empty());
        details.show(StatementDetails.NONE, drafts::free);
        keep.setText(texts.get("notes.keep"));
    }

    private void fill() {
        table.chosen().map(Recorded::value).ifPresent(one -> {
            filling = true;
            zone.zones(Set.of(one.zone()));
            visit.selection().zones(Set.of(one.zone()));
            if (!one.photos().isEmpty()) {
                visit.selection().photos(one.photos());
            }
            what.choose(Optional.of(one.what()));
            what.suggest(model.said(one.text()));
            details.show(
                    one.details(),
                    () -> drafts.show(table.chosen().orElseThrow().id(), () -> {
                        text.setText(one.text());
                        details.fill(one.details());
                    }));
            severity.choose(one.severity());
            basis.choose(one.basis());
            keep.setText(texts.get("notes.change"));
            phrases.offer(List.of());
            filling = false;
        });
    }

    private void remove() {
        table.chosen().ifPresent(row -> actions.remove(RecordKind.STATEMENTS, List.of(row.id())));
        fresh();
    }

    /** What is written next takes the chosen statement back; the earlier one stays visible. */
    private void withdraw() {
        Optional<Recorded<Statement>> earlier = table.chosen();
        if (earlier.isPresent() && visit.isEditable()) {
            fresh();
            details.withdraws(earlier);
            text.requestFocusInWindow();
        } else {
            parts.problems().remark(texts.get("notes.withdraw.needs"));
        }
    }

    /** Chooses one of some rows; false if none stands here. */
    boolean choose(List<RecordId> rows) {
        table.choose(row -> rows.contains(row.id()));
        return table.chosen().isPresent();
    }

    /** The statement in hand. */
    Optional<Subject> subject() {
        return table.chosen().map(row -> new Subject.OfRow(RecordKind.STATEMENTS, row.id()));
    }

    /** The list. */
    JComponent table() {
        return table;
    }

    /** What takes the keyboard first. */
    JComponent first() {
        return zone.field();
    }

    /** A zone was clicked on the diagram: the keyboard goes on to the words. */
    void zoneChosen() {
        text.requestFocusInWindow();
    }

    void selected() {
        if (table.chosen().isEmpty()) {
            followPhoto();
        }
        photo.setEnabled(visit.isEditable() && visit.selection().photo().isPresent());
        photo.setSelected(photo.isEnabled() && photo.isSelected());
        photo.setText(texts.get("notes.photo", visit.selection().photos().size()));
    }

    /** A photo that came into hand and is pinned to one zone says of which zone the next words are; else it is the selected zone. */
    private void followPhoto() {
        Optional<PhotoId> hand = visit.selection().photo();
        Set<ZoneId> ofPhoto = hand.map(visit::zonesOf).orElse(Set.of());
        ofHand = !hand.equals(seen) && ofPhoto.size() == 1;
        seen = hand;
        zone.zones(ofHand ? ofPhoto : new LinkedHashSet<>(visit.selection().zones()));
    }

    void render() {
        table.show(visit.visit().statements().stream()
                .filter(row -> notLookedAt == row.value().is(Condition.NOT_LOOKED_AT))
                .toList());
        keep.setEnabled(visit.isEditable());
        withdraw.setEnabled(visit.isEditable());
        what.setEnabled(visit.isEditable());
        text.setEditable(visit.isEditable());
        offer();
    }
}
