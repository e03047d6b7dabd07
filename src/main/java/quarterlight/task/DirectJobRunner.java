package quarterlight.task;

import java.util.function.Consumer;

/** Runs each job at once on the calling thread, so that tests of models need no waiting. */
public final class DirectJobRunner implements JobRunner {
    @Override
    public <T> Cancel start(String title, Job<T> job, Consumer<? super T> done, Consumer<? super Exception> failed) {
        T result;
        try {
            result = job.run(Progress.NONE);
        } catch (Exception e) {
            failed.accept(e);
            return () -> {};
        }
        done.accept(result);
        return () -> {};
    }
}
