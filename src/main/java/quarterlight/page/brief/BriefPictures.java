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
    private final Map<String, String> crops;
    private final String portrait;

    private BriefPictures(Map<String, byte[]> files, Map<String, String> crops, String portrait) {
        this.files = files;
        this.crops = crops;
        this.portrait = portrait;
    }

    /** Pictures that are being made. */
    public record Started(
            Map<String, Future<Optional<PrintedPicture>>> asked, Map<String, String> crops, String portrait) {
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
        Map<String, String> crops = new LinkedHashMap<>();
        for (Matter matter : matters.lettered()) {
            CloseView.of(car, matter).ifPresent(view -> {
                crops.put(matter.id(), view.address());
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
        String address = crops.getOrDefault(matter.id(), "");
        return files.containsKey(address) ? address : "";
    }

    /** The files by their address within the page. */
    public Map<String, byte[]> byAddress() {
        return files;
    }
}
