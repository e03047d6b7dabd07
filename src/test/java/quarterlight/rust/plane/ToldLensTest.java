package quarterlight.rust.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.MediaHeader;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.Sha256;

/** The lens that a photo tells takes the place of the usual one. */
class ToldLensTest {
    private static PhotoFile photo(OptionalInt width, OptionalInt height, OptionalDouble focal35Mm) {
        return new PhotoFile(
                        "a.jpg",
                        "originals/a.jpg",
                        new Sha256("0".repeat(64)),
                        1,
                        MediaKind.PHOTO,
                        "JPEG",
                        MediaHeader.NONE.withSize(width, height, 1),
                        OptionalDouble.empty(),
                        List.of(),
                        MediaFacts.NONE)
                .withMore(MediaFacts.ofLens(focal35Mm));
    }

    private static Lens lens(double focal35Mm) {
        return Lens.of(
                photo(OptionalInt.of(3000), OptionalInt.of(4000), OptionalDouble.of(focal35Mm)),
                List.of(new PixelPoint(1, 1)));
    }

    /** 5000 pixels of diagonal stand for the 43.27 mm of the film. */
    @Test
    void itIsToldByTheDiagonal() {
        assertThat(lens(28).focalPx()).isCloseTo(28 * 5000 / 43.2666, within(0.01));
        assertThat(lens(28).middle()).isEqualTo(new PixelPoint(1500, 2000));
    }

    @Test
    void aPhotoThatTellsNoneOrHasNoSizeHasTheUsualOne() {
        assertThat(Lens.of(photo(OptionalInt.of(3000), OptionalInt.of(4000), OptionalDouble.empty()), List.of())
                        .focalPx())
                .isEqualTo(0.8 * 4000);
        assertThat(Lens.of(photo(OptionalInt.empty(), OptionalInt.empty(), OptionalDouble.of(28)), List.of())
                        .focalPx())
                .isEqualTo(Lens.ofMarks(List.of()).focalPx());
    }

    /** Away from a ruler a tilt that it cannot see changes an area less, the narrower the field is. */
    @Test
    void aLongerLensLeavesLessOpenAwayFromTheRuler() {
        PhotoScale ruler = new PhotoScale.KnownLength(new PixelPoint(200, 300), new PixelPoint(1000, 300), 100);
        Outline patch = new Outline(
                List.of(
                        new PixelPoint(1200, 3000),
                        new PixelPoint(1800, 3000),
                        new PixelPoint(1800, 3600),
                        new PixelPoint(1200, 3600)),
                List.of());
        MarkedArea wide = MarkedArea.of(patch, ruler, 1.5, lens(20));
        MarkedArea narrow = MarkedArea.of(patch, ruler, 1.5, lens(100));
        assertThat(narrow.mm2()).isEqualTo(wide.mm2());
        assertThat(narrow.sdMm2()).isLessThan(0.7 * wide.sdMm2());
    }
}
