package quarterlight.marks.code;

/** The sign for a letter that could not be read, one for each letter. */
public final class UnreadLetter {
    /** Stands for one letter or digit, whichever it is. */
    public static final char LETTER = '?';

    private UnreadLetter() {}

    /** How many letters of a text could not be read. */
    public static int count(String text) {
        return (int) text.chars().filter(c -> c == LETTER).count();
    }
}
