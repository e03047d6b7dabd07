package quarterlight.ui.start;

import java.nio.file.Path;
import java.util.List;
import quarterlight.task.Progress;

/** The sample visits that come with the program. Who builds them is no matter of the window. */
public interface SampleVisits {
    /** The folder in which they stand once they are made. */
    Path folder();

    /**
     * Builds those that are not there; takes seconds, so it is never asked on the event thread.
     *
     * @return all of them, those that were there too
     * @throws java.util.concurrent.CancellationException if the progress is cancelled; no half of a visit is left
     */
    List<Path> make(Progress progress) throws Exception;
}
