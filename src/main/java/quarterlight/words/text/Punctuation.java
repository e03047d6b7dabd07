package quarterlight.words.text;

/** What follows a word in writing. */
public enum Punctuation {
    NONE,
    COMMA,
    SENTENCE
}
