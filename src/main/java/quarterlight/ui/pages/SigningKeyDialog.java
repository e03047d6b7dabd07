package quarterlight.ui.pages;

import java.awt.Component;
import java.io.IOException;
import java.util.Arrays;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JPasswordField;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import quarterlight.archive.signature.PublicHalf;
import quarterlight.archive.signature.SigningKeyFile;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;

/** The key that signs archives: its fingerprint to hand out, and the passphrase that keeps it. Event thread only. */
final class SigningKeyDialog {
    private static final int COLUMNS = 28;
    private static final int PRINT_COLUMNS = 40;

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

    /** What opens the key: nothing, or a passphrase that is asked for; empty if the user leaves. */
    Optional<Optional<char[]>> passphrase() {
        if (!isLocked()) {
            return Optional.of(Optional.empty());
        }
        JPasswordField field = field("signing-passphrase", "pages.passphrase");
        return asked(texts.get("pages.passphrase"), field)
                ? Optional.of(Optional.of(field.getPassword()))
                : Optional.empty();
    }

    private boolean isLocked() {
        try {
            return file.isLocked();
        } catch (IOException e) {
            return false;
        }
    }

    private JPasswordField field(String name, String key) {
        JPasswordField field = new JPasswordField(COLUMNS);
        field.setName(name);
        Look.named(field, texts.get(key));
        return field;
    }

    private boolean asked(String title, Component content) {
        return JOptionPane.showConfirmDialog(
                        owner, content, title, JOptionPane.OK_CANCEL_OPTION, JOptionPane.PLAIN_MESSAGE)
                == JOptionPane.OK_OPTION;
    }

    /** Shows the key, made if there is none yet. */
    void show() {
        parts.jobs()
                .start(
                        texts.get("pages.key.reading"),
                        progress -> {
                            if (!file.exists()) {
                                file.key(Optional.empty());
                            }
                            return file.open();
                        },
                        this::show,
                        parts.problems()::failed);
    }

    private void show(Optional<PublicHalf> key) {
        if (key.isEmpty()) {
            parts.problems().tell(texts.get("pages.key.unreadable", file.path()));
            return;
        }
        boolean locked = isLocked();
        JTextArea print = new JTextArea(key.get().fingerprint(), 2, PRINT_COLUMNS);
        print.setName("signing-fingerprint");
        print.setEditable(false);
        print.setLineWrap(true);
        Look.named(print, texts.get("pages.key.fingerprint"));
        JPasswordField before = field("signing-before", "pages.key.before");
        JPasswordField after = field("signing-after", "pages.key.after");
        JPasswordField again = field("signing-again", "pages.key.again");
        JPanel panel = new JPanel(new MigLayout("insets 0, gap 8, wrap 2", "[][grow,fill]"));
        panel.add(new JLabel(texts.get("pages.key.fingerprint")), "span 2");
        panel.add(print, "span 2, growx");
        panel.add(Look.secondary(new JLabel(texts.get(locked ? "pages.key.locked" : "pages.key.plain"))), "span 2");
        if (locked) {
            panel.add(new JLabel(texts.get("pages.key.before")));
            panel.add(before);
        }
        panel.add(new JLabel(texts.get("pages.key.after")));
        panel.add(after);
        panel.add(new JLabel(texts.get("pages.key.again")));
        panel.add(again);
        if (asked(texts.get("pages.key.title"), panel)) {
            change(locked, before.getPassword(), after.getPassword(), again.getPassword());
        }
    }

    /** Nothing typed changes nothing; a present passphrase with no new one takes it away. */
    private void change(boolean locked, char[] before, char[] after, char[] again) {
        if (!Arrays.equals(after, again)) {
            parts.problems().tell(texts.get("pages.key.differ"));
        } else if (after.length > 0 || locked && before.length > 0) {
            parts.jobs()
                    .start(
                            texts.get("pages.key.changing"),
                            progress -> {
                                file.lock(
                                        locked ? Optional.of(before) : Optional.empty(),
                                        after.length > 0 ? Optional.of(after) : Optional.empty());
                                return after.length > 0;
                            },
                            now -> parts.problems()
                                    .remark(texts.get(now ? "pages.key.now-locked" : "pages.key.now-plain")),
                            parts.problems()::failed);
        }
    }
}
