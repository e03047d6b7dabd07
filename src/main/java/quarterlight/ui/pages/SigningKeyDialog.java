package quarterlight.ui.pages;

import java.awt.Component;
import java.awt.Toolkit;
import java.awt.Window;
import java.awt.datatransfer.StringSelection;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JPasswordField;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import quarterlight.archive.signature.PublicHalf;
import quarterlight.archive.signature.SigningKeyFile;
import quarterlight.ui.kit.Dialogs;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;

/** The key that signs archives: its fingerprint to hand out, and the passphrase that keeps it. Event thread only. */
final class SigningKeyDialog {
    private static final int COLUMNS = 28;
    private static final int PRINT_COLUMNS = 44;

    private final UiContext parts;
    private final Texts texts;
    private final Component owner;
    private final SigningKeyFile file;

    SigningKeyDialog(UiContext parts, Component owner) {
        this.parts = parts;
        this.texts = parts.texts();
        this.owner = owner;
        this.file = new SigningKeyFile(parts.settings().folder());
    }

    SigningKeyFile file() {
        return file;
    }

    /**
     * Gives what opens the key, once it is known whether it is locked and the passphrase was asked for; does nothing if the user leaves.
     *
     * @param then gets the passphrase; empty for a key that has none
     */
    void unlocked(Consumer<Optional<char[]>> then) {
        parts.jobs()
                .start(
                        texts.get("pages.key.reading"),
                        progress -> file.isLocked(),
                        locked -> {
                            if (locked) {
                                asked().ifPresent(words -> then.accept(Optional.of(words)));
                            } else {
                                then.accept(Optional.empty());
                            }
                        },
                        parts.problems()::failed);
    }

    private Optional<char[]> asked() {
        JDialog dialog = dialog("pages.passphrase", "signing-passphrase-dialog");
        JPasswordField field = field("signing-passphrase", "pages.passphrase");
        JPanel form = new JPanel(new MigLayout("insets 16, gap 8, wrap 2", "[][grow,fill]"));
        addField(form, field, "pages.passphrase");
        JButton go = new JButton(texts.get("pages.passphrase.go"));
        go.setName("signing-go");
        boolean[] given = {false};
        go.addActionListener(e -> {
            given[0] = true;
            dialog.dispose();
        });
        Dialogs.ask(dialog, form, go, texts, dialog.getOwner());
        return given[0] ? Optional.of(field.getPassword()) : Optional.empty();
    }

    private JDialog dialog(String key, String name) {
        Window window = owner instanceof Window itself ? itself : SwingUtilities.getWindowAncestor(owner);
        JDialog dialog = new JDialog(window, texts.get(key), JDialog.ModalityType.APPLICATION_MODAL);
        dialog.setName(name);
        return dialog;
    }

    private JPasswordField field(String name, String key) {
        JPasswordField field = new JPasswordField(COLUMNS);
        field.setName(name);
        Look.named(field, texts.get(key));
        return field;
    }

    private void addField(JPanel form, JPasswordField field, String key) {
        JLabel label = new JLabel(texts.get(key));
        label.setLabelFor(field);
        form.add(label);
        form.add(field);
    }

    /** The public half of a key, and whether its secret half is kept under a passphrase. */
    private record Known(Optional<PublicHalf> key, boolean locked) {}

    /** Shows the key, made if there is none yet. */
    void show() {
        parts.jobs()
                .start(
                        texts.get("pages.key.reading"),
                        progress -> {
                            if (!file.exists()) {
                                file.key(Optional.empty());
                            }
                            return new Known(file.open(), file.isLocked());
                        },
                        this::show,
                        parts.problems()::failed);
    }

    private void show(Known known) {
        if (known.key().isEmpty()) {
            parts.problems().tell(texts.get("pages.key.unreadable", file.path()));
            return;
        }
        JDialog dialog = dialog("pages.key.title", "signing-key");
        JPasswordField before = field("signing-before", "pages.key.before");
        JPasswordField after = field("signing-after", "pages.key.after");
        JPasswordField again = field("signing-again", "pages.key.again");
        JLabel wrong = new JLabel(" ");
        wrong.setName("signing-wrong");
        wrong.setForeground(Look.palette().grave());
        JPanel form = new JPanel(new MigLayout("insets 16, gap 8, wrap 2", "[][grow,fill]"));
        addPrint(form, known.key().get().fingerprint());
        form.add(
                Look.secondary(new JLabel(texts.get(known.locked() ? "pages.key.locked" : "pages.key.plain"))),
                "span 2, gaptop 8");
        if (known.locked()) {
            addField(form, before, "pages.key.before");
        }
        addField(form, after, "pages.key.after");
        addField(form, again, "pages.key.again");
        form.add(wrong, "span 2");
        JButton keep = new JButton(texts.get(known.locked() ? "pages.key.keep" : "pages.key.first"));
        keep.setName("signing-keep");
        keep.addActionListener(e -> {
            Optional<String> fault = fault(known.locked(), before, after, again);
            wrong.setText(fault.orElse(" "));
            wrong.getAccessibleContext().setAccessibleName(wrong.getText());
            if (fault.isEmpty()) {
                dialog.dispose();
                change(known.locked(), before.getPassword(), after.getPassword());
            }
        });
        Dialogs.ask(dialog, form, keep, texts, dialog.getOwner());
    }

    private void addPrint(JPanel form, String fingerprint) {
        JTextArea print = new JTextArea(fingerprint, 2, PRINT_COLUMNS);
        print.setName("signing-fingerprint");
        print.setEditable(false);
        print.setLineWrap(true);
        print.setFocusTraversalKeys(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        Look.named(print, texts.get("pages.key.fingerprint"));
        JLabel label = new JLabel(texts.get("pages.key.fingerprint"));
        label.setLabelFor(print);
        JButton copy = new JButton(texts.get("pages.key.copy"));
        copy.setName("signing-copy");
        copy.addActionListener(e ->
                Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(fingerprint), null));
        form.add(label, "span 2");
        form.add(print, "span 2, growx");
        form.add(copy, "span 2, right");
    }

    /** What keeps the passphrase from being set; empty if nothing does. */
    private Optional<String> fault(boolean locked, JPasswordField before, JPasswordField after, JPasswordField again) {
        if (!Arrays.equals(after.getPassword(), again.getPassword())) {
            again.requestFocusInWindow();
            return Optional.of(texts.get("pages.key.differ"));
        }
        if (locked && before.getPassword().length == 0) {
            before.requestFocusInWindow();
            return Optional.of(texts.get("pages.key.no-before"));
        }
        if (!locked && after.getPassword().length == 0) {
            after.requestFocusInWindow();
            return Optional.of(texts.get("pages.key.no-after"));
        }
        return Optional.empty();
    }

    /** The current passphrase with no new one takes it away. */
    private void change(boolean locked, char[] before, char[] after) {
        parts.jobs()
                .start(
                        texts.get("pages.key.changing"),
                        progress -> {
                            file.lock(
                                    locked ? Optional.of(before) : Optional.empty(),
                                    after.length > 0 ? Optional.of(after) : Optional.empty());
                            return after.length > 0;
                        },
                        now -> parts.problems().remark(texts.get(now ? "pages.key.now-locked" : "pages.key.now-plain")),
                        parts.problems()::failed);
    }
}
