package quarterlight.edit;

import java.util.Objects;
import quarterlight.language.Retold;

/** An edit cannot be done as asked; nothing was changed. The message is a full sentence: what, what was found, what to do. */
public final class EditRefused extends Exception {
    private final String subject;

    /** @param subject what the refusal is about: a key, a camera, a photo */
    public EditRefused(String subject, String message) {
        super(Retold.of(message));
        this.subject = Objects.requireNonNull(subject, "subject");
    }

    public String subject() {
        return subject;
    }
}
