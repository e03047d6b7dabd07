package quarterlight.words.text;

import java.util.Objects;

/**
 * One word as it is matched and as it was written, with its time.
 *
 * @param word lower case, without punctuation; {@code 's} stands as a word of its own after a noun
 * @param shown as the captions have it; empty for the second half of a word that was cut in two
 * @param speaker true if a new speaker begins with this word
 */
public record Token(String word, String shown, double at, double until, Punctuation stop, boolean speaker) {
    public Token {
        Objects.requireNonNull(word, "word");
        Objects.requireNonNull(shown, "shown");
        Objects.requireNonNull(stop, "stop");
    }

    /** The same word at the same time, meant otherwise. */
    public Token meant(String other) {
        return new Token(other, shown, at, until, stop, speaker);
    }

    public boolean is(String... words) {
        for (String one : words) {
            if (one.equals(word)) {
                return true;
            }
        }
        return false;
    }

    public boolean isNumber() {
        return !word.isEmpty() && Character.isDigit(word.charAt(0));
    }
}
