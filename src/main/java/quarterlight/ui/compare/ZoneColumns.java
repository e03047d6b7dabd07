package quarterlight.ui.compare;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import quarterlight.compare.ComparedZone;
import quarterlight.compare.Comparison;
import quarterlight.compare.Contrast;
import quarterlight.compare.ZoneFacts;
import quarterlight.page.PageFacts;
import quarterlight.page.ThicknessRamp;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.widget.FactTable;
import quarterlight.units.Worded;

/** What the table of two cars says of a zone that both have: A, B, and what is worth saying. Pure functions. */
final class ZoneColumns {
    private static final String DASH = "\u2013";

    private ZoneColumns() {}

    /** The zones of which something is known on either side. */
    static List<ComparedZone> known(Comparison comparison) {
        return comparison.zones().stream().filter(ZoneColumns::isKnown).toList();
    }

    static List<FactTable.Column<ComparedZone>> of(Texts texts, ThicknessRamp ramp) {
        String unit = ramp.unitName();
        return List.of(
                new FactTable.Column<>(
                        texts.get("compare.zone"), 150, zone -> zone.zone().label()),
                a(texts.get("compare.thickness", "A", unit), 110, facts -> thickness(facts, ramp)),
                b(texts.get("compare.thickness", "B", unit), 110, facts -> thickness(facts, ramp)),
                a(texts.get("compare.refinish", "A"), 110, ZoneColumns::refinish),
                b(texts.get("compare.refinish", "B"), 110, ZoneColumns::refinish),
                a(texts.get("compare.rust", "A"), 180, ZoneColumns::rust),
                b(texts.get("compare.rust", "B"), 180, ZoneColumns::rust),
                a(texts.get("compare.need", "A"), 80, ZoneColumns::need),
                b(texts.get("compare.need", "B"), 80, ZoneColumns::need),
                a(texts.get("compare.gaps", "A"), 120, ZoneColumns::gaps),
                b(texts.get("compare.gaps", "B"), 120, ZoneColumns::gaps),
                new FactTable.Column<>(texts.get("compare.said"), 420, zone -> zone.contrasts().stream()
                        .map(Contrast::text)
                        .collect(Collectors.joining(" "))));
    }

    private static FactTable.Column<ComparedZone> a(String title, int width, Function<ZoneFacts, String> text) {
        return new FactTable.Column<>(title, width, zone -> text.apply(zone.a()));
    }

    private static FactTable.Column<ComparedZone> b(String title, int width, Function<ZoneFacts, String> text) {
        return new FactTable.Column<>(title, width, zone -> text.apply(zone.b()));
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
}
