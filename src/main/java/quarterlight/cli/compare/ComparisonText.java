package quarterlight.cli.compare;

import java.util.List;
import quarterlight.compare.hour.HourLook;
import quarterlight.compare.said.CarHead;
import quarterlight.compare.said.ComparisonSheet;
import quarterlight.compare.said.PairSheet;
import quarterlight.compare.said.PlaceText;
import quarterlight.compare.said.RowText;

/** A comparison as text for a terminal; sentences are those of the pages. Pure functions. */
public final class ComparisonText {
    private final StringBuilder out = new StringBuilder();

    private ComparisonText() {}

    public static String of(ComparisonSheet sheet) {
        ComparisonText text = new ComparisonText();
        sheet.cars().forEach(text::head);
        text.rows("Grave and major", sheet.heavy(), ComparisonSheet.nothingHeavy());
        text.line(sheet.care());
        text.line(ComparisonSheet.lead());
        text.pair(sheet.pair());
        for (int car = 0; car < sheet.cars().size(); car++) {
            text.hour(sheet.cars().get(car), sheet.hours().get(car));
        }
        if (!sheet.light().isEmpty()) {
            text.rows("Minor, and notes", sheet.light(), "");
        }
        text.line("");
        text.line(String.join(" ", sheet.cautions()));
        return text.out.toString();
    }

    private void line(String text) {
        out.append(text).append('\n');
    }

    private void head(CarHead car) {
        line(car.letter() + ": " + car.name());
        line("   " + car.facts());
        if (!car.paragraph().isBlank()) {
            line("   " + car.paragraph());
        }
        car.safety().forEach(danger -> line("   Before anyone drives or lifts it: " + danger));
        car.cautions().forEach(caution -> line("   " + caution));
        line("   " + car.checked());
        car.unseen().forEach(unseen -> line("   " + unseen));
        line("");
    }

    private void rows(String title, List<RowText> rows, String none) {
        line("");
        line(title);
        if (rows.isEmpty()) {
            line("  " + none);
        }
        for (RowText row : rows) {
            line("  [" + row.severity() + "] " + row.place() + ": " + row.contrast());
            for (int car = 0; car < row.cells().size(); car++) {
                RowText.CellText cell = row.cells().get(car);
                line("      " + (char) ('A' + car) + " " + cell.label() + ": " + cell.text());
            }
        }
        line("");
    }

    private void pair(PairSheet pair) {
        line("");
        line(pair.letters().a() + " and " + pair.letters().b() + " in detail");
        pair.levels().forEach(level -> line("  " + level));
        pair.counts().forEach(count -> line("  " + count.sentence()));
        line("  " + pair.compared());
        for (PlaceText place : pair.places()) {
            place.differences().forEach(difference -> line("  " + place.label() + ": " + difference));
        }
        line("");
    }

    private void hour(CarHead car, List<HourLook> looks) {
        line("One hour more at " + car.letter() + ", " + car.name() + ":");
        if (looks.isEmpty()) {
            line("  Nothing single would change much.");
        }
        looks.forEach(look -> line("  [ ] " + look.what() + " " + look.why()));
    }
}
