package quarterlight.ui.dialog;

import java.awt.Frame;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JDialog;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import quarterlight.edit.fact.DiagramEdits;
import quarterlight.edit.fact.FactEdits;
import quarterlight.ui.kit.Dialogs;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.visit.OpenVisit;

/** Asks which drawing of the body the visit at hand uses: the program's, one of the inspector's own folder, or any file. Event thread only. */
public final class ChooseDrawing {
    private final UiContext parts;
    private final Texts texts;
    private final Frame owner;
    private final OpenVisit visit;
    private final DiagramEdits edits;

    public ChooseDrawing(UiContext parts, Frame owner, OpenVisit visit) {
        this.parts = parts;
        this.texts = parts.texts();
        this.owner = owner;
        this.visit = visit;
        this.edits = new DiagramEdits(parts.settings().folder().resolve(DiagramEdits.OWN), parts.catalog());
    }

    /** @param dropped offered first, if there is one */
    public void ask(Optional<Path> dropped) {
        parts.jobs()
                .start(
                        texts.get("drawing.looking"),
                        progress -> edits.names(),
                        names -> show(names, dropped),
                        parts.problems()::failed);
    }

    private void show(List<String> names, Optional<Path> dropped) {
        JDialog dialog = new JDialog(owner, texts.get("do.drawing"), true);
        dialog.setName("choose-drawing");
        JComboBox<String> box = new JComboBox<>();
        box.addItem(DiagramEdits.SHIPPED);
        names.forEach(box::addItem);
        box.setName("drawing");
        box.setRenderer(new Names());
        Look.named(box, texts.get("drawing.which"));
        Optional<String> now = visit.visit().facts().choices().diagram();
        now.filter(names::contains).ifPresent(box::setSelectedItem);
        dropped.map(Path::toString).ifPresent(file -> offer(box, file));
        JButton choose = new JButton(texts.get("drawing.file"));
        choose.addActionListener(e -> choose(box));
        JButton use = new JButton(texts.get("drawing.use"));
        use.setName("use-drawing");
        use.addActionListener(e -> {
            dialog.dispose();
            use(String.valueOf(box.getSelectedItem()));
        });
        JPanel form = new JPanel(new MigLayout("insets 16, gap 8, wrap 3", "[right][320!,fill][]"));
        form.add(
                new JLabel(texts.get(
                        "drawing.now",
                        now.map(name -> texts.get("drawing.own", name)).orElse(texts.get("drawing.shipped")))),
                "span, left");
        JLabel label = new JLabel(texts.get("drawing.which"));
        label.setLabelFor(box);
        form.add(label);
        form.add(box);
        form.add(choose);
        form.add(Look.secondary(new JLabel(texts.get("drawing.checked"))), "span, left");
        Dialogs.ask(dialog, form, use, parts.texts(), owner);
    }

    private static void offer(JComboBox<String> box, String file) {
        box.addItem(file);
        box.setSelectedItem(file);
    }

    private void choose(JComboBox<String> box) {
        JFileChooser chooser = new JFileChooser(
                parts.settings().settings().text("folder.do.drawing").orElse(null));
        chooser.setDialogTitle(texts.get("do.drawing"));
        if (chooser.showDialog(owner, texts.get("choice.choose")) == JFileChooser.APPROVE_OPTION) {
            parts.settings()
                    .change(settings -> settings.with(
                            "folder.do.drawing", chooser.getCurrentDirectory().getPath()));
            offer(box, chooser.getSelectedFile().getPath());
        }
    }

    private void use(String wanted) {
        visit.edit(
                store -> edits.set(store, new FactEdits(parts.catalog()), Map.of(DiagramEdits.KEY, wanted)),
                remarks -> remarks.stream().findFirst().ifPresent(parts.problems()::remark));
    }

    /** The program's drawing by a sentence, all else by its name. */
    private final class Names extends DefaultListCellRenderer {
        @Override
        public java.awt.Component getListCellRendererComponent(
                javax.swing.JList<?> list, Object value, int index, boolean selected, boolean focused) {
            Object shown = DiagramEdits.SHIPPED.equals(value) ? texts.get("drawing.shipped") : value;
            return super.getListCellRendererComponent(list, shown, index, selected, focused);
        }
    }
}
