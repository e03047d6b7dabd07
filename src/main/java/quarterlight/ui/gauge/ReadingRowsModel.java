package quarterlight.ui.gauge;

import java.util.List;
import javax.swing.table.AbstractTableModel;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.Texts;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.GaugeValue;
import quarterlight.visit.Reading;
import quarterlight.visit.Recorded;

/** The readings of one zone as rows. Event thread only. */
final class ReadingRowsModel extends AbstractTableModel {
    private final List<String> titles;
    private transient List<Recorded<Reading>> rows = List.of();

    ReadingRowsModel(Texts texts) {
        titles = List.of(
                texts.get("gauge.value"),
                texts.get("gauge.spot"),
                texts.get("gauge.time"),
                texts.get("gauge.excluded"));
    }

    void show(List<Recorded<Reading>> readings) {
        if (!rows.equals(readings)) {
            rows = List.copyOf(readings);
            fireTableDataChanged();
        }
    }

    Recorded<Reading> row(int index) {
        return rows.get(index);
    }

    @Override
    public int getRowCount() {
        return rows.size();
    }

    @Override
    public int getColumnCount() {
        return titles.size();
    }

    @Override
    public String getColumnName(int column) {
        return titles.get(column);
    }

    @Override
    public Object getValueAt(int index, int column) {
        Reading reading = rows.get(index).value();
        return switch (column) {
            case 0 -> value(reading.value());
            case 1 -> reading.spot().orElse("");
            case 2 -> reading.time().map(Format::clock).orElse("");
            default -> reading.exclude().orElse("");
        };
    }

    /** The value as it was typed. */
    private static String value(GaugeValue value) {
        if (value instanceof GaugeValue.Measured measured) {
            return measured.typed().toPlainString() + "\u2009"
                    + (measured.unit() == ThicknessUnit.MIL ? "mil" : "\u00b5m");
        }
        return value instanceof GaugeValue.NoMetal ? "no metal" : "beyond range";
    }
}
