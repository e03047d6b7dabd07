package quarterlight.ui.kit.view;

import java.awt.image.BufferedImage;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Timer;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.decode.Pictures;
import quarterlight.ui.kit.visit.PhotoImages;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.Sha256;

/**
 * The best picture of a photo at hand: at once the thumbnail, soon one that fills the screen, and every pixel when that is needed. What
 * was passed over quickly is not decoded. Event thread only.
 */
final class LargePictures {
    private static final int PAUSE_MS = 60;
    private static final int MAX_KEPT = 4;
    /** Larger pictures are shown with a quarter of their pixels at most, so that one picture never takes all memory. */
    private static final long MAX_PIXELS = 50_000_000;

    private static final int WHOLE = Integer.MAX_VALUE;

    private final PhotoImages images;
    private final Runnable ready;
    private final Consumer<String> unreadable;
    private final Timer pause;
    private final Map<Sha256, BufferedImage> screens = new LinkedHashMap<>(8, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Sha256, BufferedImage> eldest) {
            return size() > MAX_KEPT;
        }
    };
    private Optional<PhotoFile> wanted = Optional.empty();
    private Optional<BufferedImage> whole = Optional.empty();
    private Optional<BufferedImage> frame = Optional.empty();
    private boolean wholeAsked;

    /**
     * @param ready told when a better picture has come
     * @param unreadable told why the picture cannot be shown
     */
    LargePictures(PhotoImages images, Runnable ready, Consumer<String> unreadable) {
        this.images = images;
        this.ready = ready;
        this.unreadable = unreadable;
        this.pause = new Timer(PAUSE_MS, e -> wanted.ifPresent(this::fetchScreen));
        pause.setRepeats(false);
        images.onReady(ready);
    }

    void show(Optional<PhotoFile> photo) {
        if (!photo.map(PhotoFile::sha256).equals(wanted.map(PhotoFile::sha256))) {
            whole = Optional.empty();
            frame = Optional.empty();
            wholeAsked = false;
            pause.restart();
        }
        wanted = photo;
    }

    /** Shows a frame of the film in place of the picture that stands for it; empty shows that again. */
    void frame(Optional<BufferedImage> shown) {
        frame = shown;
    }

    /** The best picture there is now. */
    Optional<BufferedImage> best() {
        if (wanted.isEmpty()) {
            return Optional.empty();
        }
        return frame.or(() -> whole)
                .or(() -> Optional.ofNullable(screens.get(wanted.get().sha256())))
                .or(() -> images.thumbnail(wanted.get()));
    }

    private boolean isWanted(PhotoFile photo) {
        return wanted.map(PhotoFile::sha256).equals(Optional.of(photo.sha256()));
    }

    private void fetchScreen(PhotoFile photo) {
        if (screens.containsKey(photo.sha256()) || !photo.kind().isShown()) {
            return;
        }
        images.large(
                photo,
                Pictures.SCREEN,
                picture -> {
                    screens.put(photo.sha256(), picture);
                    if (isWanted(photo)) {
                        ready.run();
                    }
                },
                problem -> {
                    if (isWanted(photo)) {
                        unreadable.accept(why(problem));
                    }
                });
    }

    /** The name of the file stands over the picture. */
    private static String why(Throwable problem) {
        return problem instanceof PictureUnreadable told ? told.reason() : problem.getMessage();
    }

    /** Fetches every pixel if the picture shown has fewer than the zoom can show. */
    void need(double scale) {
        if (wanted.isEmpty() || wholeAsked || frame.isPresent()) {
            return;
        }
        PhotoFile photo = wanted.get();
        int longSide = Math.max(photo.width().orElse(0), photo.height().orElse(0));
        if (longSide <= Pictures.SCREEN || scale * longSide <= Pictures.SCREEN * 1.1) {
            return;
        }
        wholeAsked = true;
        long pixels = (long) photo.width().orElse(0) * photo.height().orElse(0);
        images.large(
                photo,
                pixels > MAX_PIXELS ? longSide / 2 : WHOLE,
                picture -> {
                    if (isWanted(photo)) {
                        whole = Optional.of(picture);
                        ready.run();
                    }
                },
                problem -> {
                    if (isWanted(photo)) {
                        unreadable.accept(why(problem));
                    }
                });
    }

    /** True while the whole picture is on its way. */
    boolean isFetchingWhole() {
        return wholeAsked && whole.isEmpty();
    }
}
