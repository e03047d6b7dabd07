package quarterlight.photo.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.photo.MediaType;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.RealPhotos;
import quarterlight.photo.decode.Pictures;
import quarterlight.photo.film.FilmFrames;

/** The eight orientation samples of two public sets, each stored turned another way, look the same upright. */
class OrientationReferenceTest {
    private final Pictures pictures = Pictures.usual();
    private final MetadataReader reader = new MetadataReader(Clock.systemUTC());

    @ParameterizedTest
    @ValueSource(strings = {"cameras/f%dt.jpg", "cameras/landscape_%d.jpg"})
    void allEightLookTheSameUpright(String pattern) throws IOException, PictureUnreadable {
        BufferedImage first = upright(String.format(pattern, 1));
        for (int orientation = 2; orientation <= 8; orientation++) {
            BufferedImage other = upright(String.format(pattern, orientation));
            assertThat(other.getWidth()).isEqualTo(first.getWidth());
            assertThat(other.getHeight()).isEqualTo(first.getHeight());
            assertThat(meanDifference(first, other))
                    .as("orientation %d of %s, mean difference of 255", orientation, pattern)
                    .isLessThan(6.0);
        }
    }

    @Test
    void aWrongTurnWouldBeSeen() throws IOException, PictureUnreadable {
        BufferedImage first = upright("cameras/landscape_1.jpg");
        assertThat(meanDifference(first, Orientation.of(3).turned(first))).isGreaterThan(20.0);
        assertThat(meanDifference(first, Orientation.of(2).turned(first))).isGreaterThan(20.0);
    }

    /** Row 0 and column 0 of a stored picture of 3 x 2 pixels, as the Exif text says where they lie. */
    @ParameterizedTest
    @CsvSource({
        "1, abc/def",
        "2, cba/fed",
        "3, fed/cba",
        "4, def/abc",
        "5, ad/be/cf",
        "6, da/eb/fc",
        "7, fc/eb/da",
        "8, cf/be/ad",
        "9, abc/def",
        "0, abc/def"
    })
    void turnsAsTheExifTextSays(int orientation, String shown) {
        assertThat(letters(Orientation.of(orientation))).isEqualTo(shown);
    }

    private static String letters(Orientation orientation) {
        BufferedImage stored = new BufferedImage(3, 2, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < 6; i++) {
            stored.setRGB(i % 3, i / 3, 'a' + i);
        }
        BufferedImage upright = orientation.turned(stored);
        StringBuilder text = new StringBuilder();
        for (int y = 0; y < upright.getHeight(); y++) {
            text.append(y == 0 ? "" : "/");
            for (int x = 0; x < upright.getWidth(); x++) {
                text.append((char) (upright.getRGB(x, y) & 0xFF));
            }
        }
        return text.toString();
    }

    /** The track matrix of ISO/IEC 14496-12, and irot (quarter turns counterclockwise), imir of ISO/IEC 23008-12, on the same 3 x 2 pixels. */
    @ParameterizedTest
    @CsvSource({
        "1 0 0 1, abc/def",
        "0 1 -1 0, da/eb/fc",
        "-1 0 0 -1, fed/cba",
        "0 -1 1 0, cf/be/ad",
        "-1 0 0 1, cba/fed",
        "1 0 0 -1, def/abc"
    })
    void filmsTurnAsTheirMatrixSays(String matrix, String shown) {
        int[] n = Stream.of(matrix.split(" ")).mapToInt(Integer::parseInt).toArray();
        assertThat(letters(Orientation.ofMatrix(n[0], n[1], n[2], n[3]))).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({
        "0, -1, abc/def",
        "1, -1, cf/be/ad",
        "2, -1, fed/cba",
        "3, -1, da/eb/fc",
        "0, 0, cba/fed",
        "0, 1, def/abc",
        "1, 0, fc/eb/da",
        "3, 0, ad/be/cf"
    })
    void containersTurnAsTheySay(int quarterTurns, int mirror, String shown) {
        assertThat(letters(Orientation.ofHeif(quarterTurns, mirror))).isEqualTo(shown);
    }

    /** A flower low in the picture, told by its color: more blue than green in the lower half. */
    @Test
    void aHeicOfAPhoneHeldUprightStandsUpright() throws IOException, PictureUnreadable {
        Assumptions.assumeTrue(FilmFrames.available(), "built without native parts");
        Path file = RealPhotos.folder().resolve("cameras/IMG_5195.HEIC");
        FileFacts facts = reader.read(file, MediaType.HEIC);
        BufferedImage picture =
                pictures.upright(file, MediaType.HEIC, facts.header().orientation(), 320);
        assertThat(picture.getHeight()).isEqualTo(320);
        long[] violet = new long[2];
        for (int y = 0; y < 320; y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                int rgb = picture.getRGB(x, y);
                violet[y / 160] += (rgb & 255) > (rgb >> 8 & 255) + 40 ? 1 : 0;
            }
        }
        assertThat(violet[1]).isGreaterThan(10 * violet[0]).isGreaterThan(2000);
    }

    private BufferedImage upright(String name) throws IOException, PictureUnreadable {
        Path file = RealPhotos.folder().resolve(name);
        FileFacts facts = reader.read(file, MediaType.JPEG);
        return Pictures.fitted(
                pictures.upright(file, MediaType.JPEG, facts.header().orientation(), 600), 60);
    }

    private static double meanDifference(BufferedImage a, BufferedImage b) {
        long sum = 0;
        for (int y = 0; y < a.getHeight(); y++) {
            for (int x = 0; x < a.getWidth(); x++) {
                for (int shift = 0; shift <= 16; shift += 8) {
                    sum += Math.abs((a.getRGB(x, y) >> shift & 255) - (b.getRGB(x, y) >> shift & 255));
                }
            }
        }
        return sum / (3.0 * a.getWidth() * a.getHeight());
    }
}
