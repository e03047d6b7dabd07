package quarterlight.photo.exif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.drew.lang.Rational;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The lens from the tags of Exif. */
class LensOfExifTest {
    private final ExifSubIFDDirectory exif = new ExifSubIFDDirectory();

    private Metadata metadata() {
        Metadata metadata = new Metadata();
        metadata.addDirectory(exif);
        return metadata;
    }

    @Test
    void theTagForFilmOf35MmIsTakenAsItIs() {
        exif.setInt(ExifDirectoryBase.TAG_35MM_FILM_EQUIV_FOCAL_LENGTH, 26);
        assertThat(LensOfExif.focal35Mm(metadata())).hasValue(26);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -3, 10_001})
    void zeroMeansUnknownAndWhatNoLensHasIsLeftOut(int said) {
        exif.setInt(ExifDirectoryBase.TAG_35MM_FILM_EQUIV_FOCAL_LENGTH, said);
        assertThat(LensOfExif.focal35Mm(metadata())).isEmpty();
    }

    /** A sensor of 24 x 16 mm with 6000 x 4000 pixels has 250 pixels a mm: a lens of 20 mm shows what 30 mm do on film of 36 x 24 mm. */
    @ParameterizedTest
    @CsvSource({"6350, 2", "2500, 3"})
    void elseTheSensorTells(int perUnit, int unit) {
        exif.setInt(ExifDirectoryBase.TAG_35MM_FILM_EQUIV_FOCAL_LENGTH, 0);
        exif.setRational(ExifDirectoryBase.TAG_FOCAL_LENGTH, new Rational(20, 1));
        assertThat(LensOfExif.focal35Mm(metadata())).as("without the sensor").isEmpty();
        exif.setInt(ExifDirectoryBase.TAG_EXIF_IMAGE_WIDTH, 6000);
        exif.setInt(ExifDirectoryBase.TAG_EXIF_IMAGE_HEIGHT, 4000);
        exif.setRational(ExifDirectoryBase.TAG_FOCAL_PLANE_X_RESOLUTION, new Rational(perUnit, 1));
        exif.setRational(ExifDirectoryBase.TAG_FOCAL_PLANE_Y_RESOLUTION, new Rational(perUnit, 1));
        exif.setInt(ExifDirectoryBase.TAG_FOCAL_PLANE_RESOLUTION_UNIT, unit);
        assertThat(LensOfExif.focal35Mm(metadata()).orElseThrow()).isCloseTo(30, within(1e-9));
    }

    @Test
    void withoutTagsThereIsNone() {
        assertThat(LensOfExif.focal35Mm(metadata())).isEmpty();
        assertThat(LensOfExif.focal35Mm(new Metadata())).isEmpty();
    }
}
