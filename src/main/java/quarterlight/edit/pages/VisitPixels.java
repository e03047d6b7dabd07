package quarterlight.edit.pages;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import quarterlight.page.report.picture.PhotoPixels;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.photo.worker.OriginalPictures;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;

/** Pictures for the pages, decoded from the originals of one visit at the size wanted. Safe for several threads. */
public final class VisitPixels implements PhotoPixels {
    private final OriginalPictures originals;
    private final Map<PhotoId, PhotoFile> files;

    /** @param workers decode the originals; they are the caller's to close */
    public VisitPixels(Path visitFolder, VisitRecord visit, DecodingWorkers workers) {
        this.originals = new OriginalPictures(visitFolder, workers);
        this.files = visit.photos().stream().collect(Collectors.toMap(Photo::id, Photo::file));
    }

    @Override
    public Optional<BufferedImage> picture(PhotoId photo, OptionalDouble at, int longSidePx) {
        PhotoFile file = files.get(photo);
        if (file == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(originals.at(file, at, longSidePx));
        } catch (PictureUnreadable e) {
            return Optional.empty();
        }
    }
}
