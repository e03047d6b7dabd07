package quarterlight.rust;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import quarterlight.car.body.BodyStyle;
import quarterlight.visit.TestCars;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.MediaHeader;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.photo.Sha256;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.statement.Statement;

/** Invented visits of few facts, for tests. */
public final class TestVisits {
    private TestVisits() {}

    public static Photo photo(long id, MediaKind kind, int width, int height) {
        String hash = String.format("%064x", id);
        PhotoFile file = new PhotoFile(
                "photo" + id + ".jpg",
                "originals/photo" + id + ".jpg",
                new Sha256(hash),
                1000,
                kind,
                "JPEG",
                MediaHeader.NONE.withSize(OptionalInt.of(width), OptionalInt.of(height), 1),
                OptionalDouble.empty(),
                List.of(),
                MediaFacts.NONE);
        return new Photo(new PhotoId(id), file, Optional.empty());
    }

    public static VisitFacts facts(BodyStyle style) {
        return VisitParts.facts(TestCars.of("Tamarisk 1971", style), java.time.ZoneId.of("UTC"));
    }

    public static <T> List<Recorded<T>> rows(List<T> values) {
        return VisitParts.rows(values);
    }

    /** A coupe with photos 1 to 5 of 4000 by 3000 pixels. */
    static VisitRecord coupe(List<Trace> traces, List<Statement> statements) {
        List<Photo> photos = IntStream.rangeClosed(1, 5)
                .mapToObj(id -> photo(id, MediaKind.PHOTO, 4000, 3000))
                .toList();
        return new VisitParts(facts(BodyStyle.COUPE))
                .photos(photos)
                .traces(rows(traces))
                .statements(rows(statements))
                .record();
    }
}
