package quarterlight.ui.gauge.entry;

import java.util.List;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.widget.FactTable;
import quarterlight.units.Numerals;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;

/** What the table of readings says of one. Pure functions. */
public final class ReadingColumns {
    private ReadingColumns() {}

    public static List<FactTable.Column<Recorded<Reading>>> of(Texts texts) {
        return List.of(
                new FactTable.Column<Recorded<Reading>>(
                                texts.get("gauge.value"),
                                80,
                                row -> value(texts, row.value().value()))
                        .numbers(),
                new FactTable.Column<Recorded<Reading>>(
                        texts.get("gauge.spot"), 40, row -> row.value().spot().orElse("")),
                new FactTable.Column<Recorded<Reading>>(
                        texts.get("gauge.time"),
                        64,
                        row -> row.value().time().map(Format::clock).orElse("")),
                new FactTable.Column<Recorded<Reading>>(texts.get("gauge.excluded"), 90, row -> row.value()
                        .exclude()
                        .orElse("")));
    }

    /** The value as it was typed. */
    private static String value(Texts texts, GaugeValue value) {
        if (value instanceof GaugeValue.Measured measured) {
            return Numerals.typed(measured.typed()) + "\u2009" + Format.unit(measured.unit());
        }
        if (value instanceof GaugeValue.Range range) {
            return range.typed() + "\u2009" + Format.unit(range.unit());
        }
        return texts.get(value instanceof GaugeValue.NoMetal ? "gauge.no-metal" : "gauge.beyond");
    }
}
