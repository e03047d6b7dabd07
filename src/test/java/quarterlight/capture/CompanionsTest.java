package quarterlight.capture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.MediaHeader;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;

class CompanionsTest {
    @Test
    void theSameNameAndNearlyTheSameTimeTieAPhotoToItsFilm() {
        assertThat(tied(photo("IMG_1.HEIC", "10:00:03", ""), film("img_1.MOV", "10:00:01", 2.9, "")))
                .isTrue();
        assertThat(tied(photo("IMG_1.HEIC", "10:00:03", ""), film("IMG_2.MOV", "10:00:01", 2.9, "")))
                .as("another name")
                .isFalse();
        assertThat(tied(photo("IMG_1.HEIC", "10:00:09", ""), film("IMG_1.MOV", "10:00:01", 2.9, "")))
                .as("eight seconds apart")
                .isFalse();
        assertThat(tied(photo("IMG_1.HEIC", "10:00:03", ""), film("IMG_1.MOV", "10:00:01", 40, "")))
                .as("a long film")
                .isFalse();
        assertThat(tied(photo("IMG_1.HEIC", "10:00:03", ""), photo("IMG_1.JPG", "10:00:03", "")))
                .as("two photos")
                .isFalse();
    }

    @Test
    void theContentIdentifierDecidesWhereBothCarryOne() {
        assertThat(tied(photo("a.heic", "10:00:00", "X-1"), film("renamed.mov", "13:00:00", 3, "X-1")))
                .isTrue();
        assertThat(tied(photo("a.heic", "10:00:00", "X-1"), film("a.mov", "10:00:00", 3, "X-2")))
                .as("the same name, but other identifiers")
                .isFalse();
        assertThat(tied(photo("a.heic", "10:00:00", "X-1"), film("a.mov", "10:00:00", 3, "")))
                .as("one has none")
                .isTrue();
    }

    @Test
    void eachHasOneCompanionAtMost() {
        Companions found =
                of(photo("a.heic", "10:00:00", ""), photo("a.jpg", "10:00:00", ""), film("a.mov", "10:00:00", 3, ""));
        assertThat(found.of(new PhotoId(1))).hasValue(new PhotoId(3));
        assertThat(found.of(new PhotoId(2))).isEmpty();
        assertThat(found.of(new PhotoId(3))).hasValue(new PhotoId(1));
    }

    private record Piece(boolean film, String name, String time, double seconds, String contentId) {}

    private static Piece photo(String name, String time, String contentId) {
        return new Piece(false, name, time, 0, contentId);
    }

    private static Piece film(String name, String time, double seconds, String contentId) {
        return new Piece(true, name, time, seconds, contentId);
    }

    private static boolean tied(Piece first, Piece second) {
        Companions found = of(first, second);
        boolean there = found.of(new PhotoId(1)).equals(Optional.of(new PhotoId(2)));
        assertThat(found.of(new PhotoId(2)).equals(Optional.of(new PhotoId(1)))).isEqualTo(there);
        return there;
    }

    private static Companions of(Piece... pieces) {
        Visits visits = Visits.in("UTC");
        for (Piece piece : pieces) {
            String time = "2026-07-01T" + piece.time();
            visits = piece.film() ? visits.film("", time) : visits.photo("", time, "Z", "");
        }
        VisitRecord plain = visits.record();
        List<Photo> photos = plain.photos().stream()
                .map(photo -> new Photo(
                        photo.id(), named(photo.file(), pieces[(int) photo.id().value() - 1]), Optional.empty()))
                .toList();
        VisitRecord visit = new VisitParts(plain.facts()).photos(photos).record();
        return Companions.of(visit, CorrectedTimes.of(visit));
    }

    private static PhotoFile named(PhotoFile file, Piece piece) {
        return new PhotoFile(
                piece.name(),
                file.stored(),
                file.sha256(),
                file.bytes(),
                file.kind(),
                file.type(),
                new MediaHeader(
                        file.captured(),
                        file.gpsUtc(),
                        file.position(),
                        file.camera(),
                        file.width(),
                        file.height(),
                        file.orientation(),
                        piece.film() ? OptionalDouble.of(piece.seconds()) : OptionalDouble.empty(),
                        piece.contentId().isEmpty() ? Optional.empty() : Optional.of(piece.contentId())),
                file.sharpness(),
                file.notes(),
                MediaFacts.NONE);
    }
}
