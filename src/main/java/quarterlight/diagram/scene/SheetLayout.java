package quarterlight.diagram.scene;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.View;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ViewDrawing;
import quarterlight.diagram.ink.Legend;
import quarterlight.diagram.ink.TextMeasure;

/**
 * Where the views lie on a sheet, all at one scale so that lengths can be compared; the same in the window and on a page.
 *
 * @param width of the sheet, px
 * @param height of the sheet, px, legend included
 * @param scale px per mm
 * @param frames the rectangle of each view's drawing, px
 * @param cells the rectangle each view may use for its title, labels and pins; cells do not overlap
 * @param legend the band for the legend, if there is one
 * @param key the band for the key of numbered zones, if there is one
 */
public record SheetLayout(
        double width,
        double height,
        double scale,
        Map<View, Rectangle2D> frames,
        Map<View, Rectangle2D> cells,
        Optional<Rectangle2D> legend,
        Optional<Rectangle2D> key) {
    /** Room above a drawing for its title and a row of labels, px. */
    static final double ABOVE = 34;
    /** Room below a drawing for a row of labels, px. */
    static final double BELOW = 20;
    /** Room at either side of a drawing, px. */
    static final double BESIDE = 18;

    private static final List<List<List<View>>> ARRANGEMENTS = List.of(
            List.of(
                    List.of(View.LEFT, View.RIGHT),
                    List.of(View.FRONT, View.TOP, View.REAR),
                    List.of(View.UNDER, View.BAY, View.CABIN)),
            List.of(
                    List.of(View.LEFT, View.RIGHT, View.TOP),
                    List.of(View.FRONT, View.REAR, View.BAY, View.UNDER, View.CABIN)),
            List.of(
                    List.of(View.LEFT, View.RIGHT),
                    List.of(View.TOP, View.UNDER),
                    List.of(View.FRONT, View.REAR, View.BAY, View.CABIN)),
            List.of(
                    List.of(View.LEFT, View.FRONT),
                    List.of(View.RIGHT, View.REAR),
                    List.of(View.TOP, View.BAY),
                    List.of(View.UNDER, View.CABIN)),
            List.of(
                    List.of(View.LEFT),
                    List.of(View.RIGHT),
                    List.of(View.TOP),
                    List.of(View.UNDER),
                    List.of(View.FRONT, View.REAR),
                    List.of(View.BAY, View.CABIN)));

    public SheetLayout {
        frames = Map.copyOf(frames);
        cells = Map.copyOf(cells);
        Objects.requireNonNull(legend, "legend");
        Objects.requireNonNull(key, "key");
    }

    /** The same sheet with a band for the key below; as it is for a height of 0. */
    SheetLayout withKey(double high) {
        return high == 0
                ? this
                : new SheetLayout(
                        width,
                        height + high,
                        scale,
                        frames,
                        cells,
                        legend,
                        Optional.of(new Rectangle2D.Double(BESIDE, height, width - 2 * BESIDE, high)));
    }

    /**
     * The layout that shows the views largest in a given room.
     *
     * @param legend what its band must hold; empty for none
     */
    public static SheetLayout fit(
            BodyDiagram diagram, double width, double height, Optional<Legend> legend, TextMeasure measure) {
        return fit(diagram, width, height, legendHeight(legend, width - 2 * BESIDE, measure));
    }

    /** How high the band of a legend comes out at a width, px; 0 for none. */
    public static double legendHeight(Optional<Legend> legend, double width, TextMeasure measure) {
        return legend.map(key -> LegendDrawing.height(key, width, measure)).orElse(0.0);
    }

    /**
     * The same for a drawing that is worked on: never less than the usual legend takes, so that no place of the car moves under the hand when the
     * first value is entered.
     */
    public static double steadyLegendHeight(Optional<Legend> legend, double width, TextMeasure measure) {
        return Math.max(LegendDrawing.USUAL_HEIGHT, legendHeight(legend, width, measure));
    }

    /**
     * The same for a band of a height.
     *
     * @param band height of the band for the legend, px; 0 for none
     */
    public static SheetLayout fit(BodyDiagram diagram, double width, double height, double band) {
        double room = Math.max(1, height - band);
        List<List<ViewDrawing>> best = List.of();
        double largest = 0;
        for (List<List<View>> arrangement : ARRANGEMENTS) {
            List<List<ViewDrawing>> rows = rows(diagram, arrangement);
            double scale = scale(rows, width, room);
            if (scale > largest) {
                largest = scale;
                best = rows;
            }
        }
        return lay(best, Math.max(largest, 1e-3), width, room, band);
    }

    /** The usual three rows at the scale that fills a width, as high as they come out. */
    static SheetLayout ofWidth(BodyDiagram diagram, double width, double band) {
        List<List<ViewDrawing>> rows = rows(diagram, ARRANGEMENTS.get(width < 720 ? 4 : 0));
        double scale = Math.max(1e-3, scale(rows, width, Double.MAX_VALUE));
        double height = 0;
        for (List<ViewDrawing> row : rows) {
            height += scale * rowHeight(row) + ABOVE + BELOW;
        }
        return lay(rows, scale, width, height, band);
    }

    private static List<List<ViewDrawing>> rows(BodyDiagram diagram, List<List<View>> arrangement) {
        List<List<ViewDrawing>> rows = new ArrayList<>();
        for (List<View> row : arrangement) {
            List<ViewDrawing> drawn =
                    row.stream().map(diagram::view).flatMap(Optional::stream).toList();
            if (!drawn.isEmpty()) {
                rows.add(drawn);
            }
        }
        return rows;
    }

    private static double scale(List<List<ViewDrawing>> rows, double width, double height) {
        double scale = Double.POSITIVE_INFINITY;
        double mmHigh = 0;
        for (List<ViewDrawing> row : rows) {
            double mmWide = row.stream().mapToDouble(ViewDrawing::widthMm).sum();
            scale = Math.min(scale, (width - 2 * BESIDE * row.size()) / mmWide);
            mmHigh += rowHeight(row);
        }
        return Math.min(scale, (height - rows.size() * (ABOVE + BELOW)) / mmHigh);
    }

    private static double rowHeight(List<ViewDrawing> row) {
        return row.stream().mapToDouble(ViewDrawing::heightMm).max().orElse(0);
    }

    private static SheetLayout lay(List<List<ViewDrawing>> rows, double scale, double width, double room, double band) {
        Map<View, Rectangle2D> frames = new EnumMap<>(View.class);
        Map<View, Rectangle2D> cells = new EnumMap<>(View.class);
        double used = 0;
        for (List<ViewDrawing> row : rows) {
            used += scale * rowHeight(row) + ABOVE + BELOW;
        }
        double slack = Math.max(0, room - used) / Math.max(1, rows.size());
        double y = 0;
        for (List<ViewDrawing> row : rows) {
            double high = scale * rowHeight(row) + ABOVE + BELOW + slack;
            double wide = scale * row.stream().mapToDouble(ViewDrawing::widthMm).sum();
            double spare = (width - wide) / row.size();
            double x = 0;
            for (ViewDrawing view : row) {
                double w = scale * view.widthMm();
                double h = scale * view.heightMm();
                cells.put(view.view(), new Rectangle2D.Double(x, y, w + spare, high));
                double top = y + ABOVE + (high - ABOVE - BELOW - h) / 2;
                frames.put(view.view(), new Rectangle2D.Double(x + spare / 2, top, w, h));
                x += w + spare;
            }
            y += high;
        }
        Optional<Rectangle2D> legend =
                band > 0 ? Optional.of(new Rectangle2D.Double(BESIDE, y, width - 2 * BESIDE, band)) : Optional.empty();
        return new SheetLayout(width, y + band, scale, frames, cells, legend, Optional.empty());
    }
}
