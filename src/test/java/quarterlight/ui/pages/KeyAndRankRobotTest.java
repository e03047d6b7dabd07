package quarterlight.ui.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.swing.JMenuItem;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.finder.JFileChooserFinder;
import org.assertj.swing.finder.JOptionPaneFinder;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.junit.jupiter.api.Test;
import quarterlight.archive.signature.SigningKeyFile;
import quarterlight.car.ZoneId;
import quarterlight.edit.row.RowEdits;
import quarterlight.store.VisitStore;
import quarterlight.ui.DeskRobot;
import quarterlight.ui.kit.Texts;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.statement.Statement;

/** The Pages station: a severity of one's own with its reason, the signing key under a passphrase, an archive signed and checked. */
class KeyAndRankRobotTest extends DeskRobot {
    private static final Texts TEXTS = Texts.load();
    private static final int SOON_MS = 30_000;

    @Override
    protected void make(Path path) throws Exception {
        super.make(path);
        try (VisitStore store = VisitStore.openForEditing(path, CLOCK)) {
            new RowEdits(store)
                    .add(
                            RecordKind.STATEMENTS,
                            List.of(new Statement(
                                    new ZoneId("quarter-left"),
                                    Facets.of(Condition.FILLER),
                                    "Filler over the lower third, seen at the edge.",
                                    Optional.of(Severity.MAJOR),
                                    Optional.empty(),
                                    Optional.empty(),
                                    Optional.empty())));
        }
    }

    @Test
    void aSeverityIsSetWithItsReasonAndTakenBack() {
        withControl(KeyEvent.VK_6);
        var matters = window.list("matters");
        until("what matters is worked out", () -> matters.contents().length > 0);
        matters.selectItem(0);
        window.textBox("matter-whole").requireText(Pattern.compile("(?s)Filler over .*By rule major.*"));
        window.comboBox("matter-severity").selectItem(Severity.GRAVE.word());
        window.button("matter-set").click();
        told(".*needs its reason.*");
        assertThat(held().decisions()).isEmpty();

        window.textBox("matter-reason").setText("the sill behind it is gone");
        window.button("matter-set").click();
        until("it is kept", () -> held().decisions().size() == 1);
        until(
                "it is shown",
                () -> whole().startsWith("Filler over") && whole().contains("Set by the inspector to grave"));
        window.textBox("matter-reason").requireText("the sill behind it is gone");
        window.comboBox("matter-severity").requireSelection(Severity.GRAVE.word());

        window.button("matter-back").click();
        until("the rule holds again", () -> held().decisions().isEmpty());
        until("it is shown", () -> whole().contains("By rule major") && !whole().contains("Set by"));
        window.textBox("matter-reason").requireText("");
        window.comboBox("matter-severity").requireSelection(Severity.MAJOR.word());
    }

    private String whole() {
        return window.textBox("matter-whole").text();
    }

    @Test
    void theKeyGoesUnderAPassphraseAndSignsAnArchiveThatIsThenChecked() throws Exception {
        withControl(KeyEvent.VK_6);
        SigningKeyFile file = new SigningKeyFile(folder.resolve("settings"));
        choose("pages.key");
        DialogFixture dialog = dialog("signing-key");
        assertThat(file.isLocked()).isFalse();
        dialog.textBox("signing-fingerprint")
                .requireText(file.open().orElseThrow().fingerprint());
        dialog.textBox("signing-after").setText("four blue doors");
        dialog.textBox("signing-again").setText("four blue door");
        dialog.button("signing-keep").click();
        dialog.label("signing-wrong").requireText(TEXTS.get("pages.key.differ"));
        dialog.textBox("signing-again").setText("four blue doors");
        dialog.button("signing-keep").click();
        told(Pattern.quote(TEXTS.get("pages.key.now-locked")));
        assertThat(file.isLocked()).isTrue();

        choose("pages.archive");
        DialogFixture asking = dialog("signing-passphrase-dialog");
        asking.textBox("signing-passphrase").setText("four blue doors");
        asking.button("signing-go").click();
        file("whole.zip");
        told("(?s)Made .*whole.zip.*It is signed with your key.*");
        assertThat(Files.exists(folder.resolve("whole.zip"))).isTrue();

        choose("pages.check");
        file("whole.zip");
        told("(?s).*whole.zip: all \\d+ files are as archived\\..*The signature is good.*the key of this computer.*");

        choose("pages.key");
        DialogFixture again = dialog("signing-key");
        again.button("signing-keep").click();
        again.label("signing-wrong").requireText(TEXTS.get("pages.key.no-before"));
        again.textBox("signing-before").setText("five");
        again.button("signing-keep").click();
        told("(?s)This passphrase does not open the signing key.*");
        assertThat(file.isLocked()).as("a wrong passphrase changes nothing").isTrue();
    }

    /** A command of the station's menu, whose items are made when it opens. */
    private void choose(String key) {
        String menu = TEXTS.get("menu.station").replace("&", "");
        JMenuItem station = item(menu);
        robot.click(station);
        until("the menu is open", () -> find(TEXTS.get(key)).isPresent());
        JMenuItem wanted = item(TEXTS.get(key));
        robot.click(wanted);
    }

    private Optional<JMenuItem> find(String text) {
        return robot
                .finder()
                .findAll(c -> c instanceof JMenuItem entry && c.isShowing() && text.equals(entry.getText()))
                .stream()
                .map(JMenuItem.class::cast)
                .findFirst();
    }

    private JMenuItem item(String text) {
        return find(text).orElseThrow();
    }

    private DialogFixture dialog(String name) {
        return WindowFinder.findDialog(name).withTimeout(SOON_MS).using(robot);
    }

    private void file(String name) {
        var chooser = JFileChooserFinder.findFileChooser().withTimeout(SOON_MS).using(robot);
        chooser.setCurrentDirectory(folder.toFile());
        chooser.fileNameTextBox().setText(name);
        chooser.approve();
    }

    private void told(String sentence) {
        var told = JOptionPaneFinder.findOptionPane().withTimeout(2 * SOON_MS).using(robot);
        told.textBox().requireText(Pattern.compile(sentence));
        GuiActionRunner.execute(() -> told.okButton().target().doClick());
        until("the sentence is gone", () -> !told.target().isShowing());
    }
}
