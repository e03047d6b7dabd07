package quarterlight.ui.compare;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import quarterlight.edit.pages.VisitPixels;
import quarterlight.page.report.picture.BuyerPictures;
import quarterlight.photo.pixels.JpegWriter;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.task.Threads;
import quarterlight.visit.photo.PhotoId;

/** The photos of the cars as the pages show them, decoded in the background, hidden regions gone. Event thread only. */
final class PhotoSource {
    private static final int MAX_KEPT = 24;

    private final DecodingWorkers decoding = new DecodingWorkers();
    private final ExecutorService thread = Threads.inOrderDaemon("quarterlight-cars-photos");
    private final List<BuyerPictures> cars = new ArrayList<>();
    private final Map<Wish, Optional<BufferedImage>> kept = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Wish, Optional<BufferedImage>> eldest) {
            return size() > MAX_KEPT;
        }
    };
    private boolean stopped;

    private record Wish(int car, PhotoId photo, int longSidePx) {}

    PhotoSource(LoadedCars loaded) {
        for (LoadedCars.Car car : loaded.cars()) {
            cars.add(new BuyerPictures(
                    car.findings().visit(),
                    new VisitPixels(car.candidate().folder(), car.findings().visit(), decoding),
                    JpegWriter::jpeg));
        }
    }

    /** @param arrived told on the event thread; empty for a photo that cannot be shown */
    void ask(int car, PhotoId photo, int longSidePx, Consumer<Optional<BufferedImage>> arrived) {
        Wish wish = new Wish(car, photo, longSidePx);
        if (kept.containsKey(wish)) {
            arrived.accept(kept.get(wish));
            return;
        }
        if (stopped) {
            return;
        }
        thread.execute(() -> {
            Optional<BufferedImage> picture = cars.get(car).picture(photo, longSidePx);
            SwingUtilities.invokeLater(() -> {
                kept.put(wish, picture);
                arrived.accept(picture);
            });
        });
    }

    void stop() {
        stopped = true;
        thread.shutdownNow();
        decoding.close();
    }
}
