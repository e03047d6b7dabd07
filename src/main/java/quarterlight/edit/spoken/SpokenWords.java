package quarterlight.edit.spoken;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import quarterlight.caption.CaptionFile;
import quarterlight.caption.WordsUnreadable;
import quarterlight.words.TimedWords;

/** The words of a walk with their times, to be read along while it is played. */
public final class SpokenWords {
    private SpokenWords() {}

    /** By the source that drafts name, in the order of the walk; a file that can no longer be read is left out. */
    public static Map<String, TimedWords> of(VisitWalk walk, Path folder) {
        Map<String, TimedWords> words = new LinkedHashMap<>();
        walk.parts().forEach((source, part) -> {
            try {
                byte[] bytes =
                        Files.readAllBytes(folder.resolve(part.words().file().stored()));
                words.put(source, CaptionFile.read(source, bytes).words());
            } catch (IOException | WordsUnreadable e) {
                System.getLogger(SpokenWords.class.getName())
                        .log(System.Logger.Level.INFO, "words of " + source + " are not shown: " + e.getMessage());
            }
        });
        return words;
    }
}
