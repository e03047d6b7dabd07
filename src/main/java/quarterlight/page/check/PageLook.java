package quarterlight.page.check;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Future;
import quarterlight.page.print.PageStep;
import quarterlight.page.print.PageWorkers;

/** Looks over pages one by one, each as soon as it is made, on the threads that make the others. Safe for several threads. */
public final class PageLook {
    private final List<String> secrets;
    private final PageWorkers workers;
    private final Map<String, Future<PageCheck>> started = new ConcurrentHashMap<>();

    /** @param secrets see {@link PageCheck#of} */
    public PageLook(Set<String> secrets, PageWorkers workers) {
        this.secrets = PageCheck.wanted(secrets);
        this.workers = Objects.requireNonNull(workers, "workers");
    }

    /** Starts to look over a file that is whole and lies there until {@link #finished}. */
    public void over(Path file) {
        workers.expect(1);
        started.put(
                name(file), workers.start(PageWorkers.Turn.LAST, PageStep.LOOK, () -> PageCheck.one(file, secrets)));
    }

    /**
     * Waits for what was found.
     *
     * @param files those that were given, wherever they lie by now, in the order of their faults
     */
    public PageCheck finished(List<Path> files) throws IOException {
        int pages = 0;
        List<PageFault> faults = new ArrayList<>();
        for (Path file : files) {
            PageCheck found = PageWorkers.result(Objects.requireNonNull(started.get(name(file)), name(file)));
            pages += found.pages();
            faults.addAll(found.faults());
        }
        return new PageCheck(pages, faults);
    }

    private static String name(Path file) {
        return file.getFileName().toString();
    }
}
