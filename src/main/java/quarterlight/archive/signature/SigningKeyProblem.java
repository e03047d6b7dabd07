package quarterlight.archive.signature;

/** A signing key cannot be used. The message is a full sentence: which file, what was found, what to do. */
public final class SigningKeyProblem extends Exception {
    /** What is in the way. */
    public enum Kind {
        /** It is kept under a passphrase, and none was given. */
        LOCKED,
        /** The passphrase given is another. */
        WRONG_PASSPHRASE,
        /** It cannot be read as a key, or its two halves do not belong together. */
        DAMAGED
    }

    private final Kind kind;

    SigningKeyProblem(Kind kind, String sentence) {
        super(sentence);
        this.kind = kind;
    }

    public Kind kind() {
        return kind;
    }
}
