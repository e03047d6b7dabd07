package quarterlight.ui.dialog;

import java.awt.Frame;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import javax.swing.JDialog;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import quarterlight.about.ProgramVersion;
import quarterlight.ui.kit.Dialogs;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;

/** What the program is: its version, its license, and the licenses of what it is shipped with, to be read and copied. Event thread only. */
public final class AboutWindow {
    private static final String LICENSES = "/quarterlight/licenses/";

    private final UiContext parts;
    private final Frame owner;

    public AboutWindow(UiContext parts, Frame owner) {
        this.parts = parts;
        this.owner = owner;
    }

    public void show() {
        parts.jobs()
                .start(
                        parts.texts().get("about.opening"),
                        progress -> listed(read("libraries.csv")) + "\n" + listed(read("natives.csv")),
                        this::show,
                        parts.problems()::failed);
    }

    private static String read(String name) throws IOException {
        try (InputStream in = AboutWindow.class.getResourceAsStream(LICENSES + name)) {
            return in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** One line for each row of a table of licenses: what it is, then its license. The head of the table is left out. */
    static String listed(String csv) {
        return csv.lines()
                .skip(1)
                .map(line -> line.split(",", -1))
                .filter(cells -> cells.length >= 3)
                .map(cells -> cells.length == 3
                        ? cells[0] + ": " + cells[1]
                        : cells[1] + " (in " + cells[0] + "): " + cells[2])
                .collect(Collectors.joining("\n", "", "\n"));
    }

    private void show(String licenses) {
        JTextArea text = new JTextArea(
                parts.texts().get("about.text", ProgramVersion.ours().text()) + "\n\n"
                        + parts.texts().get("about.licenses") + "\n\n" + licenses,
                26,
                64);
        text.setEditable(false);
        text.setLineWrap(true);
        text.setWrapStyleWord(true);
        text.setCaretPosition(0);
        text.setName("about-text");
        Look.named(text, parts.texts().get("do.about"));
        JDialog dialog = new JDialog(owner, parts.texts().get("do.about"), false);
        dialog.setName("about");
        dialog.add(new JScrollPane(text));
        Dialogs.leaveByEscape(dialog);
        Dialogs.pack(dialog, owner);
        dialog.setVisible(true);
    }
}
