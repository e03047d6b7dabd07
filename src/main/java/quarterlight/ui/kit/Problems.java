package quarterlight.ui.kit;

import java.util.Optional;

/** Where a sentence for the user is shown; a seam that tests replace. Event thread only. */
public interface Problems {
    /** Something could not be done: what, where, and what to do. */
    void tell(String sentence);

    /** Something was done and there is more to say of it. */
    void remark(String sentence);

    /** A failure that came out of a job or an edit: its own sentence if it has one, else a fault of the program. */
    void failed(Throwable failure);

    /** Asks before something that cannot be undone; true if the user goes on. */
    boolean confirm(String question, String goOn);

    /**
     * Asks for one line of text; empty if the user leaves or gives none.
     *
     * @param proposed stands in the field at first
     */
    Optional<String> ask(String question, String title, String proposed);
}
