package quarterlight.ui.kit.visit;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.LinkedBlockingDeque;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.SwingUtilities;
import quarterlight.edit.intake.ThumbnailShelf;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.decode.Pictures;
import quarterlight.photo.film.FilmFrame;
import quarterlight.photo.intake.FilePreview;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.photo.worker.OriginalPictures;
import quarterlight.store.folder.ThumbnailStore;
import quarterlight.store.folder.VisitFolder;
import quarterlight.task.Threads;
import quarterlight.ui.kit.Listeners;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.Sha256;

/**
 * The pictures of a visit for the screen: thumbnails kept in memory and on disk, large pictures made when asked for. All reading and
 * decoding is done in the background, what was asked for last first. Event thread only.
 */
public final class PhotoImages {
    private static final int MAX_IN_MEMORY = 400;
    private static final int MAX_WAITING = 200;

    /** The last one asked for is the first one done. */
    private static final class LastFirst extends LinkedBlockingDeque<Runnable> {
        @Override
        public boolean offer(Runnable work) {
            return super.offerFirst(work);
        }
    }

    private final VisitFolder folder;
    private final DecodingWorkers decoding;
    private final OriginalPictures originals;
    private final LastFirst waiting = new LastFirst();
    private final ThreadPoolExecutor workers;
    private final Listeners ready = new Listeners();
    private final Set<Sha256> asked = new HashSet<>();
    private final List<Runnable> whenStill = new ArrayList<>();
    private final Set<Sha256> cannot = new HashSet<>();
    private final Map<Sha256, BufferedImage> memory = new LinkedHashMap<>(64, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Sha256, BufferedImage> eldest) {
            return size() > MAX_IN_MEMORY;
        }
    };
    private volatile Map<Sha256, FilePreview> coming = Map.of();
    private Optional<ThumbnailStore> cache = Optional.empty();
    private boolean closed;

    PhotoImages(VisitFolder folder, DecodingWorkers decoding) {
        this.folder = folder;
        this.decoding = decoding;
        this.originals = new OriginalPictures(folder.root(), decoding);
        this.workers = Threads.pool("quarterlight-pictures", 2, waiting);
    }

    /** The thumbnail if it is at hand; else it is fetched, and {@link #onReady} is told when it is there. */
    public Optional<BufferedImage> thumbnail(PhotoFile photo) {
        Optional<BufferedImage> kept = Optional.ofNullable(memory.get(photo.sha256()));
        if (kept.isEmpty()
                && photo.kind().isShown()
                && !closed
                && !cannot.contains(photo.sha256())
                && asked.add(photo.sha256())) {
            workers.execute(new Fetch(photo));
            forgetOldest();
        }
        return kept;
    }

    /** Shows the small pictures of files that are being taken in, in place of those before. */
    void coming(List<FilePreview> glances) {
        Set<Sha256> before = coming.keySet();
        memory.keySet().removeAll(before);
        cannot.removeAll(before);
        coming = glances.stream()
                .collect(Collectors.toUnmodifiableMap(
                        glance -> glance.provisional().sha256(), glance -> glance));
    }

    /** True if the photo was tried and cannot be shown. */
    public boolean cannotShow(PhotoFile photo) {
        return cannot.contains(photo.sha256());
    }

    /** A long way scrolled leaves requests behind that nobody looks at any more. */
    private void forgetOldest() {
        while (waiting.size() > MAX_WAITING) {
            if (waiting.pollLast() instanceof Fetch old) {
                asked.remove(old.photo.sha256());
            }
        }
    }

    /** The wish for one thumbnail. */
    private final class Fetch implements Runnable {
        private final PhotoFile photo;

        Fetch(PhotoFile photo) {
            this.photo = photo;
        }

        @Override
        public void run() {
            fetch(photo);
        }
    }

    /** Where an intake puts the thumbnails it makes. May be used from any thread. */
    public ThumbnailShelf shelf() {
        return (photo, jpeg) -> cache().put(photo, Pictures.THUMBNAIL, jpeg);
    }

    /** What decodes the files of this visit and those that come into it. */
    public DecodingWorkers decoding() {
        return decoding;
    }

    /** The originals of the visit as their decoded pictures and sounds; waits for them, so it is never asked on the event thread. */
    public OriginalPictures originals() {
        return originals;
    }

    /** A frame of a film, or the page of a paper whose number is given in place of seconds; waits for it, so it is never asked for on the event thread. */
    public FilmFrame frame(PhotoFile film, double seconds) throws PictureUnreadable {
        return film.kind() == MediaKind.PAPER ? page(film, seconds) : originals.frame(film, seconds);
    }

    /** A page counts as a frame that is shown for a second. */
    private FilmFrame page(PhotoFile paper, double number) throws PictureUnreadable {
        int pages = paper.more().pages().orElse(1);
        int page = (int) Math.max(1, Math.min(pages, Math.floor(number)));
        BufferedImage picture = originals.page(paper, page, Pictures.SCREEN);
        return new FilmFrame(picture, page, 1, page == pages);
    }

    public Listeners.Registration onReady(Runnable listener) {
        return ready.add(listener);
    }

    /** Runs once no thumbnail is waited for any more, at once if none is. */
    void onceStill(Runnable work) {
        whenStill.add(work);
        beStill();
    }

    private void beStill() {
        if (asked.isEmpty() && !whenStill.isEmpty()) {
            List<Runnable> begin = List.copyOf(whenStill);
            whenStill.clear();
            begin.forEach(Runnable::run);
        }
    }

    private void fetch(PhotoFile photo) {
        Optional<BufferedImage> image = load(photo);
        SwingUtilities.invokeLater(() -> {
            asked.remove(photo.sha256());
            image.ifPresentOrElse(picture -> memory.put(photo.sha256(), picture), () -> cannot.add(photo.sha256()));
            ready.tell();
            beStill();
        });
    }

    /** The thumbnail, made if need be; waits for it, so it is never asked for on the event thread. */
    public Optional<BufferedImage> thumbnailNow(PhotoFile photo) {
        return load(photo);
    }

    private Optional<BufferedImage> load(PhotoFile photo) {
        Optional<FilePreview> glance = Optional.ofNullable(coming.get(photo.sha256()));
        if (glance.isPresent()) {
            return glance.get().picture(decoding);
        }
        ThumbnailStore store = cache();
        try {
            Optional<byte[]> kept = store.get(photo.sha256(), Pictures.THUMBNAIL);
            if (kept.isPresent()) {
                return Optional.of(Pictures.ofThumbnail(kept.get()));
            }
            BufferedImage made = originals.upright(photo, Pictures.THUMBNAIL);
            store.put(photo.sha256(), Pictures.THUMBNAIL, Pictures.jpeg(made));
            return Optional.of(made);
        } catch (PictureUnreadable e) {
            return Optional.empty();
        }
    }

    private synchronized ThumbnailStore cache() {
        if (cache.isEmpty()) {
            cache = Optional.of(ThumbnailStore.open(folder));
        }
        return cache.get();
    }

    /** A photo at a size, made in the background; both callbacks run on the event thread. */
    public void large(PhotoFile photo, int longSide, Consumer<BufferedImage> done, Consumer<PictureUnreadable> failed) {
        if (closed) {
            return;
        }
        workers.execute(() -> {
            try {
                BufferedImage image = originals.upright(photo, longSide);
                SwingUtilities.invokeLater(() -> done.accept(image));
            } catch (PictureUnreadable e) {
                SwingUtilities.invokeLater(() -> failed.accept(e));
            }
        });
    }

    void close() {
        closed = true;
        workers.shutdownNow();
        Threads.start("quarterlight-pictures-close", () -> {
            decoding.close();
            synchronized (this) {
                cache.ifPresent(ThumbnailStore::close);
            }
        });
    }
}
