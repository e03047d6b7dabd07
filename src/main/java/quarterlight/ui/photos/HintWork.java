package quarterlight.ui.photos;

import java.awt.image.BufferedImage;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.SwingUtilities;
import quarterlight.capture.CorrectedTimes;
import quarterlight.capture.DifferenceHash;
import quarterlight.capture.Exposure;
import quarterlight.capture.NearDuplicates;
import quarterlight.capture.SharpnessRange;
import quarterlight.photo.pixels.PictureMeasures;
import quarterlight.task.LatestWork;
import quarterlight.task.Progress;
import quarterlight.ui.kit.visit.PhotoImages;
import quarterlight.ui.photos.list.PhotoHints;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.photo.Sha256;

/** Looks at every picture once, slowly in the background, for near-duplicates and exposure. */
final class HintWork {
    /** The window comes first. */
    private static final long FIRST_WAIT_MS = 1500;

    /** So long after the inspector did something no picture is looked at. */
    private static final long REST_NS = 1_000_000_000L;

    private static final long TELL_EVERY_NS = 3_000_000_000L;

    /** What one picture measures. */
    private record Measured(DifferenceHash hash, Exposure exposure) {}

    private final PhotoImages images;
    private final Map<Sha256, Optional<Measured>> known = new HashMap<>();
    private final LatestWork<List<Photo>, PhotoHints> work;
    private List<Photo> wanted = List.of();
    private volatile CorrectedTimes times;
    private volatile long restUntil = System.nanoTime();

    /** @param arrived told on the event thread */
    HintWork(
            PhotoImages images,
            CorrectedTimes times,
            Consumer<PhotoHints> arrived,
            Consumer<? super Exception> failed) {
        this.images = images;
        this.times = times;
        this.work = new LatestWork<>("quarterlight-hints", SwingUtilities::invokeLater, this::look, arrived, failed);
    }

    /** Asks for the hints of these photos; the same photos are not looked at again. */
    void request(List<Photo> photos, CorrectedTimes corrected) {
        if (!photos.equals(wanted) || times != corrected) {
            wanted = photos;
            times = corrected;
            work.request(photos);
        }
    }

    /** The inspector is at work, and the processor is wanted elsewhere. */
    void rest() {
        restUntil = System.nanoTime() + REST_NS;
    }

    private PhotoHints look(List<Photo> photos, LatestWork.Course<PhotoHints> course) throws InterruptedException {
        Thread.sleep(known.isEmpty() ? FIRST_WAIT_MS : 0);
        long told = System.nanoTime();
        for (Photo photo : photos) {
            rest(course);
            known.computeIfAbsent(photo.file().sha256(), hash -> measured(photo.file()));
            if (System.nanoTime() - told > TELL_EVERY_NS) {
                course.soFar(hints(photos));
                told = System.nanoTime();
            }
        }
        return hints(photos);
    }

    /** Waits as long as the inspector is at work. */
    private void rest(Progress progress) throws InterruptedException {
        progress.checkCancelled();
        for (long left = restUntil - System.nanoTime(); left > 0; left = restUntil - System.nanoTime()) {
            Thread.sleep(1 + left / 1_000_000);
            progress.checkCancelled();
        }
    }

    private Optional<Measured> measured(PhotoFile photo) {
        if (photo.kind() != MediaKind.PHOTO) {
            return Optional.empty();
        }
        Optional<BufferedImage> picture = images.thumbnailNow(photo);
        return picture.map(image -> new Measured(PictureMeasures.hash(image), PictureMeasures.exposure(image)));
    }

    private PhotoHints hints(List<Photo> photos) {
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
        return PhotoHints.of(SharpnessRange.of(sharpness), NearDuplicates.of(photos, times, hashes), exposures);
    }

    void stop() {
        work.stop();
    }
}
