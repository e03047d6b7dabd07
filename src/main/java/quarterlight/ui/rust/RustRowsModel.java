package quarterlight.ui.rust;

import java.util.List;
import javax.swing.table.AbstractTableModel;
import quarterlight.car.ZoneId;
import quarterlight.rust.ZoneRust;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.OpenVisit;
import quarterlight.ui.kit.Texts;
import quarterlight.units.Worded;

/** The zones that were looked at for rust, or have damage, as rows. Event thread only. */
final class RustRowsModel extends AbstractTableModel {
    private static final String DASH = "\u2013";

    private final List<String> titles;
    private final transient OpenVisit visit;
    private transient List<ZoneRust> rows = List.of();

    RustRowsModel(Texts texts, OpenVisit visit) {
        this.visit = visit;
        titles = List.of(
                texts.get("rust.zone"),
                texts.get("rust.area"),
                texts.get("rust.percent"),
                texts.get("rust.grade"),
                texts.get("rust.ri"),
                texts.get("rust.holes"),
                texts.get("rust.need"));
    }

    /** Takes the zones of the findings at hand; true if they are others than before. */
    boolean refresh() {
        List<ZoneRust> fresh = visit.findings()
                .map(found -> found.rust().zones().stream()
                        .filter(zone -> zone.lookedAt() || zone.need().isPresent())
                        .toList())
                .orElse(List.of());
        if (fresh.equals(rows)) {
            return false;
        }
        rows = fresh;
        fireTableDataChanged();
        return true;
    }

    ZoneRust row(int index) {
        return rows.get(index);
    }

    int indexOf(ZoneId zone) {
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).zone().id().equals(zone)) {
                return i;
            }
        }
        return -1;
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
        ZoneRust zone = rows.get(index);
        return switch (column) {
            case 0 -> zone.zone().label();
            case 1 ->
                zone.rust()
                        .map(area -> Format.withUnit(area.mm2() / 100, 1, "cm\u00b2"))
                        .orElse(DASH);
            case 2 -> zone.percent().isPresent() ? Format.number(zone.percent().getAsDouble(), 2) : DASH;
            case 3 -> zone.gradeInWords().orElse(DASH);
            case 4 -> zone.ri().isPresent() ? "Ri " + zone.ri().getAsInt() : DASH;
            case 5 -> zone.holes().isPresent() ? Integer.toString(zone.holes().getAsInt()) : DASH;
            default -> zone.need().map(Worded::word).orElse(DASH);
        };
    }
}
