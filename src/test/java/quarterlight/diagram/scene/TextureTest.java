package quarterlight.diagram.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import quarterlight.diagram.ink.ZoneLook;

class TextureTest {
    /** A square of 200 px with a square hole of 100 px. */
    private static Shape frame() {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        path.append(new Rectangle2D.Double(0, 0, 200, 200), false);
        path.append(new Rectangle2D.Double(50, 50, 100, 100), false);
        return path;
    }

    /** Share of black in a picture of 200 x 200 px. */
    private static double darkness(Consumer<Graphics2D> drawing) {
        BufferedImage image = new BufferedImage(200, 200, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, 200, 200);
        g.setColor(Color.BLACK);
        drawing.accept(g);
        g.dispose();
        double sum = 0;
        for (int i = 0; i < 200 * 200; i++) {
            sum += 255 - image.getRaster().getSample(i % 200, i / 200, 0);
        }
        return sum / (255.0 * 200 * 200);
    }

    @Test
    void hatchingHasTheLengthThatSpacingAndAreaGive() {
        double length = 0;
        double[] c = new double[6];
        double x = 0;
        double y = 0;
        for (PathIterator it = Texture.hatch(frame(), 4).getPathIterator(null); !it.isDone(); it.next()) {
            if (it.currentSegment(c) == PathIterator.SEG_LINETO) {
                assertThat(Math.abs((c[1] - y) / (c[0] - x))).isCloseTo(1, within(1e-6));
                length += Math.hypot(c[0] - x, c[1] - y);
            }
            x = c[0];
            y = c[1];
        }
        // lines 3.6 px apart over 200 x 200 - 100 x 100 px
        assertThat(length).isCloseTo(30_000 / 3.6, within(0.02 * 30_000 / 3.6));
    }

    @Test
    void texturesStayInsideTheShape() {
        Shape disc = new Ellipse2D.Double(20.3, 30.7, 140, 90);
        for (int density = 1; density <= 5; density++) {
            Area outside = new Area(Texture.path(new DrawnItem.Dots(Texture.stipple(disc, density), Color.BLACK)));
            outside.subtract(new Area(new Ellipse2D.Double(19.3, 29.7, 142, 92)));
            assertThat(outside.isEmpty()).as("stipple %d", density).isTrue();
        }
        Rectangle2D hatch = Texture.hatch(disc, 4).getBounds2D();
        assertThat(new Rectangle2D.Double(20, 30.4, 140.6, 90.6).contains(hatch))
                .isTrue();
    }

    @Test
    void darknessRisesWithDensityAndLevelsCanBeToldApartInBlackAndWhite() {
        double before = 0;
        for (int density = 0; density <= ZoneLook.MAX_HATCH; density++) {
            Shape lines = Texture.hatch(new Rectangle2D.Double(0, 0, 200, 200), density);
            double dark = darkness(g -> {
                g.setStroke(new BasicStroke((float) Texture.LINE));
                g.draw(lines);
            });
            assertThat(dark).as("hatching %d", density).isGreaterThanOrEqualTo(density == 0 ? 0 : 1.3 * before);
            assertThat(dark).isLessThan(0.35);
            before = dark + (density == 0 ? 1e-9 : 0);
        }
        before = 0;
        for (int density = 0; density <= ZoneLook.MAX_STIPPLE; density++) {
            Shape dots = Texture.path(
                    new DrawnItem.Dots(Texture.stipple(new Rectangle2D.Double(0, 0, 200, 200), density), Color.BLACK));
            double dark = darkness(g -> g.fill(dots));
            assertThat(dark).as("stipple %d", density).isGreaterThanOrEqualTo(density == 0 ? 0 : 1.3 * before);
            before = dark + (density == 0 ? 1e-9 : 0);
        }
    }

    /** Complete, in part and missing differ by a third of the ink or more; holes are darker than the densest stipple of rust seen from afar. */
    @Test
    void coverageAndHolesAreToldApartWithoutColor() {
        Rectangle2D square = new Rectangle2D.Double(0, 0, 200, 200);
        double bands = darkness(g -> {
            g.setStroke(new BasicStroke((float) Texture.BAND, BasicStroke.CAP_BUTT, BasicStroke.JOIN_BEVEL));
            g.draw(Texture.bands(square));
        });
        assertThat(bands).isBetween(0.30, 0.70);
        assertThat(darkness(g -> g.fill(Texture.holes(square)))).isBetween(0.12, 0.4);
        Area outside = new Area(Texture.holes(square));
        outside.subtract(new Area(square));
        assertThat(outside.isEmpty()).isTrue();
    }

    @Test
    void aNarrowStripThatIsRustedThroughShowsHolesToo() {
        for (double high = 8; high < 30; high += 0.7) {
            assertThat(Texture.holes(new Rectangle2D.Double(3, 5, 120, high)).getBounds2D())
                    .as("%.1f px high", high)
                    .satisfies(box -> assertThat(box.getWidth()).isGreaterThan(80));
        }
    }
}
