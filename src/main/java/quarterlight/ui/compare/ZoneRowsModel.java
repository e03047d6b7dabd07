package quarterlight.ui.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.table.AbstractTableModel;
import quarterlight.compare.ComparedZone;
import quarterlight.compare.Comparison;
import quarterlight.compare.Contrast;
import quarterlight.compare.ZoneFacts;
import quarterlight.page.PageFacts;
import quarterlight.page.ThicknessRamp;
import quarterlight.ui.kit.Texts;
import quarterlight.units.Worded;

/** The shared zones of two cars as rows: A, B, and what is worth saying. Immutable after it is made. */
final class ZoneRowsModel extends AbstractTableModel {
    private static final String DASH = "\u2013";

    private final List<String> titles;
    private final List<List<String>> rows = new ArrayList<>();
    private final transient List<ComparedZone> zones = new ArrayList<>();

    ZoneRowsModel(Texts texts, Comparison comparison, ThicknessRamp ramp) {
        titles = List.of(
                texts.get("compare.zone"),
                texts.get("compare.thickness", "A", ramp.unitName()),
                texts.get("compare.thickness", "B", ramp.unitName()),
                texts.get("compare.refinish", "A"),
                texts.get("compare.refinish", "B"),
                texts.get("compare.rust", "A"),
                texts.get("compare.rust", "B"),
                texts.get("compare.need", "A"),
                texts.get("compare.need", "B"),
                texts.get("compare.gaps", "A"),
                texts.get("compare.gaps", "B"),
                texts.get("compare.said"));
        comparison.zones().stream().filter(ZoneRowsModel::isKnown).forEach(zone -> {
            zones.add(zone);
            rows.add(row(zone, ramp));
        });
    }

    private static boolean isKnown(ComparedZone zone) {
        return known(zone.a()) || known(zone.b());
    }

    private static boolean known(ZoneFacts facts) {
        return facts.thickness().isPresent()
                || facts.history().isPresent()
                || facts.rust().isPresent()
                || !facts.statements().isEmpty();
    }

    private static List<String> row(ComparedZone zone, ThicknessRamp ramp) {
        List<String> row = new ArrayList<>(List.of(
                zone.zone().label(),
                thickness(zone.a(), ramp),
                thickness(zone.b(), ramp),
                refinish(zone.a()),
                refinish(zone.b()),
                rust(zone.a()),
                rust(zone.b()),
                need(zone.a()),
                need(zone.b()),
                gaps(zone.a()),
                gaps(zone.b())));
        row.add(zone.contrasts().stream().map(Contrast::text).collect(Collectors.joining(" ")));
        return row;
    }

    private static String thickness(ZoneFacts facts, ThicknessRamp ramp) {
        return facts.thickness().map(zone -> PageFacts.mean(zone, ramp)).orElse(DASH);
    }

    private static String refinish(ZoneFacts facts) {
        return facts.history().map(PageFacts::refinish).orElse(DASH);
    }

    private static String rust(ZoneFacts facts) {
        return facts.rust().map(PageFacts::rust).orElse("not looked at");
    }

    private static String need(ZoneFacts facts) {
        return facts.rust().flatMap(zone -> zone.need()).map(Worded::word).orElse(DASH);
    }

    private static String gaps(ZoneFacts facts) {
        return facts.gaps().isEmpty()
                ? DASH
                : facts.gaps().stream()
                        .map(gap -> gap.lacks().word())
                        .distinct()
                        .collect(Collectors.joining(", "));
    }

    /** The zone of a row. */
    ComparedZone zone(int row) {
        return zones.get(row);
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
    public Object getValueAt(int row, int column) {
        return rows.get(row).get(column);
    }
}
