package quarterlight.visit.annotation;

import java.util.List;
import java.util.Optional;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;

/** What ties a frame that was kept as a photo to the film it was taken from; the content identifier of both kinds of tie is the same column. */
public final class KeptFrame {
    private static final String FRAME_OF = "frame of ";

    private KeptFrame() {}

    /** The content identifier of a frame of this film. */
    public static String tie(PhotoFile film) {
        return FRAME_OF + film.sha256();
    }

    /** The film that a photo is a frame of, if it is one and its film is in the visit. */
    public static Optional<Photo> film(Photo frame, List<Photo> photos) {
        return frame.file().contentId().filter(tie -> tie.startsWith(FRAME_OF)).flatMap(tie -> photos.stream()
                .filter(photo -> photo.file().kind() == MediaKind.FILM)
                .filter(photo -> tie(photo.file()).equals(tie))
                .findFirst());
    }

    /** A region of the film as it lies on the frame; all of the frame where the film's own size is not known. */
    public static HiddenRegion onFrame(HiddenRegion region, Photo film, Photo frame) {
        PhotoFile from = film.file();
        PhotoFile to = frame.file();
        double width = to.width().orElse(0);
        double height = to.height().orElse(0);
        boolean sized = from.width().orElse(0) > 0 && from.height().orElse(0) > 0;
        Outline outline = sized
                ? scaled(
                        region.outline(),
                        width / from.width().orElse(1),
                        height / from.height().orElse(1))
                : new Outline(
                        List.of(
                                new PixelPoint(0, 0),
                                new PixelPoint(width, 0),
                                new PixelPoint(width, height),
                                new PixelPoint(0, height)),
                        List.of());
        return new HiddenRegion(frame.id(), outline, region.why());
    }

    private static Outline scaled(Outline outline, double across, double down) {
        return new Outline(
                scaled(outline.shell(), across, down),
                outline.holes().stream().map(hole -> scaled(hole, across, down)).toList());
    }

    private static List<PixelPoint> scaled(List<PixelPoint> ring, double across, double down) {
        return ring.stream()
                .map(point -> new PixelPoint(point.x() * across, point.y() * down))
                .toList();
    }
}
