package quarterlight.task;

import java.util.function.Consumer;

/** Runs jobs. The window's runner uses worker threads and delivers on the event thread; tests run inline. */
public interface JobRunner {
    /** Stops a job that was started; the job unwinds at its next check. */
    interface Cancel {
        void cancel();
    }

    <T> Cancel start(String title, Job<T> job, Consumer<? super T> done, Consumer<? super Exception> failed);
}
