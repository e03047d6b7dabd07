package quarterlight.ui.library;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.LinkedBlockingDeque;
import java.util.concurrent.ThreadPoolExecutor;
import javax.swing.SwingUtilities;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.photo.worker.OriginalPictures;
import quarterlight.store.library.LibraryPicture;
import quarterlight.task.Threads;

/** Pictures of many visits, decoded in the background from their originals, what was asked for last first; nothing is kept in a visit. Event thread only. */
final class LibraryPictures {
    private static final int MAX_KEPT = 300;
    private static final int MAX_WAITING = 60;

    /** One picture at one size. */
    private record Wish(Path visit, LibraryPicture picture, int longSidePx) {}

    /** The last one asked for is the first one done. */
    private static final class LastFirst extends LinkedBlockingDeque<Runnable> {
        private static final long serialVersionUID = 1;

        @Override
        public boolean offer(Runnable work) {
            return super.offerFirst(work);
        }
    }

    private final DecodingWorkers decoding = new DecodingWorkers();
    private final LastFirst waiting = new LastFirst();
    private final ThreadPoolExecutor threads = Threads.pool("quarterlight-library-pictures", 2, waiting);
    private final Runnable ready;
    private final Set<Wish> asked = new HashSet<>();
    private final Map<Wish, Optional<BufferedImage>> kept = new LinkedHashMap<>(64, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Wish, Optional<BufferedImage>> eldest) {
            return size() > MAX_KEPT;
        }
    };
    private boolean stopped;

    /** @param ready told when a picture came */
    LibraryPictures(Runnable ready) {
        this.ready = ready;
    }

    /** The picture if it is at hand; else it is fetched. */
    Optional<BufferedImage> of(Path visit, LibraryPicture picture, int longSidePx) {
        Wish wish = new Wish(visit, picture, longSidePx);
        Optional<BufferedImage> known = kept.get(wish);
        if (known != null) {
            return known;
        }
        if (!stopped && asked.add(wish)) {
            threads.execute(new Fetch(wish));
            forgetOldest();
        }
        return Optional.empty();
    }

    /** True if the picture was tried and cannot be shown, as on a drive that is not connected. */
    boolean cannotShow(Path visit, LibraryPicture picture, int longSidePx) {
        Optional<BufferedImage> known = kept.get(new Wish(visit, picture, longSidePx));
        return known != null && known.isEmpty();
    }

    private void forgetOldest() {
        while (waiting.size() > MAX_WAITING) {
            if (waiting.pollLast() instanceof Fetch old) {
                asked.remove(old.wish);
            }
        }
    }

    /** Forgets what could not be shown: a drive may be back. */
    void again() {
        kept.values().removeIf(Optional::isEmpty);
    }

    private final class Fetch implements Runnable {
        private final Wish wish;

        Fetch(Wish wish) {
            this.wish = wish;
        }

        @Override
        public void run() {
            Optional<BufferedImage> picture = decoded();
            SwingUtilities.invokeLater(() -> {
                asked.remove(wish);
                kept.put(wish, picture);
                ready.run();
            });
        }

        private Optional<BufferedImage> decoded() {
            LibraryPicture picture = wish.picture();
            if (!picture.kind().isShown()) {
                return Optional.empty();
            }
            try {
                return Optional.of(new OriginalPictures(wish.visit(), decoding)
                        .at(picture.file(), picture.at(), wish.longSidePx()));
            } catch (PictureUnreadable e) {
                return Optional.empty();
            }
        }
    }

    void stop() {
        stopped = true;
        threads.shutdownNow();
        Threads.startDaemon("quarterlight-library-close", decoding::close);
    }
}
