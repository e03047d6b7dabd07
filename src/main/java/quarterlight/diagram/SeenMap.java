package quarterlight.diagram;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.Arrays;
import java.util.List;

/**
 * A view as a grid of cells that each know which of its shapes lies on top; from it the middle of each number's part and what fits into it.
 * A cell belongs to the shape that covers its center. Distances are to the nearest cell of another number, along the axes and diagonals, so
 * a radius is too long by 8 % at most. Immutable.
 */
final class SeenMap {
    private static final double CELL_MM = 5;
    private static final double MAX_CELLS = 2000;
    private static final int NUMBER = 0xFFFFFF;
    private static final double DIAGONAL = Math.sqrt(2);
    /** Cells within this many cells of the widest place count as as wide. */
    private static final float AS_WIDE = 0.75f;

    private final double cellMm;
    private final int columns;
    private final int rows;
    private final int[] numbers;
    private final float[] widths;

    /**
     * @param shapes in drawing order
     * @param numberOf of each shape, 1 to {@code most}
     */
    SeenMap(ViewDrawing view, List<DiagramShape> shapes, int[] numberOf) {
        cellMm = Math.max(CELL_MM, Math.max(view.widthMm(), view.heightMm()) / MAX_CELLS);
        columns = Math.max(1, (int) Math.ceil(view.widthMm() / cellMm));
        rows = Math.max(1, (int) Math.ceil(view.heightMm() / cellMm));
        BufferedImage image = new BufferedImage(columns, rows, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        AffineTransform toCells = AffineTransform.getScaleInstance(1 / cellMm, 1 / cellMm);
        for (int i = 0; i < shapes.size(); i++) {
            g.setColor(new Color(numberOf[i]));
            g.fill(toCells.createTransformedShape(shapes.get(i).path()));
        }
        g.dispose();
        numbers = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        Arrays.setAll(numbers, i -> numbers[i] & NUMBER);
        widths = distances();
    }

    /** A part of the view. */
    record Part(double xMm, double yMm, double radiusMm, double areaMm2, Rectangle2D box) {}

    /** For each number its part, 0 to {@code most}; null-free: a number that is nowhere seen has no area. */
    Part[] parts(int most) {
        float[] widest = new float[most + 1];
        int[] cells = new int[most + 1];
        int[] left = filled(most, Integer.MAX_VALUE);
        int[] right = filled(most, -1);
        int[] top = filled(most, Integer.MAX_VALUE);
        int[] bottom = filled(most, -1);
        for (int i = 0; i < numbers.length; i++) {
            int number = numbers[i];
            int x = i % columns;
            int y = i / columns;
            widest[number] = Math.max(widest[number], widths[i]);
            cells[number]++;
            left[number] = Math.min(left[number], x);
            right[number] = Math.max(right[number], x);
            top[number] = Math.min(top[number], y);
            bottom[number] = Math.max(bottom[number], y);
        }
        int[] middle = middles(most, widest);
        Part[] parts = new Part[most + 1];
        for (int n = 0; n <= most; n++) {
            parts[n] = cells[n] == 0
                    ? new Part(0, 0, 0, 0, new Rectangle2D.Double())
                    : new Part(
                            (middle[n] % columns + 0.5) * cellMm,
                            (Math.floorDiv(middle[n], columns) + 0.5) * cellMm,
                            widest[n] * cellMm,
                            cells[n] * cellMm * cellMm,
                            new Rectangle2D.Double(
                                    left[n] * cellMm,
                                    top[n] * cellMm,
                                    (right[n] + 1 - left[n]) * cellMm,
                                    (bottom[n] + 1 - top[n]) * cellMm));
        }
        return parts;
    }

    private static int[] filled(int most, int value) {
        int[] filled = new int[most + 1];
        Arrays.fill(filled, value);
        return filled;
    }

    /** Of the widest cells of each number the one nearest to their mean. */
    private int[] middles(int most, float[] widest) {
        double[] sumX = new double[most + 1];
        double[] sumY = new double[most + 1];
        int[] count = new int[most + 1];
        for (int i = 0; i < numbers.length; i++) {
            int number = numbers[i];
            if (widths[i] >= widest[number] - AS_WIDE) {
                sumX[number] += i % columns;
                sumY[number] += Math.floorDiv(i, columns);
                count[number]++;
            }
        }
        int[] middle = new int[most + 1];
        double[] nearest = new double[most + 1];
        Arrays.fill(nearest, Double.POSITIVE_INFINITY);
        for (int i = 0; i < numbers.length; i++) {
            int number = numbers[i];
            if (widths[i] >= widest[number] - AS_WIDE) {
                double dx = i % columns - sumX[number] / count[number];
                double dy = Math.floorDiv(i, columns) - sumY[number] / count[number];
                double far = dx * dx + dy * dy;
                if (far < nearest[number]) {
                    nearest[number] = far;
                    middle[number] = i;
                }
            }
        }
        return middle;
    }

    /** Whether all cells that a rectangle in mm of the view touches are of a number. */
    boolean covers(int number, Rectangle2D rectangle) {
        int left = (int) Math.floor(rectangle.getMinX() / cellMm);
        int right = (int) Math.ceil(rectangle.getMaxX() / cellMm) - 1;
        int top = (int) Math.floor(rectangle.getMinY() / cellMm);
        int bottom = (int) Math.ceil(rectangle.getMaxY() / cellMm) - 1;
        if (left < 0 || top < 0 || right >= columns || bottom >= rows) {
            return false;
        }
        for (int y = top; y <= bottom; y++) {
            for (int x = left; x <= right; x++) {
                if (numbers[y * columns + x] != number) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Of each cell's center to the border of its number, in cells; two sweeps over the grid. Cells of no shape have none. */
    private float[] distances() {
        int wide = columns + 2;
        int[] framed = new int[wide * (rows + 2)];
        Arrays.fill(framed, -1);
        for (int y = 0; y < rows; y++) {
            System.arraycopy(numbers, y * columns, framed, (y + 1) * wide + 1, columns);
        }
        float[] far = new float[framed.length];
        for (int y = 1; y <= rows; y++) {
            for (int i = y * wide + 1; i <= y * wide + columns; i++) {
                far[i] = framed[i] == 0 ? 0 : nearest(framed, far, i, -1, -wide);
            }
        }
        for (int y = rows; y >= 1; y--) {
            for (int i = y * wide + columns; i > y * wide; i--) {
                far[i] = framed[i] == 0 ? 0 : Math.min(far[i], nearest(framed, far, i, 1, wide));
            }
        }
        float[] within = new float[numbers.length];
        for (int y = 0; y < rows; y++) {
            System.arraycopy(far, (y + 1) * wide + 1, within, y * columns, columns);
        }
        return within;
    }

    /** By the neighbors on one side: half a step to one of another number, a step more than its own way to one of the same. */
    private static float nearest(int[] framed, float[] far, int i, int side, int row) {
        int own = framed[i];
        double beside = framed[i + side] == own ? far[i + side] + 1.0 : 0.5;
        double up = framed[i + row] == own ? far[i + row] + 1.0 : 0.5;
        double one = framed[i + row + side] == own ? far[i + row + side] + DIAGONAL : DIAGONAL / 2;
        double other = framed[i + row - side] == own ? far[i + row - side] + DIAGONAL : DIAGONAL / 2;
        return (float) Math.min(Math.min(beside, up), Math.min(one, other));
    }
}
