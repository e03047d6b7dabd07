package quarterlight.page.report.picture;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Future;
import java.util.function.Function;
import quarterlight.page.print.PageStep;
import quarterlight.page.print.PageWorkers;

/** The pictures of a report, made on several threads. Immutable. */
public final class ReportPictures {
    private final Map<Frame, PrintedPicture> made;

    private ReportPictures(Map<Frame, PrintedPicture> made) {
        this.made = made;
    }

    /** Pictures that are being made. */
    public record Started(Map<Frame, Future<Optional<PrintedPicture>>> asked) {
        /**
         * Waits for them.
         *
         * @throws java.util.concurrent.CancellationException if the job was cancelled
         */
        public ReportPictures finished() throws IOException {
            Map<Frame, PrintedPicture> made = new LinkedHashMap<>();
            for (Map.Entry<Frame, Future<Optional<PrintedPicture>>> entry : asked.entrySet()) {
                PageWorkers.result(entry.getValue()).ifPresent(picture -> made.put(entry.getKey(), picture));
            }
            return new ReportPictures(made);
        }
    }

    /**
     * Starts making them, one step each.
     *
     * @param print a picture ready for print; empty for what cannot be shown
     */
    public static Started start(
            List<Frame> frames, Function<Frame, Optional<PrintedPicture>> print, PageWorkers workers) {
        List<Frame> wanted = frames.stream().distinct().toList();
        workers.expect(wanted.size());
        Map<Frame, Future<Optional<PrintedPicture>>> asked = new LinkedHashMap<>();
        wanted.forEach(frame -> asked.put(frame, workers.start(PageStep.PHOTOS, () -> print.apply(frame))));
        return new Started(asked);
    }

    public Optional<PrintedPicture> of(Frame frame) {
        return Optional.ofNullable(made.get(frame));
    }

    /** The files by their address within the page. */
    public Map<String, byte[]> byAddress() {
        Map<String, byte[]> files = new LinkedHashMap<>();
        made.forEach((frame, picture) -> files.put(frame.address(), picture.jpeg()));
        return files;
    }
}
