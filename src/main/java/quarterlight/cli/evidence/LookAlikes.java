package quarterlight.cli.evidence;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import quarterlight.capture.CorrectedTimes;
import quarterlight.capture.DifferenceHash;
import quarterlight.capture.NearDuplicates;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.decode.Pictures;
import quarterlight.photo.pixels.PictureMeasures;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;

/** The near-duplicates among a visit's photos, by their kept thumbnails. */
final class LookAlikes {
    private LookAlikes() {}

    static NearDuplicates of(VisitRecord visit, CorrectedTimes times, Function<PhotoId, Optional<byte[]>> thumbnails) {
        Map<PhotoId, DifferenceHash> hashes = new HashMap<>();
        visit.photos().stream()
                .filter(photo -> photo.setAside().isEmpty())
                .filter(photo -> photo.file().kind().isCameras())
                .map(Photo::id)
                .forEach(id -> thumbnails.apply(id).flatMap(LookAlikes::hash).ifPresent(hash -> hashes.put(id, hash)));
        return NearDuplicates.of(visit.photos(), times, hashes);
    }

    private static Optional<DifferenceHash> hash(byte[] jpeg) {
        try {
            return Optional.of(PictureMeasures.hash(Pictures.ofThumbnail(jpeg)));
        } catch (PictureUnreadable e) {
            return Optional.empty();
        }
    }
}
