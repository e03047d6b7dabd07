package quarterlight.ui.rust;

import java.util.List;
import java.util.function.Function;
import quarterlight.rust.ZoneRust;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.widget.FactTable;
import quarterlight.units.Worded;

/** What the table of rust says of a zone. Pure functions. */
final class RustColumns {
    private static final String DASH = "\u2013";

    private RustColumns() {}

    static List<FactTable.Column<ZoneRust>> of(Texts texts) {
        return List.of(
                column(texts.get("rust.zone"), 132, zone -> zone.zone().label()),
                column(texts.get("rust.area"), 62, zone -> zone.rust()
                        .map(area -> Format.withUnit(area.mm2() / 100, 1, "cm\u00b2"))
                        .orElse(DASH)),
                column(
                        texts.get("rust.percent"),
                        46,
                        zone -> zone.percent().isPresent()
                                ? Format.number(zone.percent().getAsDouble(), 2)
                                : DASH),
                column(texts.get("rust.grade"), 78, zone -> zone.gradeInWords().orElse(DASH)),
                column(
                        texts.get("rust.holes"),
                        46,
                        zone -> zone.holes().isPresent()
                                ? Integer.toString(zone.holes().getAsInt())
                                : DASH),
                column(texts.get("rust.need"), 76, zone -> zone.need()
                        .map(Worded::word)
                        .orElse(DASH)));
    }

    private static FactTable.Column<ZoneRust> column(String title, int width, Function<ZoneRust, String> text) {
        return new FactTable.Column<>(title, width, text);
    }
}
