package quarterlight.ui.dialog;

import java.awt.Frame;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import javax.swing.JDialog;
import javax.swing.JEditorPane;
import javax.swing.JScrollPane;
import javax.swing.event.HyperlinkEvent;
import javax.swing.text.html.HTMLEditorKit;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.ext.heading.anchor.HeadingAnchorExtension;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import quarterlight.ui.kit.DeskParts;
import quarterlight.ui.kit.Dialogs;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Palette;
import quarterlight.ui.kit.look.Typeface;

/** The manual, as it came with the program. Event thread only. */
public final class ManualWindow {
    private final DeskParts parts;
    private final Frame owner;

    public ManualWindow(DeskParts parts, Frame owner) {
        this.parts = parts;
        this.owner = owner;
    }

    public void show() {
        parts.jobs()
                .start(parts.texts().get("manual.opening"), progress -> html(), this::show, parts.problems()::failed);
    }

    private static String html() throws IOException {
        var extensions = java.util.List.of(TablesExtension.create(), HeadingAnchorExtension.create());
        try (InputStream in = ManualWindow.class.getResourceAsStream("/quarterlight/docs/manual.md")) {
            if (in == null) {
                throw new IOException("this build carries no manual; read docs/manual.md");
            }
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return HtmlRenderer.builder()
                    .extensions(extensions)
                    .escapeHtml(true)
                    .build()
                    .render(Parser.builder().extensions(extensions).build().parse(text));
        }
    }

    private void show(String html) {
        JEditorPane pane = new JEditorPane();
        HTMLEditorKit kit = new HTMLEditorKit();
        Palette palette = Look.palette();
        kit.getStyleSheet()
                .addRule("body { font-family: '" + Typeface.FAMILY + "'; font-size: 11px; margin: 16px; color: "
                        + hex(palette.ink()) + " } a { color: " + hex(palette.accent())
                        + " } code { font-family: monospace } td, th { padding: 3px 8px 3px 0; text-align: left }");
        pane.setEditorKit(kit);
        pane.setText(html);
        pane.setEditable(false);
        pane.setCaretPosition(0);
        pane.setBackground(palette.sheet());
        Look.named(pane, parts.texts().get("manual.title"));
        pane.addHyperlinkListener(e -> {
            if (e.getEventType() == HyperlinkEvent.EventType.ACTIVATED
                    && e.getDescription().startsWith("#")) {
                pane.scrollToReference(e.getDescription().substring(1));
            }
        });
        JDialog dialog = new JDialog(owner, parts.texts().get("manual.title"), false);
        dialog.setName("manual");
        dialog.add(new JScrollPane(pane));
        Dialogs.leaveByEscape(dialog);
        dialog.setSize(820, 700);
        dialog.setLocationRelativeTo(owner);
        dialog.setVisible(true);
    }

    private static String hex(java.awt.Color color) {
        return "#%06x".formatted(color.getRGB() & 0xFFFFFF);
    }
}
