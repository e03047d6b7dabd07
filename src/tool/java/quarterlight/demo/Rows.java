package quarterlight.demo;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Cells and rows as the tables write them. */
final class Rows {
    private Rows() {}

    /** A pixel coordinate, to a tenth. */
    static String px(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    static String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    static String row(List<String> cells) {
        return cells.stream().map(Rows::cell).collect(Collectors.joining(","));
    }

    private static String cell(String text) {
        boolean quote = text.contains(",") || text.contains("\"") || text.contains("\n");
        return quote ? '"' + text.replace("\"", "\"\"") + '"' : text;
    }
}
