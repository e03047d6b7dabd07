package quarterlight.ui;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Prose;
import quarterlight.units.XmlText;

/** What the window shows while no visit is open: how to begin, and the visits opened of late. Event thread only. */
final class StartPage extends JPanel {
    StartPage(UiContext parts, DeskActions actions, Consumer<Path> open) {
        super(new MigLayout("insets 0, fill", "[grow,center]", "[grow,center]"));
        Texts texts = parts.texts();
        JPanel column = new JPanel(new MigLayout("insets 0, wrap 1, gapy 8", "[480!,fill]"));
        JLabel name = new JLabel(texts.get("app.name"));
        name.putClientProperty("FlatLaf.style", "font: +9");
        column.add(name);
        List<Path> recent = parts.settings().settings().recent();
        column.add(Look.secondary(new JLabel(texts.get("start.lead"))), "gapbottom 16");
        if (recent.isEmpty()) {
            JTextArea welcome = Prose.area();
            welcome.setText(texts.get("start.welcome"));
            welcome.setFocusable(false);
            column.add(welcome, "wmin 0, gapbottom 16");
        }
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap 8"));
        JButton fresh = new JButton(actions.newVisit());
        fresh.putClientProperty("JButton.buttonType", "default");
        buttons.add(fresh, "h 32!");
        buttons.add(new JButton(actions.openVisit()), "h 32!");
        JButton photos = new JButton(texts.get("start.photos"));
        photos.setName("start-photos");
        photos.addActionListener(e -> actions.choosePhotos());
        buttons.add(photos, "h 32!");
        buttons.add(new JButton(actions.library()), "h 32!");
        buttons.add(new JButton(actions.help()), "h 32!");
        column.add(buttons, "gapbottom 16");
        if (!recent.isEmpty()) {
            column.add(Look.heading(texts.get("start.recent")));
            recent.forEach(visit -> column.add(entry(parts, visit, open)));
        }
        add(column);
    }

    /** Under what the name of the car of a visit is remembered. */
    static String carKey(Path visit) {
        return "car." + visit.toAbsolutePath().normalize();
    }

    private static JButton entry(UiContext parts, Path visit, Consumer<Path> open) {
        String folder = String.valueOf(visit.getFileName());
        String name = parts.settings().settings().text(carKey(visit)).orElse(folder);
        JButton button =
                new JButton("<html><b>" + XmlText.escaped(name) + "</b><br>" + XmlText.escaped(visit.toString()));
        button.setHorizontalAlignment(JButton.LEADING);
        button.putClientProperty("JButton.buttonType", "borderless");
        Look.named(button, name);
        button.addActionListener(e -> open.accept(visit));
        return button;
    }
}
