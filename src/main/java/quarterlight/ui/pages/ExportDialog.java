package quarterlight.ui.pages;

import java.awt.Component;
import java.awt.Window;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import quarterlight.edit.export.Disclosure;
import quarterlight.edit.export.ExportChoice;
import quarterlight.edit.export.ExportForm;
import quarterlight.ui.kit.Dialogs;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;

/** Asks in which form a visit goes to another program, and how much of it. Event thread only. */
final class ExportDialog {
    private final Texts texts;
    private final Component owner;
    private final Map<ExportForm, JRadioButton> forms = new EnumMap<>(ExportForm.class);
    private final JCheckBox buyer;
    private final JCheckBox places;
    private final JCheckBox mark;
    private Optional<ExportChoice> answer = Optional.empty();

    ExportDialog(Texts texts, Component owner) {
        this.texts = texts;
        this.owner = owner;
        buyer = box("pages.export.buyer", "export-buyer");
        places = box("pages.export.places", "export-places");
        mark = box("pages.export.mark", "export-mark");
    }

    private JCheckBox box(String key, String name) {
        JCheckBox box = new JCheckBox(texts.get(key));
        box.setName(name);
        box.addActionListener(e -> follow());
        return box;
    }

    /** @param usual offered at first; the answer, empty if the user leaves */
    Optional<ExportChoice> ask(ExportForm usual) {
        Window window = owner instanceof Window itself ? itself : SwingUtilities.getWindowAncestor(owner);
        JDialog dialog = new JDialog(window, texts.get("pages.export"), JDialog.ModalityType.APPLICATION_MODAL);
        dialog.setName("export");
        JPanel form = new JPanel(new MigLayout("insets 16, gapx 16, gapy 6, wrap 2", "[][grow,fill,320::]"));
        ButtonGroup group = new ButtonGroup();
        for (ExportForm one : ExportForm.values()) {
            JRadioButton button = new JRadioButton(texts.get("pages.export.form." + one.word()), one == usual);
            button.setName("export-" + one.word());
            button.addActionListener(e -> follow());
            group.add(button);
            forms.put(one, button);
            JLabel about = Look.secondary(new JLabel(texts.get("pages.export.about." + one.word())));
            about.setLabelFor(button);
            form.add(button);
            form.add(about);
        }
        form.add(buyer, "span, gaptop 10");
        form.add(places, "span");
        form.add(mark, "span");
        follow();
        JButton go = new JButton(texts.get("pages.export.go"));
        go.setName("export-go");
        go.addActionListener(e -> {
            answer = Optional.of(choice());
            dialog.dispose();
        });
        Dialogs.ask(dialog, form, go, texts, window);
        return answer;
    }

    private ExportForm form() {
        return forms.entrySet().stream()
                .filter(one -> one.getValue().isSelected())
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(ExportForm.TABLES);
    }

    /** What goes together: a buyer never gets places, and only tables are CSV. */
    private void follow() {
        places.setEnabled(!buyer.isSelected());
        mark.setEnabled(form() == ExportForm.TABLES);
    }

    private ExportChoice choice() {
        Disclosure disclosure = buyer.isSelected()
                ? Disclosure.FOR_BUYER
                : places.isSelected() ? Disclosure.WHOLE : Disclosure.WITHOUT_PLACES;
        return new ExportChoice(form(), disclosure, mark.isEnabled() && mark.isSelected());
    }
}
