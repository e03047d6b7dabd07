package quarterlight.task;

import java.util.concurrent.CancellationException;

/** Where a job reports how far it is and asks whether it shall stop. */
public interface Progress {
    /** Reports nowhere and is never cancelled. */
    Progress NONE = new Progress() {
        @Override
        public void report(int done, int total, String what) {
            // nobody listens
        }

        @Override
        public boolean cancelled() {
            return false;
        }
    };

    void report(int done, int total, String what);

    boolean cancelled();

    /** @throws CancellationException if the job was cancelled */
    default void checkCancelled() {
        if (cancelled()) {
            throw new CancellationException();
        }
    }
}
