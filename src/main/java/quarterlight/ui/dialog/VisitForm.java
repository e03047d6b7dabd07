package quarterlight.ui.dialog;

import java.awt.Component;
import java.awt.Frame;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import quarterlight.edit.EditRefused;
import quarterlight.edit.fact.FactEdits;
import quarterlight.ui.kit.Dialogs;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.units.XmlText;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.fact.Fact;
import quarterlight.visit.fact.Fact.Section;
import quarterlight.visit.fact.Facts;

/** The facts of visit and car in one short form: to make a visit, or to change the facts of the one at hand. Event thread only. */
public final class VisitForm {
    private final UiContext parts;
    private final Texts texts;
    private final Frame owner;
    private final Map<String, JComponent> fields = new LinkedHashMap<>();
    private final JLabel trouble = new JLabel(" ");
    private final JTextField folder = new JTextField();

    /** A visit to make. */
    public record Made(Path folder, VisitFacts facts) {}

    public VisitForm(UiContext parts, Frame owner) {
        this.parts = parts;
        this.texts = parts.texts();
        this.owner = owner;
    }

    /** Asks for a new visit; empty if the user thinks better of it. */
    public Optional<Made> make() {
        JPanel form = form(Map.of("timezone", parts.clock().getZone().getId(), "style", "coupe"));
        addFolder(form);
        return ask("form.new", "form.make", form, values -> {
            if (folder.getText().isBlank()) {
                throw new EditRefused("folder", texts.get("form.folder.missing"));
            }
            return new Made(
                    Path.of(folder.getText().strip()),
                    new FactEdits(parts.catalog()).start(values, parts.clock().getZone()));
        });
    }

    /** Changes the facts of a visit as one edit. */
    public void change(OpenVisit visit) {
        Map<String, String> before = Facts.texts(visit.visit().facts());
        FactEdits edits = new FactEdits(parts.catalog());
        ask("form.change", "form.keep", form(before), values -> {
                    Map<String, String> changed = new LinkedHashMap<>(values);
                    changed.entrySet()
                            .removeIf(entry -> entry.getValue().equals(before.getOrDefault(entry.getKey(), "")));
                    edits.apply(visit.visit().facts(), changed);
                    return changed;
                })
                .filter(changed -> !changed.isEmpty())
                .ifPresent(changed -> visit.edit(
                        store -> edits.set(store, changed),
                        remarks -> remarks.stream().findFirst().ifPresent(parts.problems()::remark)));
    }

    private JPanel form(Map<String, String> values) {
        JPanel form = new JPanel(
                new MigLayout("insets 16, gapx 8, gapy 6, wrap 4", "[right][230!,fill]24[right][230!,fill]"));
        section(form, "form.car", Section.CAR, values);
        section(form, "form.size", Section.SIZE, values);
        section(form, "form.visit", Section.VISIT, values);
        return form;
    }

    private void section(JPanel form, String title, Section section, Map<String, String> values) {
        form.add(Look.heading(texts.get(title)), "span, left, gaptop 8, newline");
        for (Fact<?> fact : Facts.all()) {
            if (!fact.section().equals(Optional.of(section))) {
                continue;
            }
            String key = fact.key();
            String name = texts.get("fact." + key);
            JComponent field = field(fact, values.getOrDefault(key, ""));
            Look.named(field, name);
            field.setToolTipText(texts.get("fact." + key + ".tip"));
            fields.put(key, field);
            JLabel label = new JLabel(name);
            label.setLabelFor(field);
            form.add(label);
            form.add(field);
        }
    }

    private static JComponent field(Fact<?> fact, String value) {
        List<String> choices = fact.choices();
        if (choices.isEmpty()) {
            JTextField field = new JTextField(value);
            // the beginning of a long text is what tells it
            field.setCaretPosition(0);
            field.setName(fact.key());
            return field;
        }
        JComboBox<String> box = new JComboBox<>(choices.toArray(String[]::new));
        box.setRenderer(new SaidWord(fact));
        box.setSelectedItem(value.isEmpty() ? choices.get(0) : value);
        box.setName(fact.key());
        return box;
    }

    private void addFolder(JPanel form) {
        String base = parts.settings().settings().text("folder.new").orElse(System.getProperty("user.home"));
        folder.setText(
                proposed(Path.of(base), parts.clock().instant().toString().substring(0, 10))
                        .toString());
        Look.named(folder, texts.get("form.folder"));
        JButton choose = new JButton(texts.get("form.folder.choose"));
        choose.addActionListener(e -> chooseFolder(base));
        form.add(Look.heading(texts.get("form.where")), "newline, span, left, gaptop 8");
        form.add(new JLabel(texts.get("form.folder")));
        form.add(folder, "span 2, growx, split 2");
        form.add(choose);
    }

