package quarterlight.ui.photos;

import java.awt.image.BufferedImage;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.SwingUtilities;
import quarterlight.capture.CorrectedTimes;
import quarterlight.capture.DifferenceHash;
import quarterlight.capture.Exposure;
import quarterlight.capture.NearDuplicates;
import quarterlight.capture.SharpnessRange;
import quarterlight.photo.pixels.PictureMeasures;
import quarterlight.ui.kit.PhotoImages;
import quarterlight.ui.photos.list.PhotoHints;
import quarterlight.visit.MediaKind;
import quarterlight.visit.Photo;
import quarterlight.visit.PhotoFile;
import quarterlight.visit.PhotoId;
import quarterlight.visit.Sha256;

/** Looks at every picture once, slowly in the background, for near-duplicates and exposure. */
final class HintWork {
    private static final System.Logger LOG = System.getLogger(HintWork.class.getName());
    /** The window comes first. */
    private static final long FIRST_WAIT_MS = 1500;

    /** So long after the inspector did something no picture is looked at. */
    private static final long REST_NS = 1_000_000_000L;

    private static final long TELL_EVERY_NS = 3_000_000_000L;

    /** What one picture measures. */
    private record Measured(DifferenceHash hash, Exposure exposure) {}

    private final PhotoImages images;
    private final Consumer<PhotoHints> arrived;
    private final Map<Sha256, Optional<Measured>> known = new HashMap<>();
    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "quarterlight-hints");
        thread.setDaemon(true);
        return thread;
    });
    private volatile List<Photo> wanted = List.of();
    private volatile CorrectedTimes times;
    private volatile long restUntil = System.nanoTime();

    /** @param arrived told on the event thread */
    HintWork(PhotoImages images, CorrectedTimes times, Consumer<PhotoHints> arrived) {
        this.images = images;
        this.times = times;
        this.arrived = arrived;
    }

    /** Asks for the hints of these photos; the same photos are not looked at again. */
    void request(List<Photo> photos, CorrectedTimes corrected) {
        if (!photos.equals(wanted) || times != corrected) {
            wanted = photos;
            times = corrected;
            try {
                worker.execute(() -> look(photos));
            } catch (RejectedExecutionException e) {
                LOG.log(System.Logger.Level.DEBUG, "the visit is closing", e);
            }
        }
    }

    /** The inspector is at work, and the processor is wanted elsewhere. */
    void rest() {
        restUntil = System.nanoTime() + REST_NS;
    }

    private void look(List<Photo> photos) {
        if (!waited(known.isEmpty() ? FIRST_WAIT_MS : 0)) {
            return;
        }
        long told = System.nanoTime();
        for (Photo photo : photos) {
            if (!rested() || wanted != photos || Thread.currentThread().isInterrupted()) {
                return;
            }
            known.computeIfAbsent(photo.file().sha256(), hash -> measured(photo.file()));
            if (System.nanoTime() - told > TELL_EVERY_NS) {
                tell(photos);
                told = System.nanoTime();
            }
        }
        tell(photos);
    }

    /** Waits as long as the inspector is at work; false if the work is to end. */
    private boolean rested() {
        for (long left = restUntil - System.nanoTime(); left > 0; left = restUntil - System.nanoTime()) {
            if (!waited(1 + left / 1_000_000)) {
                return false;
            }
        }
        return true;
    }

    private static boolean waited(long ms) {
        try {
            Thread.sleep(ms);
            return true;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private Optional<Measured> measured(PhotoFile photo) {
        if (photo.kind() == MediaKind.FILM) {
            return Optional.empty();
        }
        Optional<BufferedImage> picture = images.thumbnailNow(photo);
        return picture.map(image -> new Measured(PictureMeasures.hash(image), PictureMeasures.exposure(image)));
    }

    private void tell(List<Photo> photos) {
        Map<PhotoId, DifferenceHash> hashes = new HashMap<>();
        Map<PhotoId, Exposure> exposures = new HashMap<>();
        for (Photo photo : photos) {
            known.getOrDefault(photo.file().sha256(), Optional.empty()).ifPresent(m -> {
                hashes.put(photo.id(), m.hash());
                exposures.put(photo.id(), m.exposure());
            });
        }
        Map<PhotoId, Double> sharpness = photos.stream()
                .filter(photo -> photo.file().sharpness().isPresent())
                .collect(Collectors.toMap(
                        Photo::id, photo -> photo.file().sharpness().getAsDouble()));
        PhotoHints hints =
                PhotoHints.of(SharpnessRange.of(sharpness), NearDuplicates.of(photos, times, hashes), exposures);
        SwingUtilities.invokeLater(() -> arrived.accept(hints));
    }

    void stop() {
        worker.shutdownNow();
    }
}
