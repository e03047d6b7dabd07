package quarterlight.ui.dialog;

import java.awt.Frame;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.swing.JDialog;
import javax.swing.JEditorPane;
import javax.swing.JScrollPane;
import quarterlight.ui.kit.Dialogs;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;

/** The manual, as it came with the program. Event thread only. */
public final class ManualWindow {
    /** Pictures of the stations stand in the help. */
    private static final Pattern PICTURE = Pattern.compile("(?m)^!\\[[^\\]]*\\]\\([^)]*\\)$");

    private final UiContext parts;
    private final Frame owner;

    public ManualWindow(UiContext parts, Frame owner) {
        this.parts = parts;
        this.owner = owner;
    }

    public void show() {
        parts.jobs()
                .start(parts.texts().get("manual.opening"), progress -> html(), this::show, parts.problems()::failed);
    }

    private static String html() throws IOException {
        try (InputStream in = ManualWindow.class.getResourceAsStream("/quarterlight/docs/manual.md")) {
            if (in == null) {
                throw new IOException("this build carries no manual; read docs/manual.md");
            }
            String manual = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return MarkdownText.html(PICTURE.matcher(manual).replaceAll(""));
        }
    }

    private void show(String html) {
        JEditorPane pane = Look.named(
                MarkdownText.pane(html, Optional.empty(), link -> {}),
                parts.texts().get("manual.title"));
        JDialog dialog = new JDialog(owner, parts.texts().get("manual.title"), false);
        dialog.setName("manual");
        dialog.add(new JScrollPane(pane));
        Dialogs.leaveByEscape(dialog);
        Dialogs.open(dialog, owner, 820, 700);
        dialog.setVisible(true);
    }
}