    /** A folder that is not there yet, named by the day; the second visit of a day gets a number. */
    static Path proposed(Path base, String day) {
        Path free = base.resolve("visit-" + day);
        for (int number = 2; Files.exists(free); number++) {
            free = base.resolve("visit-" + day + "-" + number);
        }
        return free;
    }

    private void chooseFolder(String base) {
        JFileChooser chooser = new JFileChooser(base);
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        if (chooser.showDialog(owner, texts.get("choice.choose")) == JFileChooser.APPROVE_OPTION) {
            Path parent = chooser.getSelectedFile().toPath();
            parts.settings().change(settings -> settings.with("folder.new", parent.toString()));
            folder.setText(
                    parent.resolve(Path.of(folder.getText()).getFileName()).toString());
        }
    }

    private Map<String, String> values() {
        Map<String, String> values = new LinkedHashMap<>();
        fields.forEach((key, field) -> values.put(
                key,
                field instanceof JTextField text
                        ? text.getText().strip()
                        : String.valueOf(((JComboBox<?>) field).getSelectedItem())));
        return values;
    }

    private interface Reading<T> {
        T read(Map<String, String> values) throws EditRefused;
    }

    /** Shows the form until its values can be used or the user gives up; what is wrong stands under the form. */
    private <T> Optional<T> ask(String title, String goOn, JPanel form, Reading<T> reading) {
        JDialog dialog = new JDialog(owner, texts.get(title), true);
        dialog.setName("visit-form");
        JPanel buttons = new JPanel(new MigLayout("insets 8 16 12 16, gap 8", "[grow][][]"));
        JButton keep = new JButton(texts.get(goOn));
        JButton cancel = new JButton(texts.get("choice.cancel"));
        trouble.setForeground(Look.palette().caution());
        buttons.add(trouble, "growx, wmin 0");
        buttons.add(cancel);
        buttons.add(keep);
        Holder<T> holder = new Holder<>();
        keep.addActionListener(e -> {
            holder.value = read(reading);
            if (holder.value.isPresent()) {
                dialog.dispose();
            } else {
                Dialogs.pack(dialog, owner);
            }
        });
        cancel.addActionListener(e -> dialog.dispose());
        dialog.getRootPane().setDefaultButton(keep);
        Dialogs.leaveByEscape(dialog);
        JScrollPane scroll = new JScrollPane(form);
        Look.bare(scroll);
        dialog.add(scroll, java.awt.BorderLayout.CENTER);
        dialog.add(buttons, java.awt.BorderLayout.SOUTH);
        scroll.getVerticalScrollBar().setUnitIncrement(16);
        Dialogs.pack(dialog, owner);
        dialog.setVisible(true);
        return holder.value;
    }

    /** All that is refused is marked and said at once: what was refused is left out, and the rest read again. */
    private <T> Optional<T> read(Reading<T> reading) {
        Map<String, String> left = values();
        List<String> sentences = new ArrayList<>();
        fields.values().forEach(field -> field.putClientProperty("JComponent.outline", null));
        while (true) {
            try {
                T value = reading.read(left);
                trouble.setText(
                        "<html>" + XmlText.escaped(String.join("\n", sentences)).replace("\n", "<br>"));
                return sentences.isEmpty() ? Optional.of(value) : Optional.empty();
            } catch (EditRefused refused) {
                sentences.add(refused.getMessage());
                JComponent field = fields.get(refused.subject());
                if (field == null || left.remove(refused.subject()) == null) {
                    trouble.setText("<html>"
                            + XmlText.escaped(String.join("\n", sentences)).replace("\n", "<br>"));
                    return Optional.empty();
                }
                field.putClientProperty("JComponent.outline", "error");
            }
        }
    }

    /** Shows a word to choose as it is said in the language of the window; the word itself goes into the facts. */
    private static final class SaidWord extends DefaultListCellRenderer {
        private final transient Fact<?> fact;

        SaidWord(Fact<?> fact) {
            this.fact = fact;
        }

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean chosen, boolean focused) {
            return super.getListCellRendererComponent(list, fact.said(String.valueOf(value)), index, chosen, focused);
        }
    }

    private static final class Holder<T> {
        private Optional<T> value = Optional.empty();
    }
}
