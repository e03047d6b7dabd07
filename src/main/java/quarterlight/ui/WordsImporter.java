package quarterlight.ui;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import quarterlight.caption.CaptionFile;
import quarterlight.caption.WordsUnreadable;
import quarterlight.edit.intake.Intake;
import quarterlight.edit.spoken.TimedWordsImport;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.visit.OpenVisit;

/** Takes files of timed words into the visit at hand, each tied to the film or memo that bears its name. Event thread only, save where said. */
final class WordsImporter {
    private static final String ALWAYS = ".*\\.(vtt|srt)";
    private static final String IF_TIMED = ".*\\.(txt|json)";

    private final UiContext parts;
    private final OpenVisit visit;

    WordsImporter(UiContext parts, OpenVisit visit) {
        this.parts = parts;
        this.visit = visit;
    }

    /** Whether a file that was dropped is one of words: captions by their ending, text and JSON if there are times in it. Reads the file, so never on the event thread. */
    static boolean isWords(Path path) {
        String name = path.toString().toLowerCase(Locale.ROOT);
        if (Files.isDirectory(path) || !name.matches(ALWAYS) && !name.matches(IF_TIMED)) {
            return false;
        }
        try {
            CaptionFile.read(path);
            return true;
        } catch (WordsUnreadable e) {
            return name.matches(ALWAYS);
        }
    }

    /** Takes them in, in the order in which they were dropped. */
    void take(List<Path> files) {
        Intake intake = new Intake(
                visit.store(),
                parts.clock(),
                visit.images().shelf(),
                visit.images().decoding());
        parts.jobs()
                .start(
                        parts.texts().get("take.words"),
                        progress -> new TimedWordsImport(visit.store(), intake)
                                .take(files, Optional.empty(), visit.images().decoding(), progress),
                        this::say,
                        parts.problems()::failed);
    }

    private void say(TimedWordsImport.Outcome outcome) {
        List<String> told = new ArrayList<>();
        told.add(parts.texts()
                .get("take.words.done", outcome.taken().added(), outcome.taken().alreadyPresent()));
        told.addAll(outcome.remarks());
        outcome.taken().refused().forEach(one -> told.add(one.file() + ": " + one.reason()));
        parts.problems().remark(String.join(" ", told));
    }
}
