package quarterlight.page.report.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.car.body.BodyStyle;
import quarterlight.photo.pixels.JpegWriter;
import quarterlight.rust.TestVisits;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.annotation.HiddenRegion;
import quarterlight.visit.annotation.NoteShape;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoNote;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.annotation.TraceKind;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.PhotoId;

class BuyerPicturesTest {
    private static final PhotoId PHOTO = new PhotoId(1);
    private static final Frame FRAME = new Frame(PHOTO, OptionalDouble.empty());
    /** Hidden on a photo of 1200 x 900: from 300, 300 to 600, 600. */
    private static final Outline SQUARE = new Outline(
            List.of(
                    new PixelPoint(300, 300),
                    new PixelPoint(600, 300),
                    new PixelPoint(600, 600),
                    new PixelPoint(300, 600)),
            List.of());

    private static VisitParts visit() {
        return new VisitParts(TestVisits.facts(BodyStyle.COUPE))
                .photos(List.of(TestVisits.photo(1, MediaKind.PHOTO, 1200, 900)));
    }

    private static VisitRecord hidden() {
        return visit().hidden(VisitParts.rows(List.of(new HiddenRegion(PHOTO, SQUARE, Optional.of("a plate")))))
                .record();
    }

    /** Grain by a seed; within the hidden square by another. */
    private static BufferedImage grain(int longSide, long seedInside) {
        BufferedImage image = new BufferedImage(longSide, longSide * 3 / 4, BufferedImage.TYPE_INT_RGB);
        Random outside = new Random(7);
        Random inside = new Random(seedInside);
        double scale = longSide / 1200.0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int common = outside.nextInt(0x1000000);
                boolean within = x >= 300 * scale && x < 600 * scale && y >= 300 * scale && y < 600 * scale;
                image.setRGB(x, y, within ? inside.nextInt(0x1000000) : common);
            }
        }
        return image;
    }

    private static BuyerPictures of(VisitRecord visit, long seedInside) {
        return new BuyerPictures(
                visit, (photo, at, longSide) -> Optional.of(grain(longSide, seedInside)), JpegWriter::jpeg);
    }

    private static byte[] thumbnail(long seedInside) {
        return of(hidden(), seedInside)
                .thumbnails(photo -> Optional.of(new byte[] {1}))
                .apply(PHOTO)
                .orElseThrow();
    }

    @Test
    void nothingOfAHiddenRegionIsInThePrintedPictureOrTheThumbnail() {
        for (long seed : new long[] {1, 2, 3}) {
            assertThat(of(hidden(), seed).print(FRAME).orElseThrow().jpeg())
                    .isEqualTo(of(hidden(), 99).print(FRAME).orElseThrow().jpeg());
            assertThat(thumbnail(seed)).isEqualTo(thumbnail(99));
        }
        assertThat(of(visit().record(), 1).print(FRAME).orElseThrow().jpeg())
                .as("without a region the pictures differ, so the comparison can fail")
                .isNotEqualTo(of(visit().record(), 2).print(FRAME).orElseThrow().jpeg());
    }

    @Test
    void aPhotoWithoutHiddenRegionsKeepsItsStoredThumbnail() {
        byte[] stored = {1, 2, 3};
        assertThat(of(visit().record(), 1)
                        .thumbnails(photo -> Optional.of(stored))
                        .apply(PHOTO))
                .contains(stored);
    }

    @Test
    void evenPureGrainStaysWithinTheBytesOfOnePhoto() {
        PrintedPicture picture = of(visit().record(), 1).print(FRAME).orElseThrow();
        assertThat(picture.jpeg().length).isLessThanOrEqualTo(250_000);
        assertThat(picture.width()).isEqualTo(PrintedPicture.LONG_SIDE_PX);
    }

    @Test
    void aNoteChangesThePictureWhereItPointsAndItsWordsAreSaid() throws IOException {
        PhotoNote note = new PhotoNote(
                PHOTO,
                Optional.empty(),
                NoteShape.BOX,
                List.of(new PixelPoint(700, 100), new PixelPoint(1100, 400)),
                Optional.of("weld beads"),
                Optional.empty());
        BuyerPictures pictures = new BuyerPictures(
                visit().photoNotes(VisitParts.rows(List.of(note))).record(),
                (photo, at, longSide) ->
                        Optional.of(new BufferedImage(longSide, longSide * 3 / 4, BufferedImage.TYPE_INT_RGB)),
                JpegWriter::jpeg);
        BufferedImage drawn = ImageIO.read(
                new ByteArrayInputStream(pictures.print(FRAME).orElseThrow().jpeg()));
        double scale = PrintedPicture.LONG_SIDE_PX / 1200.0;
        assertThat(drawn.getRGB((int) (700 * scale), (int) (250 * scale)) & 0xFF)
                .as("on the left side of the box")
                .isGreaterThan(60);
        assertThat(drawn.getRGB((int) (125 * scale), (int) (750 * scale)) & 0xFF)
                .as("far from it")
                .isLessThan(20);
        assertThat(pictures.words(FRAME)).containsExactly("weld beads");
    }

    @Test
    void wordsAndScaleOfAPrintedPictureCanBeReadAtHalfTheWidthOfA4() throws IOException {
        PhotoNote words = new PhotoNote(
                PHOTO,
                Optional.empty(),
                NoteShape.TEXT,
                List.of(new PixelPoint(100, 100)),
                Optional.of("weld beads"),
                Optional.empty());
        PhotoScale ruler = new PhotoScale.KnownLength(new PixelPoint(700, 800), new PixelPoint(1100, 800), 50);
        Trace hole =
                new Trace(PHOTO, TraceKind.HOLE, SQUARE, ruler, new ZoneId("hood"), Optional.empty(), Optional.empty());
        BuyerPictures pictures = new BuyerPictures(
                visit().photoNotes(VisitParts.rows(List.of(words)))
                        .traces(VisitParts.rows(List.of(hole)))
                        .record(),
                (photo, at, longSide) ->
                        Optional.of(new BufferedImage(longSide, longSide * 3 / 4, BufferedImage.TYPE_INT_RGB)),
                JpegWriter::jpeg);
        BufferedImage printed = ImageIO.read(
                new ByteArrayInputStream(pictures.print(FRAME).orElseThrow().jpeg()));
        double leastPt = 6.5;
        assertThat(platePt(printed)).as("letters with their plate").isBetween(1.5 * leastPt, 3 * leastPt);
        assertThat(platePt(pictures.picture(PHOTO, PrintedPicture.LONG_SIDE_PX).orElseThrow()))
                .as("as drawn for a screen")
                .isLessThan(1.5 * leastPt);
        assertThat(printed.getRGB(720, 640) & 0xFF).as("on the ruler").isGreaterThan(60);
        assertThat(pictures.words(FRAME)).containsExactly("Outlined: hole", "weld beads", "scale: 50\u2009mm");
        double part = 500;
        BufferedImage close = ImageIO.read(new ByteArrayInputStream(
                pictures.close(FRAME, 650, 600, part, 300).orElseThrow().jpeg()));
        assertThat(close.getRGB(close.getWidth() / 2, close.getHeight() * 2 / 3) & 0xFF)
                .as("a scale within the part")
                .isGreaterThan(60);
        BufferedImage beside = ImageIO.read(new ByteArrayInputStream(
                pictures.close(FRAME, 750, 600, 400, 300).orElseThrow().jpeg()));
        assertThat(beside.getRGB(beside.getWidth() / 3, beside.getHeight() * 2 / 3) & 0xFF)
                .as("a scale that is cut off measures nothing")
                .isLessThan(30);
    }

    /** How high the white plate at the note is, at half the width of A4 less its margins. */
    private static double platePt(BufferedImage picture) {
        int x = (int) (110.0 / 1200 * picture.getWidth());
        long white = IntStream.range(0, picture.getHeight() / 3)
                .filter(y -> (picture.getRGB(x, y) & 0xFF) > 128)
                .count();
        return white * 91 / 25.4 * 72 / picture.getWidth();
    }
}
