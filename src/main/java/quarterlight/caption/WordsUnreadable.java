package quarterlight.caption;

/** A file of words that cannot be used; the message says what and what to do. */
public final class WordsUnreadable extends Exception {
    private static final long serialVersionUID = 1L;

    private final String file;

    WordsUnreadable(String file, String reason) {
        super(file + ": " + reason);
        this.file = file;
    }

    public String file() {
        return file;
    }
}
