package quarterlight.cli.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A table for people: columns aligned by blanks, numbers to the right, a thin line below the heads. */
public final class TextTable {
    /** How a column stands. */
    enum Side {
        LEFT,
        RIGHT
    }

    private static final String GAP = "  ";

    private final List<String> heads = new ArrayList<>();
    private final List<Side> sides = new ArrayList<>();
    private final List<List<String>> rows = new ArrayList<>();

    public TextTable left(String... columns) {
        return columns(Side.LEFT, columns);
    }

    public TextTable right(String... columns) {
        return columns(Side.RIGHT, columns);
    }

    private TextTable columns(Side side, String... columns) {
        for (String column : columns) {
            heads.add(column);
            sides.add(side);
        }
        return this;
    }

    public TextTable row(String... cells) {
        if (cells.length != heads.size()) {
            throw new IllegalArgumentException(
                    "a row of this table has " + heads.size() + " cells, not " + cells.length);
        }
        rows.add(Arrays.stream(cells).map(TextTable::onOneLine).toList());
        return this;
    }

    private static String onOneLine(String cell) {
        return cell.strip().replaceAll("[\\p{Cntrl}\\s]+", " ");
    }

    public String text() {
        int[] widths = new int[heads.size()];
        for (int i = 0; i < widths.length; i++) {
            widths[i] = length(heads.get(i));
            for (List<String> row : rows) {
                widths[i] = Math.max(widths[i], length(row.get(i)));
            }
        }
        StringBuilder out = new StringBuilder();
        append(out, heads, widths);
        append(out, Arrays.stream(widths).mapToObj("\u2500"::repeat).toList(), widths);
        rows.forEach(row -> append(out, row, widths));
        return out.toString();
    }

    private void append(StringBuilder out, List<String> cells, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            String pad = " ".repeat(widths[i] - length(cells.get(i)));
            line.append(i == 0 ? "" : GAP);
            line.append(sides.get(i) == Side.RIGHT ? pad + cells.get(i) : cells.get(i) + pad);
        }
        out.append(line.toString().stripTrailing()).append('\n');
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }
}
