package quarterlight.page.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.marks.TimeLine;
import quarterlight.marks.TimeLine.Row;
import quarterlight.marks.code.DateCandidate;
import quarterlight.marks.judge.BuildWindow;
import quarterlight.marks.judge.Verdict;

class TimeLineDrawingTest {
    private static final int FRAME = 12;
    private static final TextMeasure MEASURE = TextMeasure.bundled();

    private static DateCandidate day(int year, int month, int day) {
        LocalDate date = LocalDate.of(year, month, day);
        return new DateCandidate(date, date, "test");
    }

    private static final TimeLine LINE = new TimeLine(
            LocalDate.of(1969, 6, 1),
            LocalDate.of(1973, 9, 30),
            Optional.of(new BuildWindow(LocalDate.of(1971, 3, 1), LocalDate.of(1971, 3, 31))),
            List.of(
                    new Row("Rear axle", "325K9", "cast", List.of(day(1969, 11, 21)), 3, Verdict.UNUSUALLY_EARLY, true),
                    new Row("Engine block", "049K1", "cast", List.of(day(1971, 2, 18)), 11, Verdict.FITS, false),
                    new Row(
                            "A part whose name is much too long for any column that it could stand in",
                            "WITH A LONG TEXT TOO 123456789",
                            "cast",
                            List.of(day(1971, 3, 4), day(1972, 3, 4)),
                            0,
                            Verdict.FITS,
                            false),
                    new Row("Tire", "2319", "tire", List.of(day(2019, 6, 9)), 0, Verdict.TOO_LATE, false)),
            List.of());

    private static BufferedImage painted(InkPalette palette, double width, TimeLine line) {
        TimeLineDrawing drawing = new TimeLineDrawing(line, palette, MEASURE, width);
        BufferedImage image = new BufferedImage(
                (int) width + 2 * FRAME, (int) Math.ceil(drawing.heightPx()) + 2 * FRAME, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(palette.ground());
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.translate(FRAME, FRAME);
        drawing.draw(g);
        g.dispose();
        return image;
    }

    @ParameterizedTest
    @ValueSource(ints = {300, 500, 700, 900})
    void nothingIsDrawnOutsideItsSize(int width) {
        BufferedImage image = painted(InkPalette.LIGHT, width, LINE);
        int ground = InkPalette.LIGHT.ground().getRGB();
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                boolean frame = x < FRAME - 2
                        || y < FRAME - 2
                        || x >= image.getWidth() - FRAME + 2
                        || y >= image.getHeight() - FRAME + 2;
                if (frame) {
                    assertThat(image.getRGB(x, y)).as("%d, %d", x, y).isEqualTo(ground);
                }
            }
        }
    }

    /** A bar stands where its day lies between the first and the last day of the line. */
    @Test
    void theBarStandsAtItsDay() {
        BufferedImage image = painted(InkPalette.LIGHT, 900, LINE);
        double left = Math.min(260, 900 * 0.34);
        double days = LINE.last().toEpochDay() - LINE.first().toEpochDay() + 1;
        double x = left
                + (900 - left)
                        * (LocalDate.of(1971, 2, 18).toEpochDay() - LINE.first().toEpochDay())
                        / days;
        int middle = (int) (26 + 24 * 1.5);
        int ink = new Color(image.getRGB(FRAME + (int) (x + 2), FRAME + middle)).getRed();
        int beside = new Color(image.getRGB(FRAME + (int) (x - 4), FRAME + middle)).getRed();
        assertThat(ink).isLessThan(80);
        assertThat(beside).isGreaterThan(ink + 60);
    }

    @Test
    void theDarkGroundHasItsOwnInk() {
        BufferedImage dark = painted(InkPalette.DARK, 700, LINE);
        int bright = 0;
        for (int y = 0; y < dark.getHeight(); y++) {
            for (int x = 0; x < dark.getWidth(); x++) {
                bright += new Color(dark.getRGB(x, y)).getGreen() > 200 ? 1 : 0;
            }
        }
        assertThat(bright).isGreaterThan(500);
    }

    @Test
    void withoutABuildWindowThereIsNoBandAndTheRowsStand() {
        TimeLine bare = new TimeLine(LINE.first(), LINE.last(), Optional.empty(), LINE.rows(), List.of());
        BufferedImage with = painted(InkPalette.LIGHT, 700, LINE);
        BufferedImage without = painted(InkPalette.LIGHT, 700, bare);
        assertThat(accent(with)).isGreaterThan(100);
        assertThat(accent(without)).isZero();
    }

    private static long accent(BufferedImage image) {
        int wanted = InkPalette.LIGHT.accent().getRGB();
        long found = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                found += image.getRGB(x, y) == wanted ? 1 : 0;
            }
        }
        return found;
    }

    @Test
    void theElementIsXmlAndSaysPartsDatesVerdictsAndBuild() throws Exception {
        String svg =
                TimeLineSvg.element(new TimeLineDrawing(LINE, InkPalette.LIGHT, MEASURE, 700), "Time line of <a> car");
        Document document =
                DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
        assertThat(document.getDocumentElement().getTextContent())
                .contains("Time line of <a> car", "Rear axle", "325K9", "Nov 21, 1969, unusually early")
                .contains("too late", "built Mar 1971", "1972");
        assertThat(svg).contains("font-family:'Source Sans 3'").doesNotContain("SemiBold", "<!--");
    }
}
