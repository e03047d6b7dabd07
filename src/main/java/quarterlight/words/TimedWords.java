package quarterlight.words;

import java.util.List;
import java.util.Objects;

/** The timed words of one file, in the order of their times. Several parts of one walk are a list of these in order. */
public record TimedWords(String source, List<Cue> cues) {
    public TimedWords {
        Objects.requireNonNull(source, "source");
        cues = List.copyOf(cues);
    }
}
