package quarterlight.ui.start;

import java.awt.BorderLayout;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Prose;
import quarterlight.ui.kit.look.TallPanel;

/** What the window shows while no visit is open: how to begin, and the visits opened of late. Event thread only. */
public final class StartPage extends JPanel {
    private static final int WIDTH_PX = 760;

    /** What can be begun with. */
    public record Beginnings(
            Action newVisit, Action photos, Action samples, Action openVisit, Action library, Action help) {}

    /** @param open opens one of the visits opened of late */
    public StartPage(UiContext parts, Beginnings begin, Consumer<Path> open) {
        super(new BorderLayout());
        Texts texts = parts.texts();
        boolean first = parts.settings().settings().recent().isEmpty();
        JPanel column = new JPanel(new MigLayout("insets 0, wrap 1, gapy 8, fillx, hidemode 3", "[grow,fill,0::]"));
        JLabel name = new JLabel(texts.get("app.name"));
        name.putClientProperty("FlatLaf.style", "font: +9");
        column.add(name);
        column.add(Look.secondary(new JLabel(texts.get("start.lead"))), "gapbottom 16");
        if (first) {
            column.add(prose(texts.get("start.welcome")), "wmin 0, gapbottom 8");
        }
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap 8, nogrid, fillx"));
        JButton fresh = button("start-new", begin.newVisit());
        fresh.putClientProperty(
                "FlatLaf.style",
                "background: $Button.default.background; foreground: $Button.default.foreground; focusedBackground:"
                        + " $Button.default.background; hoverBackground: $Button.default.hoverBackground");
        JButton help = button("start-help", begin.help());
        help.setHideActionText(true);
        help.setText(texts.get("menu.help"));
        List<JButton> all = List.of(
                fresh,
                button("start-photos", begin.photos()),
                button("start-samples", begin.samples()),
                button("start-open", begin.openVisit()),
                button("start-library", begin.library()),
                help);
        all.forEach(one -> buttons.add(one, "h " + Look.px(32) + "!" + (one == all.get(2) ? ", wrap" : "")));
        column.add(buttons, "wmin 0, gapbottom 8");
        if (first) {
            column.add(Look.secondary(prose(texts.get("start.samples"))), "wmin 0");
        } else {
            column.add(Look.heading(texts.get("start.recent")), "gaptop 8");
            column.add(new RecentVisits(parts, open), "wmin 0");
        }
        TallPanel page = new TallPanel(new MigLayout("insets 64 32 32 32, fillx", "[grow,center]"));
        page.add(column, "w 100:" + Look.px(WIDTH_PX) + ":" + Look.px(WIDTH_PX));
        JScrollPane scroll = Look.bare(new JScrollPane(page));
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        add(scroll);
    }

    private static JButton button(String name, Action action) {
        JButton button = new JButton(action);
        button.setName(name);
        return button;
    }

    private static JTextArea prose(String words) {
        JTextArea prose = Prose.area();
        prose.setText(words);
        prose.setFocusable(false);
        return prose;
    }
}
