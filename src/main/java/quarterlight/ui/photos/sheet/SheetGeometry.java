package quarterlight.ui.photos.sheet;

import java.awt.Point;
import java.awt.Rectangle;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.photos.list.PhotoItem;

/** Where each photo lies on the contact sheet: rows of cells, begun anew after every pause. Immutable; px before scaling. */
final class SheetGeometry {
    /** Free space round the cells. */
    static final int GAP = 8;

    private static final int BREAK = 28;
    private static final int FOOT = 36;

    /**
     * A row of cells.
     *
     * @param top of the cells
     * @param first place in the list of its first photo
     * @param pause the pause before the row; empty if the row goes on
     */
    record Row(int top, int first, int count, Optional<Pause> pause) {}

    /** A pause in the walk: how long, and empty for what has no length: the beginning, and photos without a time. */
    record Pause(Optional<Duration> length, int top) {}

    private final List<Row> rows;
    private final int columns;
    private final int cellWidth;
    private final int pictureHeight;
    private final int size;
    private final int height;

    private SheetGeometry(List<Row> rows, int columns, int cellWidth, int pictureHeight, int size, int height) {
        this.rows = List.copyOf(rows);
        this.columns = columns;
        this.cellWidth = cellWidth;
        this.pictureHeight = pictureHeight;
        this.size = size;
        this.height = height;
    }

    /** Height of the line that tells a pause. */
    static int pause() {
        return Look.px(BREAK);
    }

    /** Height of the words below a picture. */
    private static int foot() {
        return Look.px(FOOT);
    }

    /**
     * Lays out a list.
     *
     * @param width of the sheet
     * @param wanted about how wide a cell shall be; cells share the width evenly
     */
    static SheetGeometry of(List<PhotoItem> items, int width, int wanted) {
        int columns = Math.max(1, (int) Math.round((width - GAP) / (double) (wanted + GAP)));
        int cellWidth = Math.max(24, (width - GAP) / columns - GAP);
        int pictureHeight = cellWidth * 3 / 4;
        List<Row> rows = new ArrayList<>();
        int top = 0;
        int at = 0;
        while (at < items.size()) {
            boolean begins =
                    at == 0 || !items.get(at).group().equals(items.get(at - 1).group());
            Optional<Pause> pause = Optional.empty();
            if (begins) {
                pause = Optional.of(new Pause(length(items, at), top));
                top += pause();
            }
            int count = 1;
            while (count < columns
                    && at + count < items.size()
                    && items.get(at + count).group().equals(items.get(at).group())) {
                count++;
            }
            rows.add(new Row(top, at, count, pause));
            top += pictureHeight + foot() + GAP;
            at += count;
        }
        return new SheetGeometry(rows, columns, cellWidth, pictureHeight, items.size(), top + GAP);
    }

    private static Optional<Duration> length(List<PhotoItem> items, int at) {
        return at == 0
                ? Optional.empty()
                : items.get(at - 1)
                        .at()
                        .flatMap(before -> items.get(at).at().map(now -> Duration.between(before, now)));
    }

    int height() {
        return height;
    }

    int cellWidth() {
        return cellWidth;
    }

    int pictureHeight() {
        return pictureHeight;
    }

    int rowHeight() {
        return pictureHeight + foot() + GAP;
    }

    /** The whole cell of a photo, picture and words. */
    Rectangle cell(int place) {
        Row row = rows.get(rowOf(place));
        return new Rectangle(
                GAP + (place - row.first()) * (cellWidth + GAP), row.top(), cellWidth, pictureHeight + foot());
    }

    /** The rows that meet a band of the sheet, with their pauses. */
    List<Row> rows(int top, int bottom) {
        int from = firstBelow(top);
        int to = from;
        while (to < rows.size() && rows.get(to).top() - pause() < bottom) {
            to++;
        }
        return rows.subList(from, to);
    }

    /** The first row whose bottom lies below {@code y}. */
    private int firstBelow(int y) {
        int low = 0;
        int high = rows.size();
        while (low < high) {
            int middle = (low + high) / 2;
            if (rows.get(middle).top() + rowHeight() <= y) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private int rowOf(int place) {
        int found = Collections.binarySearch(rows, new Row(0, place, 0, Optional.empty()), (a, b) -> {
            return Integer.compare(a.first(), b.first());
        });
        return found >= 0 ? found : -found - 2;
    }

    /** The photo at a point. */
    OptionalInt at(Point p) {
        for (Row row : rows(p.y, p.y + 1)) {
            int column = (p.x - GAP) / (cellWidth + GAP);
            boolean inside = p.x >= GAP && (p.x - GAP) % (cellWidth + GAP) < cellWidth;
            if (inside && column < row.count() && p.y >= row.top() && p.y < row.top() + pictureHeight + foot()) {
                return OptionalInt.of(row.first() + column);
            }
        }
        return OptionalInt.empty();
    }

    /** The photos whose cells meet a rectangle. */
    List<Integer> within(Rectangle box) {
        List<Integer> found = new ArrayList<>();
        for (Row row : rows(box.y, box.y + box.height)) {
            for (int place = row.first(); place < row.first() + row.count(); place++) {
                if (cell(place).intersects(box)) {
                    found.add(place);
                }
            }
        }
        return found;
    }

    /** The photo above or below another by a number of rows, in its column or the last of the row. */
    int vertical(int place, int by) {
        int row = rowOf(place);
        int column = place - rows.get(row).first();
        int next = Math.max(0, Math.min(rows.size() - 1, row + by));
        if (next == row) {
            return place;
        }
        return rows.get(next).first() + Math.min(column, rows.get(next).count() - 1);
    }

    int columns() {
        return columns;
    }

    int size() {
        return size;
    }
}
