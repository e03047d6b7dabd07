package quarterlight.ui.rust;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.ZoneId;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.field.TypedText;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Prose;
import quarterlight.ui.kit.look.TallPanel;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.ZoneField;
import quarterlight.ui.kit.widget.WordChoice;
import quarterlight.ui.rust.draw.RustModel;
import quarterlight.ui.rust.draw.RustTool;
import quarterlight.ui.rust.draw.TraceDraft;
import quarterlight.visit.annotation.TraceKind;

/** What is known of the outline being drawn: kind, zone, scale, patch, note; and what it comes to. Event thread only. */
final class DraftPane extends TallPanel {
    private final transient Texts texts;
    private final transient OpenVisit visit;
    private final transient RustModel model;
    private final WordChoice<TraceKind> kind;
    private final ZoneField zone;
    private final JComboBox<String> patch = new JComboBox<>();
    private final JTextField note = new JTextField();
    private final ScalePane scale;
    private final JTextArea words = Prose.area();
    private boolean rendering;

    DraftPane(UiContext parts, OpenVisit visit, RustModel model, RustActions actions) {
        super(new MigLayout(
                "insets 12 16 12 16, gapx 12, gapy 6, fillx", "[][grow 50,fill,sg f][16!][][grow 50,fill,sg f]", ""));
        this.texts = parts.texts();
        this.visit = visit;
        this.model = model;
        kind = new WordChoice<>(TraceKind.class, texts.get("trace.kind"), Optional.empty());
        kind.setName("trace-kind");
        zone = new ZoneField(parts, visit);
        scale = new ScalePane(texts, model, actions.tool(RustTool.SCALE));
        patch.setEditable(true);
        patch.setName("trace-patch");
        note.setName("trace-note");
        Look.named(patch, texts.get("trace.patch"));
        patch.setToolTipText(texts.get("trace.patch.tip"));
        Look.named(note, texts.get("trace.note"));
        Look.named(words, texts.get("trace.words"));
        words.setName("trace-words");
        kind.addActionListener(e -> whenTyped(() -> kind.chosen().ifPresent(model::kind)));
        zone.onChange(() -> write(draft -> draft.on(zone.zones().stream().findFirst())));
        patch.addActionListener(e -> whenTyped(this::said));
        note.addActionListener(e -> said());
        TypedText.keeping(note, this::said);
        add(label("trace.kind"));
        add(kind);
        add(label("trace.scale"), "skip 1, ay top, gaptop 5");
        add(scale, "spany 3, ay top, wrap");
        add(label("trace.zone"), "ay top, gaptop 5");
        add(zone, "wmin 0, wrap");
        add(label("trace.patch"));
        add(patch, "wmin 0, wrap");
        add(label("trace.note"));
        add(note, "wmin 0");
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap 8"));
        JButton keep = new JButton(actions.keepIt());
        keep.setName("trace-keep");
        buttons.add(keep);
        buttons.add(new JButton(actions.dropIt()));
        add(buttons, "skip 2, wrap");
        add(words, "span, growx, wmin 0, gaptop 6");
        render();
    }

    private JLabel label(String key) {
        return Look.secondary(new JLabel(texts.get(key)));
    }

    private void whenTyped(Runnable work) {
        if (!rendering) {
            work.run();
        }
    }

    private void write(java.util.function.UnaryOperator<TraceDraft> change) {
        whenTyped(() -> model.draft().ifPresent(draft -> model.write(change.apply(draft))));
    }

    private void said() {
        write(draft -> draft.said(typed(String.valueOf(patch.getEditor().getItem())), typed(note.getText())));
    }

    private static Optional<String> typed(String words) {
        return Optional.of(words.strip()).filter(said -> !said.isEmpty());
    }

    /** Brings the keyboard to the zone, as the one thing that is lacking. */
    void askZone() {
        zone.field().requestFocusInWindow();
    }

    void then(java.awt.Component canvas) {
        zone.then(canvas);
    }

    ScalePane scale() {
        return scale;
    }

    /** @param sentences what is said of the outline, below its figure */
    void say(List<String> sentences) {
        words.setText(sentences.isEmpty() ? texts.get("trace.words.none") : String.join("\n", sentences));
    }

    void render() {
        rendering = true;
        Optional<TraceDraft> draft = model.draft();
        boolean there = draft.isPresent();
        kind.choose(Optional.of(draft.map(TraceDraft::kind).orElse(model.state().kind())));
        Set<ZoneId> zones = new LinkedHashSet<>();
        draft.flatMap(TraceDraft::zone).ifPresent(zones::add);
        zone.zones(zones);
        zone.setEnabled(there);
        patch.setEnabled(there);
        note.setEnabled(there);
        String known = draft.flatMap(TraceDraft::patch).orElse("");
        if (!patch.getEditor().getEditorComponent().isFocusOwner()) {
            patch.removeAllItems();
            patch.addItem("");
            patches(draft.flatMap(TraceDraft::zone)).forEach(patch::addItem);
            patch.setSelectedItem(known);
        }
        if (!note.isFocusOwner()) {
            note.setText(draft.flatMap(TraceDraft::note).orElse(""));
        }
        scale.render();
        rendering = false;
    }

    private Set<String> patches(Optional<ZoneId> on) {
        Set<String> names = new LinkedHashSet<>();
        visit.visit().traces().stream()
                .filter(row -> on.map(row.value().zone()::equals).orElse(true))
                .forEach(row -> row.value().patch().ifPresent(names::add));
        return names;
    }
}
