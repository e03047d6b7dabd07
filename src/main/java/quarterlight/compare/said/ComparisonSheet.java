package quarterlight.compare.said;

import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.Objects;
import quarterlight.compare.hour.HourLook;
import quarterlight.compare.matter.MatterTable;
import quarterlight.units.ThicknessText;

/**
 * A whole comparison in words and numbers, in one unit: what every window, page and document of it shows. It names no winner. Immutable.
 *
 * @param table the rows behind the words
 * @param care what the buyer cares about, in a sentence
 * @param heavy what is grave or major on any car, most severe first
 * @param light what is minor or a note on all
 * @param pair two of the cars in detail
 * @param hours for each car in its order, what to do with one hour more
 * @param cautions shown with the likelihoods, dates and needs
 */
public record ComparisonSheet(
        MatterTable table,
        ThicknessText unit,
        List<CarHead> cars,
        String care,
        List<RowText> heavy,
        List<RowText> light,
        PairSheet pair,
        List<List<HourLook>> hours,
        List<String> cautions) {
    /** Heads the page, the window and the document. */
    public static String lead() {
        return say("compare.comparison-sheet.every-cell-says-what-that");
    }

    public static String nothingHeavy() {
        return say("compare.comparison-sheet.nothing-grave-or-major-was");
    }

    public ComparisonSheet {
        Objects.requireNonNull(table, "table");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(care, "care");
        Objects.requireNonNull(pair, "pair");
        cars = List.copyOf(cars);
        heavy = List.copyOf(heavy);
        light = List.copyOf(light);
        hours = hours.stream().map(List::copyOf).toList();
        cautions = List.copyOf(cautions);
    }
}
