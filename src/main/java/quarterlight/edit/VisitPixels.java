package quarterlight.edit;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import quarterlight.page.report.PhotoPixels;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.decode.Pictures;
import quarterlight.photo.film.FilmFrames;
import quarterlight.visit.MediaKind;
import quarterlight.visit.Photo;
import quarterlight.visit.PhotoFile;
import quarterlight.visit.PhotoId;
import quarterlight.visit.VisitRecord;

/** Pictures for the pages, decoded from the originals of one visit at the size wanted. Safe for several threads. */
public final class VisitPixels implements PhotoPixels {
    private final Path visitFolder;
    private final Map<PhotoId, PhotoFile> files;
    private final Pictures pictures;

    public VisitPixels(Path visitFolder, VisitRecord visit, Pictures pictures) {
        this.visitFolder = Objects.requireNonNull(visitFolder, "visitFolder");
        this.files = visit.photos().stream().collect(Collectors.toMap(Photo::id, Photo::file));
        this.pictures = Objects.requireNonNull(pictures, "pictures");
    }

    @Override
    public Optional<BufferedImage> picture(PhotoId photo, OptionalDouble at, int longSidePx) {
        PhotoFile file = files.get(photo);
        if (file == null) {
            return Optional.empty();
        }
        try {
            if (file.kind() == MediaKind.PHOTO) {
                return Optional.of(pictures.upright(visitFolder, file, longSidePx));
            }
            return FilmFrames.available()
                    ? Optional.of(Pictures.fitted(
                            FilmFrames.at(visitFolder.resolve(file.stored()), at.orElse(0))
                                    .picture(),
                            longSidePx))
                    : Optional.empty();
        } catch (PictureUnreadable e) {
            return Optional.empty();
        }
    }
}
