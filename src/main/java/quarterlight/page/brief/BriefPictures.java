package quarterlight.page.brief;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Future;
import quarterlight.findings.Findings;
import quarterlight.matters.Matter;
import quarterlight.matters.Matters;
import quarterlight.page.print.PageWorkers;
import quarterlight.page.report.picture.BuyerPictures;
import quarterlight.page.report.picture.Frame;
import quarterlight.page.report.picture.PrintedPicture;

/** The pictures of the first page and of the matters in full: a picture of the car, and a close crop of each lettered matter. Immutable. */
public final class BriefPictures {
    private final Map<String, byte[]> files;
    private final Map<String, CloseView> crops;
    private final String portrait;

    private BriefPictures(Map<String, byte[]> files, Map<String, CloseView> crops, String portrait) {
        this.files = files;
        this.crops = crops;
        this.portrait = portrait;
    }

    /** Pictures that are being made. */
    public static final class Started {
        private final Map<String, Future<Optional<PrintedPicture>>> asked;
        private final Map<String, CloseView> crops;
        private final String portrait;

        private Started(
                Map<String, Future<Optional<PrintedPicture>>> asked, Map<String, CloseView> crops, String portrait) {
            this.asked = asked;
            this.crops = crops;
            this.portrait = portrait;
        }

        /** Waits for them. */
        public BriefPictures finished() throws IOException {
            Map<String, byte[]> files = new LinkedHashMap<>();
            for (Map.Entry<String, Future<Optional<PrintedPicture>>> one : asked.entrySet()) {
                PageWorkers.result(one.getValue()).ifPresent(picture -> files.put(one.getKey(), picture.jpeg()));
            }
            return new BriefPictures(files, crops, portrait);
        }
    }

    /** Starts making them. */
    public static Started start(Findings car, Matters matters, BuyerPictures source, PageWorkers workers) {
        Map<String, Future<Optional<PrintedPicture>>> asked = new LinkedHashMap<>();
        Map<String, CloseView> crops = new LinkedHashMap<>();
        for (Matter matter : matters.lettered()) {
            CloseView.of(car, matter).ifPresent(view -> {
                crops.put(matter.id(), view);
                asked.computeIfAbsent(
                        view.address(),
                        address -> workers.start(
                                "Preparing photos for print",
                                () -> source.close(view.frame(), view.x(), view.y(), view.width(), view.height())));
            });
        }
        Optional<Frame> whole =
                Portrait.of(car.visit(), car.catalog()).map(photo -> new Frame(photo, OptionalDouble.empty()));
        String portrait = whole.map(frame -> frame.address() + "-portrait").orElse("");
        whole.ifPresent(
                frame -> asked.put(portrait, workers.start("Preparing photos for print", () -> source.print(frame))));
        workers.expect(asked.size());
        return new Started(asked, crops, portrait);
    }

    /** Address of the picture of the car; empty if there is none. */
    String portrait() {
        return files.containsKey(portrait) ? portrait : "";
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
