package quarterlight.ui.dialog;

import java.awt.BorderLayout;
import java.awt.Frame;
import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.swing.JDialog;
import javax.swing.JEditorPane;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.text.BadLocationException;
import javax.swing.text.Document;
import net.miginfocom.swing.MigLayout;
import quarterlight.language.Language;
import quarterlight.ui.kit.Dialogs;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;

/** Help for the window, station by station, with contents and search; it opens where it is asked for. Event thread only. */
public final class HelpWindow {
    private static final Pattern HEADING = Pattern.compile("(?m)^## (.+)$");

    private final UiContext parts;
    private final Frame owner;
    private final Runnable manual;

    /** @param manual opens the manual of the command line */
    public HelpWindow(UiContext parts, Frame owner, Runnable manual) {
        this.parts = parts;
        this.owner = owner;
        this.manual = manual;
    }

    /** The text as it came with the program, in the language in hand. */
    static String text() throws IOException {
        String file = Language.inHand() == Language.GERMAN ? "help_de.md" : "help.md";
        try (InputStream in = HelpWindow.class.getResourceAsStream("/quarterlight/ui/help/" + file)) {
            if (in == null) {
                throw new IOException("this build carries no help");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** A picture of the help by its name. */
    static URL picture(String name) {
        return HelpWindow.class.getResource("/quarterlight/ui/help/" + (name.isEmpty() ? "help.md" : name));
    }

    /** The headings of a text, in their order. */
    static List<String> headings(String text) {
        return HEADING.matcher(text)
                .results()
                .map(found -> found.group(1).strip())
                .toList();
    }

    /** The name by which links lead to a heading. */
    static String anchor(String heading) {
        return heading.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    }

    /** Opens at a heading. */
    public void show(String heading) {
        parts.jobs()
                .start(
                        parts.texts().get("help.opening"),
                        progress -> text(),
                        text -> show(text, heading),
                        parts.problems()::failed);
    }

    private void show(String text, String heading) {
        JEditorPane pane =
                MarkdownText.pane(MarkdownText.html(text), Optional.ofNullable(picture("")), link -> manual.run());
        pane.setName("help-text");
        Look.named(pane, parts.texts().get("help.title"));
        JList<String> contents = new JList<>(headings(text).toArray(String[]::new));
        contents.setName("help-contents");
        contents.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        Look.named(contents, parts.texts().get("help.contents"));
        contents.addListSelectionListener(e -> {
            if (!e.getValueIsAdjusting() && contents.getSelectedValue() != null) {
                MarkdownText.go(pane, anchor(contents.getSelectedValue()));
            }
        });
        JTextField search = new JTextField();
        search.setName("help-search");
        search.putClientProperty("JTextField.placeholderText", parts.texts().get("help.search"));
        Look.named(search, parts.texts().get("help.search"));
        search.addActionListener(e -> find(pane, search.getText()));
        JPanel left = new JPanel(new MigLayout("insets 8, wrap 1, fill", "[180!,fill]", "[][grow,fill]"));
        left.add(search);
        left.add(new JScrollPane(contents));
        JDialog dialog = new JDialog(owner, parts.texts().get("help.title"), false);
        dialog.setName("help");
        dialog.add(left, BorderLayout.WEST);
        dialog.add(new JScrollPane(pane), BorderLayout.CENTER);
        Dialogs.leaveByEscape(dialog);
        Dialogs.open(dialog, owner, 940, 680);
        dialog.setVisible(true);
        SwingUtilities.invokeLater(() -> contents.setSelectedValue(heading, true));
    }

    /** Marks the next place where the words stand, from the last to the first. */
    private static void find(JEditorPane pane, String words) {
        String wanted = words.strip().toLowerCase(Locale.ROOT);
        Document document = pane.getDocument();
        try {
            String text = document.getText(0, document.getLength()).toLowerCase(Locale.ROOT);
            int at = text.indexOf(wanted, pane.getSelectionEnd());
            int found = at >= 0 ? at : text.indexOf(wanted);
            if (!wanted.isEmpty() && found >= 0) {
                pane.select(found, found + wanted.length());
                pane.getCaret().setSelectionVisible(true);
                pane.scrollRectToVisible(pane.modelToView2D(found).getBounds());
            }
        } catch (BadLocationException e) {
            throw new IllegalStateException(e);
        }
    }
}
