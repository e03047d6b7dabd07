package quarterlight.photo;

import quarterlight.language.Retold;

/** The sound of a film or memo cannot be decoded. */
public final class SoundUnreadable extends Exception {
    private static final long serialVersionUID = 1L;

    private final String reason;

    /**
     * @param name of the film or memo
     * @param reason in words that can follow its name and a colon
     */
    public SoundUnreadable(String name, String reason) {
        super(name + ": " + Retold.of(reason));
        this.reason = Retold.of(reason);
    }

    public String reason() {
        return reason;
    }
}
