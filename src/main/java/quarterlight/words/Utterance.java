package quarterlight.words;

import java.util.Objects;

/**
 * Words that can be heard again: the file of words, the seconds between which they were said, and how they were written.
 *
 * @param source the file of the words
 */
public record Utterance(String source, double atSeconds, double untilSeconds, String words) {
    public Utterance {
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(words, "words");
    }

    public static Utterance of(Draft draft) {
        return new Utterance(draft.source(), draft.atSeconds(), draft.untilSeconds(), draft.words());
    }
}
