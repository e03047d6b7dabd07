package quarterlight.ui.rust;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import quarterlight.rust.ZoneRust;
import quarterlight.rust.need.RepairNeed;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.widget.FactTable;
import quarterlight.ui.kit.widget.Weight;
import quarterlight.units.Worded;

/** What the table of rust says of a zone. Pure functions. */
final class RustColumns {
    private static final String DASH = "\u2013";

    private RustColumns() {}

    static List<FactTable.Column<ZoneRust>> of(Texts texts) {
        return List.of(
                column(texts.get("rust.zone"), 146, zone -> zone.zone().label()),
                column(texts.get("rust.area"), 70, zone -> zone.rust()
                                .map(area -> Format.withUnit(area.mm2() / 100, 1, "cm\u00b2"))
                                .orElse(DASH))
                        .numbers(),
                column(
                                texts.get("rust.percent"),
                                46,
                                zone -> zone.percent().isPresent()
                                        ? Format.number(zone.percent().getAsDouble(), 2)
                                        : DASH)
                        .numbers(),
                column(texts.get("rust.grade"), 78, zone -> zone.gradeInWords().orElse(DASH)),
                column(
                                texts.get("rust.holes"),
                                46,
                                zone -> zone.holes().isPresent()
                                        ? Integer.toString(zone.holes().getAsInt())
                                        : DASH)
                        .numbers()
                        .weighed(zone -> zone.holes().orElse(0) > 0 ? Weight.CAUTION : Weight.PLAIN),
                column(texts.get("rust.need"), 120, zone -> zone.need()
                                .map(Worded::said)
                                .orElse(DASH))
                        .weighed(zone -> zone.need().map(RustColumns::weight).orElse(Weight.QUIET)));
    }

    /** The zones with most to be done first. */
    static Comparator<ZoneRust> graveFirst() {
        return Comparator.comparing(zone -> zone.need().map(RepairNeed::ordinal).orElse(-1), Comparator.reverseOrder());
    }

    private static Weight weight(RepairNeed need) {
        return switch (need) {
            case STRUCTURAL -> Weight.GRAVE;
            case REPLACE, PATCH -> Weight.CAUTION;
            case REFINISH -> Weight.PLAIN;
            case NONE -> Weight.QUIET;
        };
    }

    private static FactTable.Column<ZoneRust> column(String title, int width, Function<ZoneRust, String> text) {
        return new FactTable.Column<>(title, width, text);
    }
}
