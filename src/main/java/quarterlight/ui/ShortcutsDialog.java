package quarterlight.ui;

import java.awt.event.InputEvent;
import java.util.List;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Dialogs;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.visit.StationScreen;

/** A sheet of all keys: those of the window and those of the station in front. Event thread only. */
final class ShortcutsDialog {
    private final Texts texts;
    private final MainWindow window;

    ShortcutsDialog(UiContext parts, MainWindow window) {
        this.texts = parts.texts();
        this.window = window;
    }

    void show() {
        JPanel sheet = new JPanel(new MigLayout("insets 16, gap 8 2, wrap 2", "[180!][300!]"));
        section(sheet, texts.get("keys.window"), window.actions().all());
        diagram(sheet);
        window.bench().ifPresent(bench -> section(sheet, texts.get("menu.picture"), bench.pictureCommands()));
        window.bench().map(VisitPanel::screens).orElse(List.of()).forEach(screen -> station(sheet, screen));
        JDialog dialog = new JDialog(window.frame(), texts.get("keys.title"), false);
        dialog.setName("keys");
        JScrollPane scroll = new JScrollPane(sheet);
        scroll.getVerticalScrollBar().setUnitIncrement(16);
        Look.bare(scroll);
        dialog.add(scroll);
        Dialogs.leaveByEscape(dialog);
        Dialogs.open(dialog, window.frame(), 560, 640);
        dialog.setVisible(true);
    }

    private void diagram(JPanel sheet) {
        sheet.add(Look.heading(texts.get("diagram.name")), "span, gaptop 12");
        for (String key : List.of("arrows", "enter", "escape")) {
            sheet.add(new JLabel(texts.get("keys.diagram." + key + ".key")));
            sheet.add(new JLabel(texts.get("keys.diagram." + key)));
        }
    }

    private void station(JPanel sheet, StationScreen screen) {
        if (!screen.commands().isEmpty()) {
            section(sheet, texts.get(screen.station().textKey()), screen.commands());
        }
    }

    private static void section(JPanel sheet, String title, List<Command> commands) {
        sheet.add(Look.heading(title), "span, gaptop 12");
        for (Command command : commands) {
            if (command.getValue(Command.ACCELERATOR_KEY) instanceof KeyStroke stroke) {
                sheet.add(new JLabel(words(stroke)));
                sheet.add(new JLabel(String.valueOf(command.getValue(Command.NAME))));
            }
        }
    }

    private static String words(KeyStroke stroke) {
        String modifiers = InputEvent.getModifiersExText(stroke.getModifiers());
        boolean typed = stroke.getKeyCode() == java.awt.event.KeyEvent.VK_UNDEFINED;
        String key =
                typed ? String.valueOf(stroke.getKeyChar()) : java.awt.event.KeyEvent.getKeyText(stroke.getKeyCode());
        return modifiers.isEmpty() ? key : modifiers + "+" + key;
    }
}
