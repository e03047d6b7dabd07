package quarterlight.edit.intake;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.decode.Pictures;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.photo.worker.OriginalPictures;
import quarterlight.store.folder.ThumbnailStore;
import quarterlight.store.folder.VisitFolder;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.photo.Sha256;

/** The thumbnails of one visit: from its cache, else made from the original and kept there. */
public final class VisitThumbnails implements ThumbnailShelf, AutoCloseable {
    private final VisitFolder folder;
    private Optional<ThumbnailStore> opened = Optional.empty();
    private final DecodingWorkers workers = new DecodingWorkers();
    private final OriginalPictures originals;

    private VisitThumbnails(VisitFolder folder) {
        this.folder = folder;
        this.originals = new OriginalPictures(folder.root(), workers);
    }

    public static VisitThumbnails of(VisitFolder folder) {
        return new VisitThumbnails(folder);
    }

    /** The cache, opened when the first picture is asked for or kept. */
    private synchronized ThumbnailStore cache() {
        if (opened.isEmpty()) {
            opened = Optional.of(ThumbnailStore.open(folder));
        }
        return opened.get();
    }

    @Override
    public void put(Sha256 photo, byte[] jpeg) {
        cache().put(photo, Pictures.THUMBNAIL, jpeg);
    }

    /** The thumbnail of each photo by its number; empty for what cannot be shown. */
    public Function<PhotoId, Optional<byte[]>> by(VisitRecord visit) {
        Map<PhotoId, PhotoFile> files = visit.photos().stream().collect(Collectors.toMap(Photo::id, Photo::file));
        return id -> Optional.ofNullable(files.get(id)).flatMap(this::thumbnail);
    }

    private Optional<byte[]> thumbnail(PhotoFile photo) {
        Optional<byte[]> kept = cache().get(photo.sha256(), Pictures.THUMBNAIL);
        if (kept.isPresent()) {
            return kept;
        }
        try {
            byte[] made = Pictures.jpeg(originals.upright(photo, Pictures.THUMBNAIL));
            put(photo.sha256(), made);
            return Optional.of(made);
        } catch (PictureUnreadable e) {
            return Optional.empty();
        }
    }

    @Override
    public synchronized void close() {
        workers.close();
        opened.ifPresent(ThumbnailStore::close);
    }
}
