package quarterlight.edit.pages;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import quarterlight.page.report.picture.BuyerPictures;
import quarterlight.page.report.text.Shots;
import quarterlight.photo.pixels.JpegWriter;
import quarterlight.task.Progress;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;

/**
 * Writes the photos that the report shows in full size, pixels only: what is hidden is gone, and nothing of the data that a camera wrote into its file is left. Films
 * and papers stay at home.
 */
final class FullSize {
    /** The longest side that JPEG can bear. */
    private static final int ANY_SIZE = 65_500;

    private static final int QUALITY = 92;
    private static final int HASH_DIGITS = 8;
    private static final int NAME_LENGTH = 80;

    private FullSize() {}

    /** @param folder made if there is a picture to write */
    static void write(VisitRecord visit, Shots shots, BuyerPictures pictures, Path folder, Progress progress)
            throws IOException {
        Set<PhotoId> done = new HashSet<>();
        for (Shots.Shot shot : shots.all()) {
            progress.checkCancelled();
            Optional<Photo> photo =
                    visit.photo(shot.frame().photo()).filter(one -> one.file().kind() == MediaKind.PHOTO);
            if (photo.isEmpty() || !done.add(photo.get().id())) {
                continue;
            }
            progress.report(done.size(), shots.all().size(), shot.file());
            Optional<byte[]> jpeg =
                    pictures.bare(photo.get().id(), ANY_SIZE).map(picture -> JpegWriter.jpeg(picture, QUALITY));
            if (jpeg.isPresent()) {
                Files.createDirectories(folder);
                Files.write(folder.resolve(name(shot, photo.get())), jpeg.get());
            }
        }
    }

    /** The number that the report prints, the beginning of the original's hash, and the name as far as every system can bear it. */
    private static String name(Shots.Shot shot, Photo photo) {
        String stem = photo.file().name().replaceFirst("\\.[A-Za-z0-9]{1,5}$", "");
        String plain = stem.replaceAll("[^\\p{L}\\p{M}\\p{Nd}._-]+", "_");
        String shorter = plain.codePointCount(0, plain.length()) > NAME_LENGTH
                ? plain.substring(0, plain.offsetByCodePoints(0, NAME_LENGTH))
                : plain;
        String hash = photo.file().sha256().hex().substring(0, HASH_DIGITS);
        return shot.number() + "-" + hash + "-" + shorter + ".jpg";
    }
}
