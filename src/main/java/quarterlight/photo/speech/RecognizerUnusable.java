package quarterlight.photo.speech;

import quarterlight.language.Retold;

/** The recognizer cannot be used: it does not run on this computer, or the model is none, is damaged or takes too much. */
public final class RecognizerUnusable extends Exception {
    private static final long serialVersionUID = 1L;

    /** @param sentence what is wrong and what to do */
    RecognizerUnusable(String sentence) {
        super(Retold.of(sentence));
    }

    RecognizerUnusable(String sentence, Throwable cause) {
        super(Retold.of(sentence), cause);
    }
}
