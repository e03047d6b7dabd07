package quarterlight.diagram.file;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.io.StringReader;
import java.util.Optional;
import org.apache.batik.parser.AWTPathProducer;
import org.apache.batik.parser.AWTTransformProducer;
import org.apache.batik.parser.ParseException;
import org.apache.batik.parser.PathParser;

/** SVG path data and transform lists to and from shapes. */
public final class SvgPath {
    private SvgPath() {}

    /** The shape of path data (any command of SVG 1.1), or empty if the text is none. */
    static Optional<Path2D.Double> parse(String data) {
        try {
            AWTPathProducer producer = new AWTPathProducer();
            producer.setWindingRule(Path2D.WIND_EVEN_ODD);
            PathParser parser = new PathParser();
            parser.setPathHandler(producer);
            parser.parse(data);
            Path2D.Double path = new Path2D.Double(producer.getShape());
            path.setWindingRule(Path2D.WIND_EVEN_ODD);
            return isFinite(path) ? Optional.of(path) : Optional.empty();
        } catch (ParseException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** The transform of a transform list, or empty if the text is none. */
    static Optional<AffineTransform> transform(String list) {
        try {
            return Optional.of(AWTTransformProducer.createAffineTransform(new StringReader(list)));
        } catch (ParseException e) {
            return Optional.empty();
        }
    }

    private static boolean isFinite(Path2D.Double path) {
        double[] c = new double[6];
        for (PathIterator it = path.getPathIterator(null); !it.isDone(); it.next()) {
            int n = length(it.currentSegment(c));
            for (int i = 0; i < n; i++) {
                if (!(Math.abs(c[i]) < 1e6)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static int length(int segment) {
        return switch (segment) {
            case PathIterator.SEG_MOVETO, PathIterator.SEG_LINETO -> 2;
            case PathIterator.SEG_QUADTO -> 4;
            case PathIterator.SEG_CUBICTO -> 6;
            default -> 0;
        };
    }

    /** Path data of a shape with two decimals, absolute commands only. */
    public static String write(Shape shape) {
        StringBuilder out = new StringBuilder();
        double[] c = new double[6];
        for (PathIterator it = shape.getPathIterator(null); !it.isDone(); it.next()) {
            int segment = it.currentSegment(c);
            out.append(
                    switch (segment) {
                        case PathIterator.SEG_MOVETO -> 'M';
                        case PathIterator.SEG_LINETO -> 'L';
                        case PathIterator.SEG_QUADTO -> 'Q';
                        case PathIterator.SEG_CUBICTO -> 'C';
                        default -> 'Z';
                    });
            for (int i = 0; i < length(segment); i++) {
                if (i > 0) {
                    out.append(' ');
                }
                number(out, c[i]);
            }
        }
        return out.toString();
    }

    /** Appends a number with up to two decimals and no trailing zeros, with a point in every locale. */
    static void number(StringBuilder out, double value) {
        long hundredths = Math.round(value * 100);
        if (hundredths < 0) {
            out.append('-');
            hundredths = -hundredths;
        }
        out.append(hundredths / 100);
        long rest = hundredths % 100;
        if (rest != 0) {
            out.append('.').append(rest / 10);
            if (rest % 10 != 0) {
                out.append(rest % 10);
            }
        }
    }

    /** A number as {@link #write} writes it. */
    public static String number(double value) {
        StringBuilder out = new StringBuilder();
        number(out, value);
        return out.toString();
    }
}
