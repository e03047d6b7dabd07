package quarterlight.page.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.language.Language;
import quarterlight.rust.plane.MarkedLength;
import quarterlight.visit.annotation.NoteShape;
import quarterlight.visit.annotation.PhotoNote;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.photo.PhotoId;

class PhotoNotePainterTest {
    private static final int WIDTH = 900;
    private static final int HEIGHT = 600;
    private static final NoteInk INK = NoteInk.ofPages();
    private static final PhotoScale RULER =
            new PhotoScale.KnownLength(new PixelPoint(100, 500), new PixelPoint(600, 500), 250);

    private static PhotoNote note(NoteShape shape, Optional<String> text, double... xy) {
        List<PixelPoint> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new PixelPoint(xy[i], xy[i + 1]));
        }
        return new PhotoNote(
                new PhotoId(1),
                Optional.empty(),
                shape,
                points,
                text,
                shape == NoteShape.MEASURE ? Optional.of(RULER) : Optional.empty());
    }

    /** A photo of one color with the notes, shown at a scale. */
    private static BufferedImage painted(Color photo, double scale, List<PhotoNote> notes) {
        BufferedImage image = new BufferedImage(
                (int) Math.round(WIDTH * scale), (int) Math.round(HEIGHT * scale), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(photo);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.scale(scale, scale);
        new PhotoNotePainter(INK).paint(g, notes, WIDTH, HEIGHT, PhotoNotePainter.usualUnit(WIDTH, HEIGHT));
        g.dispose();
        return image;
    }

    /** The rectangle round all pixels that differ from the photo's color; empty if none do. */
    private static Rectangle changed(BufferedImage image, Color photo) {
        Rectangle found = new Rectangle(-1, -1);
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                if (image.getRGB(x, y) != photo.getRGB()) {
                    found.add(new Rectangle(x, y, 1, 1));
                }
            }
        }
        return found;
    }

    private static double contrast(Color a, Color b) {
        double la = luminance(a);
        double lb = luminance(b);
        return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
    }

    /** Relative luminance, WCAG 2.1. */
    private static double luminance(Color color) {
        double[] linear = new double[3];
        int[] srgb = {color.getRed(), color.getGreen(), color.getBlue()};
        for (int i = 0; i < 3; i++) {
            double c = srgb[i] / 255.0;
            linear[i] = c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
        }
        return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2];
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.25, 1, 2.5})
    void anArrowRunsFromItsTailToWhatItPointsAtUnderAnyScale(double scale) {
        Color photo = new Color(0x556677);
        BufferedImage image =
                painted(photo, scale, List.of(note(NoteShape.ARROW, Optional.empty(), 200, 450, 500, 150)));
        Rectangle changed = changed(image, photo);
        assertThat(changed.getMinX() / scale).isCloseTo(200, within(4.0 + 1 / scale));
        assertThat(changed.getMaxX() / scale).isCloseTo(500, within(4.0 + 1 / scale));
        assertThat(changed.getMinY() / scale).isCloseTo(150, within(4.0 + 1 / scale));
        assertThat(changed.getMaxY() / scale).isCloseTo(450, within(4.0 + 1 / scale));
        assertThat(image.getRGB((int) (300 * scale), (int) (350 * scale))).isNotEqualTo(photo.getRGB());
        assertThat(near(image, 497 * scale, 153 * scale, INK.line()))
                .as("the head")
                .isTrue();
        assertThat(image.getRGB((int) (250 * scale), (int) (200 * scale))).isEqualTo(photo.getRGB());
    }

    private static boolean near(BufferedImage image, double x, double y, Color color) {
        for (int dy = -2; dy <= 2; dy++) {
            for (int dx = -2; dx <= 2; dx++) {
                Color found = new Color(image.getRGB((int) x + dx, (int) y + dy));
                if (contrast(found, color) < 1.3) {
                    return true;
                }
            }
        }
        return false;
    }

    @ParameterizedTest
    @CsvSource({"0x000000", "0xFFFFFF", "0x0B6472", "0x808080", "0x9B1C31", "0xCFC9BD"})
    void aStrokeStandsOutFromAnyPhotoByItselfOrByItsHalo(String rgb) {
        Color photo = Color.decode(rgb);
        BufferedImage image = painted(photo, 1, List.of(note(NoteShape.BOX, Optional.empty(), 300, 200, 600, 400)));
        double best = 1;
        for (int x = 280; x < 320; x++) {
            best = Math.max(best, contrast(photo, new Color(image.getRGB(x, 300))));
        }
        assertThat(best).isGreaterThan(3);
        assertThat(contrast(INK.line(), INK.halo())).isGreaterThan(4.5);
        assertThat(contrast(INK.text(), INK.plate())).isGreaterThan(4.5);
        assertThat(image.getRGB(450, 300)).as("within the box the photo stays").isEqualTo(photo.getRGB());
    }

    @ParameterizedTest
    @CsvSource({"10, 10", "895, 10", "895, 595", "5, 595", "450, 300"})
    void wordsStandOnAPlateWithinThePhoto(double x, double y) {
        Color photo = Color.RED;
        BufferedImage image =
                painted(photo, 1, List.of(note(NoteShape.TEXT, Optional.of("overspray on the seal"), x, y)));
        Rectangle changed = changed(image, photo);
        assertThat(changed.width).as("upright: wider than high").isGreaterThan(3 * changed.height);
        assertThat(changed.width).isLessThan((int) (0.46 * WIDTH));
        assertThat(changed.getMinX()).isBetween(0.0, Math.max(1, x + 1));
        assertThat(changed.getMinY()).isBetween(0.0, Math.max(1, y + 1));
        assertThat(near(image, changed.getCenterX(), changed.getMaxY() - 2, INK.plate()))
                .isTrue();
        assertThat(letters(image, changed))
                .as("dark letters on the plate")
                .isBetween(100, changed.width * changed.height / 2);
    }

    private static int letters(BufferedImage image, Rectangle plate) {
        int dark = 0;
        for (int y = plate.y; y < plate.y + plate.height; y++) {
            for (int x = plate.x; x < plate.x + plate.width; x++) {
                dark += contrast(new Color(image.getRGB(x, y)), INK.text()) < 1.5 ? 1 : 0;
            }
        }
        return dark;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a\nb\n\nc",
                " ",
                "\u0000\u0007\t",
                "塗装 \uD83D\uDE97 שלום مرحبا",
                "an-unbroken-word-that-goes-on-and-on-and-on-and-on-and-on-and-on-and-on-and-on-and-on-and-on"
            })
    void anyWordsAreDrawnWithinThePhoto(String words) {
        for (NoteShape shape : List.of(NoteShape.TEXT, NoteShape.ARROW, NoteShape.BOX, NoteShape.MEASURE)) {
            double[] xy = shape == NoteShape.TEXT ? new double[] {880, 590} : new double[] {880, 590, 700, 400};
            Rectangle changed = changed(painted(Color.RED, 1, List.of(note(shape, Optional.of(words), xy))), Color.RED);
            assertThat(new Rectangle(WIDTH, HEIGHT).contains(changed) || words.isBlank())
                    .isTrue();
        }
        String essay = (words + " and so on ").repeat(60);
        BufferedImage image = painted(Color.RED, 1, List.of(note(NoteShape.TEXT, Optional.of(essay), 400, 300)));
        assertThat(changed(image, Color.RED).width).isPositive();
    }

    @Test
    void plateOfSeveralNotesDoNotLieOnOneAnother() {
        List<PhotoNote> alone = List.of(note(NoteShape.ARROW, Optional.of("first words"), 300, 300, 500, 100));
        List<PhotoNote> both = new ArrayList<>(alone);
        both.add(note(NoteShape.ARROW, Optional.of("other words"), 300, 300, 520, 120));
        int one = count(painted(Color.RED, 1, alone), INK.plate());
        int two = count(painted(Color.RED, 1, both), INK.plate());
        assertThat(two).isGreaterThan((int) (1.6 * one));
    }

    private static int count(BufferedImage image, Color color) {
        int found = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                found += image.getRGB(x, y) == color.getRGB() ? 1 : 0;
            }
        }
        return found;
    }

    @Test
    void theGraphicsComesBackAsItWas() {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        var before = List.of(g.getTransform(), g.getColor(), g.getStroke(), g.getRenderingHints());
        new PhotoNotePainter(INK).paint(g, List.of(note(NoteShape.TEXT, Optional.of("x"), 5, 5)), WIDTH, HEIGHT, 1);
        assertThat(List.of(g.getTransform(), g.getColor(), g.getStroke(), g.getRenderingHints()))
                .isEqualTo(before);
        assertThat(g.getClip()).isNull();
    }

    @Test
    void whatAScaleWasTakenFromIsDrawnWithItsKnownSize() {
        PhotoScale card = new PhotoScale.KnownRectangle(
                List.of(
                        new PixelPoint(100, 100),
                        new PixelPoint(400, 100),
                        new PixelPoint(400, 290),
                        new PixelPoint(100, 290)),
                85.6,
                54);
        BufferedImage image = shown(List.of(), List.of(RULER, card), new Rectangle(0, 0, WIDTH, HEIGHT));
        int line = InkPalette.LIGHT.accent().getRGB();
        assertThat(image.getRGB(300, 500)).as("on the ruler").isEqualTo(line);
        assertThat(image.getRGB(400, 200)).as("on a side of the card").isEqualTo(line);
        assertThat(image.getRGB(800, 300)).as("beside both").isEqualTo(Color.BLACK.getRGB());
        assertThat(PhotoNotePainter.wordsOf(RULER)).isEqualTo("scale: 250\u2009mm");
        assertThat(PhotoNotePainter.wordsOf(card)).isEqualTo("scale: 85.6\u2009mm \u00d7 54\u2009mm");
        assertThat(PhotoNotePainter.wordsOf(new PhotoScale.Coin(
                        List.of(
                                new PixelPoint(0, 5),
                                new PixelPoint(5, 0),
                                new PixelPoint(10, 5),
                                new PixelPoint(8, 8),
                                new PixelPoint(5, 10)),
                        24.26)))
                .isEqualTo("scale: 24.3\u2009mm across");
    }

    @Test
    void noWordLeavesThePartThatIsShown() {
        Rectangle part = new Rectangle(400, 300, 200, 150);
        PhotoNote beyond = note(NoteShape.TEXT, Optional.of("weld beads"), 580, 440);
        Rectangle found = changed(shown(List.of(beyond), List.of(), part), Color.BLACK);
        assertThat(part.contains(found)).as("%s within %s", found, part).isTrue();
        assertThat(found.width).as("the words are whole").isGreaterThan(60);
    }

    private static BufferedImage shown(List<PhotoNote> notes, List<PhotoScale> scales, Rectangle part) {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        new PhotoNotePainter(INK).paint(g, notes, scales, part, 1);
        g.dispose();
        return image;
    }

    /** 500 pixels are 250 mm, so 486 pixels are 243; the spread (marks, and the slope of the panel between ruler and line, 400 pixels apart) is worked out by hand. */
    @Test
    void aMeasuringLineSaysItsLengthAndHowFarTheMarksLeaveItOpen() {
        PhotoNote line = note(NoteShape.MEASURE, Optional.empty(), 100, 100, 586, 100);
        double ends = 0.5 * 1.5 * Math.sqrt(2);
        double scale = 243.0 / 500 * 1.5 * Math.sqrt(2);
        double slope = 243 * 2.0 / 3 * 1.06 * Math.hypot(7, 400) / (0.8 * 3000);
        double sd = Math.hypot(Math.hypot(ends, scale), slope);
        MarkedLength length = MarkedLength.of(
                        line.points().get(0), line.points().get(1), RULER, 1.5)
                .orElseThrow();
        assertThat(length.mm()).isCloseTo(243, within(1e-9));
        assertThat(length.sdMm()).isCloseTo(sd, within(1e-6));
        assertThat(2 * sd).isBetween(50.0, 60.0);
        assertThat(PhotoNotePainter.lengthOf(line)).isEqualTo("240\u2009mm ± 60");
        assertThat(PhotoNotePainter.lengthOf(note(NoteShape.MEASURE, Optional.of("gap"), 100, 100, 586, 100)))
                .isEqualTo("gap: 240\u2009mm ± 60");
    }

    @ParameterizedTest
    @CsvSource({
        "243.2, 0.95, 243.2 mm ± 1.9",
        "243.2, 0.5, 243.2 mm ± 1.0",
        "243.2, 0.001, 243.2 mm ± 0.1",
        "243.2, 0, 243.2 mm ± 0.0",
        "1243.2, 12, 1240 mm ± 30",
        "1243.2, 7, 1243 mm ± 14",
        "3.26, 0.16, 3.3 mm ± 0.4",
        "8, 60, 10 mm ± 120",
        "1, Infinity, length not known"
    })
    void theSpreadIsRoundedUpAndTheLengthToTheSamePlace(double mm, double sdMm, String text) {
        assertThat(LengthText.of(new MarkedLength(mm, sdMm)).replace('\u2009', ' '))
                .isEqualTo(text);
    }

    @Test
    void aLengthHasTheDecimalSignOfItsLanguage() throws Exception {
        assertThat(Language.GERMAN.during(() -> LengthText.of(new MarkedLength(243.2, 0.95))))
                .isEqualTo("243,2\u2009mm ± 1,9");
        assertThat(Language.GERMAN.during(() -> LengthText.of(new MarkedLength(1, Double.POSITIVE_INFINITY))))
                .doesNotContain("known");
    }
}
