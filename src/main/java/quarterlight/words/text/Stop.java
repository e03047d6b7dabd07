package quarterlight.words.text;

/** What follows a word in writing. */
public enum Stop {
    NONE,
    COMMA,
    SENTENCE
}
