package quarterlight.page.brief;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import quarterlight.findings.Findings;
import quarterlight.matters.Matter;
import quarterlight.page.report.picture.Frame;
import quarterlight.visit.annotation.PhotoNote;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.Recorded;

/**
 * The photo that shows a matter, and the part of it that is looked at closely: round the outlines on its zones, else round the notes on the
 * photo, else all of it that the shape of a crop holds. Pixels of the upright photo.
 *
 * @param whole true if no outline and no note says where to look
 */
record CloseView(Frame frame, double x, double y, double width, double height, boolean whole) {
    private static final double ASPECT = 4.0 / 3;
    private static final double MARGIN = 1.7;
    /** Of the photo's width, at least: closer, and nobody knows what is seen. */
    private static final double LEAST_SHARE = 0.3;

    /** Empty where no photo shows it. */
    static Optional<CloseView> of(Findings car, Matter matter) {
        return matter.photos().stream()
                .flatMap(photo -> of(car, matter, photo).stream())
                .findFirst();
    }

    private static Optional<CloseView> of(Findings car, Matter matter, PhotoId id) {
        return car.visit()
                .photo(id)
                .filter(photo ->
                        photo.file().kind() == MediaKind.PHOTO || photo.file().kind() == MediaKind.FILM)
                .filter(photo -> photo.file().width().isPresent()
                        && photo.file().height().isPresent()
                        && photo.file().width().getAsInt() > 0
                        && photo.file().height().getAsInt() > 0)
                .map(photo -> view(car, matter, photo));
    }

    private static CloseView view(Findings car, Matter matter, Photo photo) {
        double width = photo.file().width().getAsInt();
        double height = photo.file().height().getAsInt();
        OptionalDouble moment = moment(car, matter, photo);
        Frame frame = new Frame(photo.id(), moment);
        List<PixelPoint> points = moment.isPresent() ? List.of() : points(car, matter, photo.id());
        return points.isEmpty()
                ? fitted(frame, width / 2, height / 2, width, height, width, height, true)
                : around(frame, points, width, height);
    }

    private static OptionalDouble moment(Findings car, Matter matter, Photo photo) {
        if (photo.file().kind() != MediaKind.FILM) {
            return OptionalDouble.empty();
        }
        return car.visit().pins().stream()
                .map(Recorded::value)
                .filter(pin -> pin.photo().equals(photo.id()) && matter.zones().contains(pin.zone()))
                .map(Pin::at)
                .filter(OptionalDouble::isPresent)
                .findFirst()
                .orElse(OptionalDouble.empty());
    }

    private static List<PixelPoint> points(Findings car, Matter matter, PhotoId id) {
        List<PixelPoint> outlined = car.visit().traces().stream()
                .map(Recorded::value)
                .filter(trace -> trace.photo().equals(id) && matter.zones().contains(trace.zone()))
                .map(Trace::outline)
                .flatMap(outline -> outline.shell().stream())
                .toList();
        Stream<PixelPoint> noted = car.visit().photoNotes().stream()
                .map(Recorded::value)
                .filter(note -> note.photo().equals(id) && note.atSeconds().isEmpty())
                .map(PhotoNote::points)
                .flatMap(List::stream);
        return outlined.isEmpty() ? noted.toList() : outlined;
    }

    private static CloseView around(Frame frame, List<PixelPoint> points, double width, double height) {
        double left = points.stream().mapToDouble(PixelPoint::x).min().orElseThrow();
        double right = points.stream().mapToDouble(PixelPoint::x).max().orElseThrow();
        double top = points.stream().mapToDouble(PixelPoint::y).min().orElseThrow();
        double bottom = points.stream().mapToDouble(PixelPoint::y).max().orElseThrow();
        double wanted = Math.max((right - left) * MARGIN, (bottom - top) * MARGIN * ASPECT);
        double across = Math.max(wanted, LEAST_SHARE * width);
        return fitted(frame, (left + right) / 2, (top + bottom) / 2, across, across / ASPECT, width, height, false);
    }

    /** In the shape 4 to 3, within the photo. */
    private static CloseView fitted(
            Frame frame, double x, double y, double across, double high, double width, double height, boolean whole) {
        double w = Math.min(Math.min(across, high * ASPECT), Math.min(width, height * ASPECT));
        double h = w / ASPECT;
        double left = Math.max(0, Math.min(width - w, x - w / 2));
        double top = Math.max(0, Math.min(height - h, y - h / 2));
        return new CloseView(frame, left, top, w, h, whole);
    }

    String address() {
        return frame.address() + "-close-" + Math.round(x) + "-" + Math.round(y) + "-" + Math.round(width);
    }
}
