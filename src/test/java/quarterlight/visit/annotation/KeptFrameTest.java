package quarterlight.visit.annotation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import quarterlight.car.body.BodyStyle;
import quarterlight.rust.TestVisits;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.MediaHeader;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;

class KeptFrameTest {
    private static final Outline PLATE = new Outline(
            List.of(new PixelPoint(100, 200), new PixelPoint(300, 200), new PixelPoint(300, 260)), List.of());

    private static Photo frameOf(Photo film, int id, int width, int height) {
        PhotoFile file = TestVisits.photo(id, MediaKind.PHOTO, width, height).file();
        PhotoFile tied = new PhotoFile(
                file.name(),
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
                        OptionalInt.of(width),
                        OptionalInt.of(height),
                        file.orientation(),
                        file.seconds(),
                        Optional.of(KeptFrame.tie(film.file()))),
                file.sharpness(),
                file.notes(),
                MediaFacts.NONE);
        return new Photo(new PhotoId(id), tied, Optional.empty());
    }

    @Test
    void aKeptFrameKeepsItsFilmsHiddenRegions() {
        Photo film = TestVisits.photo(1, MediaKind.FILM, 1920, 1080);
        Photo same = frameOf(film, 2, 1920, 1080);
        Photo half = frameOf(film, 3, 960, 540);
        Photo other = TestVisits.photo(4, MediaKind.PHOTO, 1920, 1080);
        VisitRecord visit = new VisitParts(TestVisits.facts(BodyStyle.COUPE))
                .photos(List.of(film, same, half, other))
                .hidden(VisitParts.rows(List.of(new HiddenRegion(film.id(), PLATE, Optional.of("a plate")))))
                .record();
        assertThat(visit.hiddenOn(film.id())).hasSize(1);
        assertThat(visit.hiddenOn(same.id()))
                .containsExactly(new HiddenRegion(same.id(), PLATE, Optional.of("a plate")));
        assertThat(visit.hiddenOn(half.id())).singleElement().satisfies(region -> assertThat(
                        region.outline().shell())
                .containsExactly(new PixelPoint(50, 100), new PixelPoint(150, 100), new PixelPoint(150, 130)));
        assertThat(visit.hiddenOn(other.id())).isEmpty();
    }
}
