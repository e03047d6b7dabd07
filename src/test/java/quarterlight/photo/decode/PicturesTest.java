package quarterlight.photo.decode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.photo.MediaType;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.RealPhotos;
import quarterlight.photo.SamplePictures;
import quarterlight.photo.film.FilmFrames;
import quarterlight.photo.header.FileFacts;
import quarterlight.photo.header.MetadataReader;
import quarterlight.photo.pixels.JpegWriter;
import quarterlight.photo.pixels.PictureMeasures;
import quarterlight.photo.pixels.Thumbnail;

class PicturesTest {
    @TempDir
    Path folder;

    private final Pictures pictures = Pictures.usual();

    @Test
    void aPictureIsReducedAndTurned() throws IOException, PictureUnreadable {
        Path file = Files.write(folder.resolve("a.jpg"), SamplePictures.jpeg(1600, 1200, 3));
        BufferedImage upright = pictures.upright(file, MediaType.JPEG, 6, Pictures.THUMBNAIL);
        assertThat(upright.getWidth()).isEqualTo(240);
        assertThat(upright.getHeight()).isEqualTo(320);
        assertThat(upright.getType()).isEqualTo(BufferedImage.TYPE_INT_RGB);
        BufferedImage small = pictures.upright(file, MediaType.JPEG, 1, 5000);
        assertThat(small.getWidth()).isEqualTo(1600);
    }

    @Test
    void pngAndTiffAreReadToo() throws IOException, PictureUnreadable {
        BufferedImage drawn = SamplePictures.drawn(400, 300, 2);
        for (MediaType type : List.of(MediaType.PNG, MediaType.TIFF)) {
            Path file = folder.resolve("a." + type.word());
            ImageIO.write(drawn, type.word(), file.toFile());
            assertThat(pictures.upright(file, type, 1, 400).getRGB(200, 150)).isEqualTo(drawn.getRGB(200, 150));
        }
    }

    @Test
    void aThumbnailIsPlainAndCarriesNoProfile() {
        byte[] jpeg = Thumbnail.of(SamplePictures.drawn(320, 240, 1)).jpeg();
        String text = new String(jpeg, StandardCharsets.ISO_8859_1);
        assertThat(text).doesNotContain("ICC_PROFILE").contains("JFIF");
        assertThat(jpeg.length).isLessThan(40_000);
    }

    /** Read back by the platform's own reader: right way round, colors in their places, whoever wrote it. */
    @Test
    void aWrittenJpegIsTheSamePicture() throws IOException {
        BufferedImage drawn = new BufferedImage(101, 67, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < 67; y++) {
            for (int x = 0; x < 101; x++) {
                drawn.setRGB(x, y, 2 * x << 16 | 3 * y << 8 | 255 - x - y);
            }
        }
        for (byte[] jpeg : List.of(JpegWriter.jpeg(drawn, 85), JpegWriter.byPlatform(drawn, 85))) {
            BufferedImage read = ImageIO.read(new ByteArrayInputStream(jpeg));
            assertThat(read.getWidth()).isEqualTo(101);
            assertThat(read.getHeight()).isEqualTo(67);
            for (int y = 0; y < 67; y++) {
                for (int x = 0; x < 101; x++) {
                    for (int shift = 0; shift <= 16; shift += 8) {
                        int difference = (read.getRGB(x, y) >> shift & 255) - (drawn.getRGB(x, y) >> shift & 255);
                        assertThat(Math.abs(difference)).as("%d, %d", x, y).isLessThan(16);
                    }
                }
            }
        }
    }

    @Test
    void aBlurredPictureScoresLowerThanTheSameSharp() {
        BufferedImage sharp = SamplePictures.drawn(1280, 960, 4);
        BufferedImage soft = new BufferedImage(1280, 960, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = soft.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        g.drawImage(Pictures.fitted(sharp, 64), 0, 0, 1280, 960, null);
        g.dispose();
        assertThat(PictureMeasures.sharpness(soft)).isLessThan(PictureMeasures.sharpness(sharp) / 10);
        assertThat(PictureMeasures.hash(soft).distance(PictureMeasures.hash(sharp)))
                .isLessThanOrEqualTo(10);
    }

    @Test
    void aHeaderThatClaimsTooMuchIsRefusedBeforeMemoryIsAskedFor() throws IOException {
        byte[] jpeg = SamplePictures.jpeg(64, 48, 1);
        int frame = frame(jpeg);
        for (int claim : List.of(60_000, 12_000)) {
            for (int side = 0; side < 2; side++) {
                jpeg[frame + 5 + 2 * side] = (byte) (claim >> 8);
                jpeg[frame + 6 + 2 * side] = (byte) claim;
            }
            Path file = Files.write(folder.resolve("huge.jpg"), jpeg);
            assertThatThrownBy(() -> pictures.upright(file, MediaType.JPEG, 1, 320))
                    .isInstanceOfSatisfying(PictureUnreadable.class, e -> assertThat(e.reason())
                            .contains("claims " + claim + " x " + claim));
        }
    }

    @Test
    void everySampleIsShownOrSaysWhyNot() throws IOException {
        List<String> shown = new ArrayList<>();
        List<String> not = new ArrayList<>();
        MetadataReader reader = new MetadataReader(Clock.systemUTC());
        for (CSVRecord row : RealPhotos.expected()) {
            Path file = RealPhotos.folder().resolve(row.get("path"));
            MediaType type = MediaType.of(Files.readAllBytes(file)).orElse(MediaType.JPEG);
            try {
                FileFacts facts = reader.read(file, type);
                BufferedImage picture =
                        pictures.upright(file, type, facts.header().orientation(), 320);
                assertThat(Math.max(picture.getWidth(), picture.getHeight())).isLessThanOrEqualTo(320);
                double wide = (double) facts.header().width().orElseThrow()
                        / facts.header().height().orElseThrow();
                assertThat((double) picture.getWidth() / picture.getHeight())
                        .as(row.get("path"))
                        .isBetween(wide * 0.97, wide * 1.03);
                shown.add(row.get("path"));
            } catch (PictureUnreadable e) {
                assertThat(e.reason()).isNotBlank();
                not.add(file.getFileName() + ": " + e.reason());
            }
        }
        assertThat(shown).as("not shown: %s", not).hasSizeGreaterThanOrEqualTo(FilmFrames.available() ? 119 : 97);
    }

    private static int frame(byte[] jpeg) {
        for (int i = 0; i < jpeg.length; i++) {
            if ((jpeg[i] & 0xFF) == 0xFF && (jpeg[i + 1] & 0xFF) == 0xC0) {
                return i;
            }
        }
        throw new AssertionError("no frame");
    }
}
