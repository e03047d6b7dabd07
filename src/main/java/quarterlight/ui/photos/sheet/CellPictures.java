package quarterlight.ui.photos.sheet;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.RejectedExecutionException;
import javax.swing.SwingUtilities;
import quarterlight.task.Threads;
import quarterlight.ui.kit.visit.PhotoImages;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.Sha256;

/** Thumbnails brought to the size of a cell in the background, so that painting only copies pixels. Event thread only. */
final class CellPictures {
    private static final System.Logger LOG = System.getLogger(CellPictures.class.getName());
    private static final long MAX_PIXELS = 12_000_000;

    private record Key(Sha256 photo, int width, int height) {}

    private final PhotoImages images;
    private final Runnable ready;
    private final Set<Key> asked = new HashSet<>();
    private final ExecutorService worker = Threads.inOrderDaemon("quarterlight-cells");
    private long pixels;
    private final Map<Key, BufferedImage> kept = new LinkedHashMap<>(64, 0.75f, true);

    /** @param ready told on the event thread when a picture has come */
    CellPictures(PhotoImages images, Runnable ready) {
        this.images = images;
        this.ready = ready;
    }

    /** The picture that fits into a box, in device pixels, if it is at hand; else it is made and {@code ready} is told. */
    Optional<BufferedImage> fitting(PhotoFile photo, int width, int height) {
        Key key = new Key(photo.sha256(), width, height);
        BufferedImage found = kept.get(key);
        if (found != null) {
            return Optional.of(found);
        }
        if (!asked.contains(key)) {
            images.thumbnail(photo).ifPresent(whole -> make(key, whole));
        }
        return Optional.empty();
    }

    private void make(Key key, BufferedImage whole) {
        asked.add(key);
        try {
            worker.execute(() -> {
                BufferedImage fitted = fitted(whole, key.width(), key.height());
                SwingUtilities.invokeLater(() -> keep(key, fitted));
            });
        } catch (RejectedExecutionException e) {
            LOG.log(System.Logger.Level.DEBUG, "the sheet is closing", e);
        }
    }

    private void keep(Key key, BufferedImage fitted) {
        asked.remove(key);
        kept.put(key, fitted);
        pixels += area(fitted);
        var oldest = kept.entrySet().iterator();
        while (pixels > MAX_PIXELS && oldest.hasNext()) {
            pixels -= area(oldest.next().getValue());
            oldest.remove();
        }
        ready.run();
    }

    private static long area(BufferedImage image) {
        return (long) image.getWidth() * image.getHeight();
    }

    private static BufferedImage fitted(BufferedImage whole, int width, int height) {
        double scale = Math.min((double) width / whole.getWidth(), (double) height / whole.getHeight());
        BufferedImage small = new BufferedImage(
                Math.max(1, (int) Math.round(whole.getWidth() * scale)),
                Math.max(1, (int) Math.round(whole.getHeight() * scale)),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = small.createGraphics();
        try {
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            g.drawImage(whole, 0, 0, small.getWidth(), small.getHeight(), null);
        } finally {
            g.dispose();
        }
        return small;
    }

    void stop() {
        worker.shutdownNow();
    }
}
