package quarterlight.ui.words;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import quarterlight.edit.intake.Intake;
import quarterlight.edit.spoken.Recognizing;
import quarterlight.task.Progress;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.Photo;

/**
 * Makes the words of films and memos that have none, by a recognizer on this computer with a model file that the user names; how far it is stands in the line at
 * the foot, where it can be cancelled. Event thread only, save where said.
 */
final class WordsFromSound {
    private static final String MODEL = "recognizer.model";

    private final UiContext parts;
    private final OpenVisit visit;
    private final UnaryOperator<Optional<Path>> model;
    private final Command command;
    private boolean running;

    /** @param model asks for the model file, beginning at the one named last; empty if the user leaves */
    WordsFromSound(UiContext parts, OpenVisit visit, UnaryOperator<Optional<Path>> model) {
        this.parts = parts;
        this.visit = visit;
        this.model = model;
        this.command = Command.of(parts.texts(), "words.recognize", this::make)
                .tip(parts.texts().get("words.recognize.tip"));
        follow(visit.visit());
    }

    /** Asks by a file dialog over a screen. */
    static UnaryOperator<Optional<Path>> asking(Texts texts, JComponent over) {
        return last -> {
            JFileChooser chooser = new JFileChooser();
            last.map(Path::toFile).ifPresent(chooser::setSelectedFile);
            chooser.setDialogTitle(texts.get("words.recognize.model"));
            return chooser.showDialog(over, texts.get("choice.choose")) == JFileChooser.APPROVE_OPTION
                    ? Optional.of(chooser.getSelectedFile().toPath())
                    : Optional.empty();
        };
    }

    Command command() {
        return command;
    }

    /** A button of the command, there while it serves. */
    JButton button(String name) {
        JButton button = WordsScreen.button(command, name);
        button.setVisible(command.isEnabled());
        command.addPropertyChangeListener(changed -> button.setVisible(command.isEnabled()));
        return button;
    }

    /** A line of words with the button at its end; takes no room while there is neither. */
    JComponent beside(JComponent words) {
        JPanel line = new JPanel(new MigLayout("insets 0 16 0 16, gap 8, fillx, hidemode 3", "[grow,fill][]"));
        line.add(words, "wmin 0, gaptop 4");
        line.add(button("words-recognize-more"), "gaptop 4");
        return line;
    }

    /** The command serves while some recording has no words and none is being listened to. */
    void follow(VisitRecord now) {
        command.setEnabled(
                visit.isEditable() && !running && !Recognizing.wordless(now).isEmpty());
    }

    private void make() {
        List<Photo> recordings = Recognizing.wordless(visit.visit());
        Optional<Path> chosen =
                model.apply(parts.settings().settings().text(MODEL).map(Path::of));
        if (chosen.isEmpty() || recordings.isEmpty() || running) {
            return;
        }
        Path file = chosen.get();
        parts.settings().change(settings -> settings.with(MODEL, file.toString()));
        running = true;
        follow(visit.visit());
        parts.jobs()
                .start(
                        parts.texts().get("words.recognize.doing"),
                        progress -> heard(recordings, file, progress),
                        this::say,
                        parts.problems()::failed);
    }

    /** On a worker thread. */
    private Recognizing.Outcome heard(List<Photo> recordings, Path file, Progress progress) throws Exception {
        try {
            Intake intake = new Intake(
                    visit.store(),
                    parts.clock(),
                    visit.images().shelf(),
                    visit.images().decoding());
            return new Recognizing(visit.store(), intake)
                    .run(recordings, file, visit.images().decoding(), progress);
        } finally {
            SwingUtilities.invokeLater(this::ended);
        }
    }

    private void ended() {
        running = false;
        follow(visit.visit());
    }

    private void say(Recognizing.Outcome outcome) {
        List<String> told = new ArrayList<>();
        add(told, "words.recognize.made", outcome.made());
        add(told, "words.recognize.silent", outcome.silent());
        add(told, "words.recognize.mute", outcome.mute());
        parts.problems().remark(String.join(" ", told));
    }

    private void add(List<String> told, String key, List<String> names) {
        if (!names.isEmpty()) {
            told.add(parts.texts().get(key, String.join(", ", names)));
        }
    }
}
