package quarterlight.page.brief;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.concurrent.Future;
import quarterlight.findings.Findings;
import quarterlight.matters.Matter;
import quarterlight.matters.Matters;
import quarterlight.page.print.PageStep;
import quarterlight.page.print.PageWorkers;
import quarterlight.page.report.picture.BuyerPictures;
import quarterlight.page.report.picture.Frame;
import quarterlight.page.report.picture.PrintedPicture;

/** The pictures of the first page and of the matters in full: a picture of the car, a drawing with the letters, and a close crop of each lettered matter. Immutable. */
public final class BriefPictures {
    private final Map<String, byte[]> files;
    private final Map<String, CloseView> crops;
    private final String portrait;
    private final MattersDrawing drawing;

    private BriefPictures(
            Map<String, byte[]> files, Map<String, CloseView> crops, String portrait, MattersDrawing drawing) {
        this.files = files;
        this.crops = crops;
        this.portrait = portrait;
        this.drawing = drawing;
    }

    /** Pictures that are being made. */
    public static final class Started {
        private final Map<String, Future<Optional<PrintedPicture>>> asked;
        private final Map<String, CloseView> crops;
        private final String portrait;
        private final Future<MattersDrawing> drawing;

        private Started(
                Map<String, Future<Optional<PrintedPicture>>> asked,
                Map<String, CloseView> crops,
                String portrait,
                Future<MattersDrawing> drawing) {
            this.asked = asked;
            this.crops = crops;
            this.portrait = portrait;
            this.drawing = drawing;
        }

        /** Waits for them. */
        public BriefPictures finished() throws IOException {
            Map<String, byte[]> files = new LinkedHashMap<>();
            for (Map.Entry<String, Future<Optional<PrintedPicture>>> one : asked.entrySet()) {
                PageWorkers.result(one.getValue()).ifPresent(picture -> files.put(one.getKey(), picture.jpeg()));
            }
            return new BriefPictures(files, crops, portrait, PageWorkers.result(drawing));
        }
    }

    /**
     * Starts making them.
     *
     * @param drawn makes the drawing with the letters
     */
    public static Started start(
            Findings car, Matters matters, Callable<MattersDrawing> drawn, BuyerPictures source, PageWorkers workers) {
        Map<String, Future<Optional<PrintedPicture>>> asked = new LinkedHashMap<>();
        Map<String, CloseView> crops = new LinkedHashMap<>();
        for (Matter matter : matters.lettered()) {
            CloseView.of(car, matter).ifPresent(view -> {
                crops.put(matter.id(), view);
                asked.computeIfAbsent(
                        view.address(),
                        address -> workers.start(
                                PageWorkers.Turn.FIRST,
                                PageStep.PHOTOS,
                                () -> source.close(view.frame(), view.x(), view.y(), view.width(), view.height())));
            });
        }
        Optional<Frame> whole =
                Portrait.of(car.visit(), car.catalog()).map(photo -> new Frame(photo, OptionalDouble.empty()));
        String portrait = whole.map(frame -> frame.address() + "-portrait").orElse("");
        whole.ifPresent(frame ->
                asked.put(portrait, workers.start(PageWorkers.Turn.FIRST, PageStep.PHOTOS, () -> source.print(frame))));
        workers.expect(asked.size() + 1);
        return new Started(asked, crops, portrait, workers.start(PageWorkers.Turn.FIRST, PageStep.PHOTOS, drawn));
    }

    /** Address of the picture of the car; empty if there is none. */
    String portrait() {
        return files.containsKey(portrait) ? portrait : "";
    }

    /** The drawing with the letters. */
    MattersDrawing drawing() {
        return drawing;
    }

    /** Address of a matter's close crop; empty if no photo shows it. */
    String crop(Matter matter) {
        return Optional.ofNullable(crops.get(matter.id()))
                .map(CloseView::address)
                .filter(files::containsKey)
                .orElse("");
    }

    /** Addresses of the crops that show a part of their photo closer, by the matter's id. */
    Map<String, String> closer() {
        Map<String, String> made = new LinkedHashMap<>();
        crops.forEach((matter, view) -> {
            if (!view.whole() && files.containsKey(view.address())) {
                made.put(matter, view.address());
            }
        });
        return made;
    }

    /** The files by their address within the page. */
    public Map<String, byte[]> byAddress() {
        return files;
    }
}
