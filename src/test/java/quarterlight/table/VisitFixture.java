package quarterlight.table;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import quarterlight.car.body.BodyStyle;
import quarterlight.table.cell.RowContext;
import quarterlight.visit.TestCars;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.MediaHeader;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.photo.Sha256;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;

/** A coupe's visit with a few photos, for tests of tables. */
public final class VisitFixture {
    private final List<Photo> photos = new ArrayList<>();
    private final List<Recorded<Pin>> pins = new ArrayList<>();

    public static String hash(String start) {
        return start + "0".repeat(64 - start.length());
    }

    /** A visit with photos one.jpg (a1…), two.jpg (b2…, pinned to roof), three.jpg (c3…, pinned to roof and hood), same.jpg twice (d4…, e5…), walk.mp4 (f6…, 12 s). */
    public static VisitFixture usual() {
        return new VisitFixture()
                .photo(1, "one.jpg", "a1a1a1a1")
                .photo(2, "two.jpg", "b2b2b2b2")
                .photo(3, "three.jpg", "c3c3c3c3")
                .photo(4, "same.jpg", "d4d4d4d4")
                .photo(5, "same.jpg", "e5e5e5e5")
                .film(6, "walk.mp4", "f6f6f6f6", 12)
                .pin(2, "roof")
                .pin(3, "roof")
                .pin(3, "hood");
    }

    public VisitFixture photo(long id, String name, String start) {
        photos.add(media(id, name, start, MediaKind.PHOTO, OptionalDouble.empty()));
        return this;
    }

    public VisitFixture film(long id, String name, String start, double seconds) {
        photos.add(media(id, name, start, MediaKind.FILM, OptionalDouble.of(seconds)));
        return this;
    }

    private static Photo media(long id, String name, String start, MediaKind kind, OptionalDouble seconds) {
        PhotoFile file = new PhotoFile(
                name,
                "originals/" + start + "-" + name,
                new Sha256(hash(start)),
                1000,
                kind,
                kind == MediaKind.PHOTO ? "JPEG" : "MP4",
                MediaHeader.NONE
                        .withSize(OptionalInt.of(1600), OptionalInt.of(1200), 1)
                        .withSeconds(seconds),
                OptionalDouble.empty(),
                List.of(),
                MediaFacts.NONE);
        return new Photo(new PhotoId(id), file, Optional.empty());
    }

    public VisitFixture pin(long photo, String zone) {
        pins.add(new Recorded<>(
                new RecordId(pins.size() + 1L), VisitParts.pin(new PhotoId(photo), new quarterlight.car.ZoneId(zone))));
        return this;
    }

    public static VisitFacts facts() {
        return VisitParts.facts(TestCars.of("test car", BodyStyle.COUPE), ZoneId.of("America/Denver"));
    }

    public VisitRecord record() {

        return new VisitParts(facts()).photos(photos).pins(pins).record();
    }

    public RowContext context() {
        return RowContext.of(record(), ZoneTable.load());
    }
}
