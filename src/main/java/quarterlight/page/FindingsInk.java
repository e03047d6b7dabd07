package quarterlight.page;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.Legend;
import quarterlight.diagram.ink.PinMark;
import quarterlight.diagram.ink.ZoneLook;
import quarterlight.findings.Findings;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.rust.ZoneRust;
import quarterlight.thickness.ZoneThickness;

/** What the findings look like on the diagram: thickness as tint with its number, likelihood as hatching, rust as stipple. */
public final class FindingsInk {
    private static final List<String> HATCHES = List.of("20 to 39", "40 to 59", "60 to 79", "80 or more");
    private static final List<String> STIPPLES = List.of("10 and 9", "8 and 7", "6 and 5", "4", "3 to 0");

    private FindingsInk() {}

    /** @param pins numbered pins to draw; may be empty */
    public static DiagramInk of(Findings car, ThicknessRamp ramp, List<PinMark> pins) {
        Selection selection = Selection.of(car.visit());
        Map<ZoneId, ZoneLook> looks = new HashMap<>();
        Map<ZoneId, String> names = new HashMap<>();
        for (Zone zone : car.catalog().zonesOf(car.visit().facts().car().body())) {
            names.put(zone.id(), zone.label());
            Optional<ZoneLook> shown = selection.shows(zone.id()) ? look(car, zone.id(), ramp) : Optional.empty();
            shown.ifPresent(look -> looks.put(zone.id(), look));
        }
        Legend legend = new Legend(
                Optional.of(ramp.scale()),
                ramp.ticks(),
                "Refinish likelihood, 0 to 100",
                HATCHES,
                "Rust, grade by ASTM D610",
                STIPPLES);
        return new DiagramInk(looks, Map.of(), names, pins, Optional.of(legend));
    }

    private static Optional<ZoneLook> look(Findings car, ZoneId zone, ThicknessRamp ramp) {
        OptionalDouble mean = car.thickness()
                .zone(zone)
                .filter(ZoneThickness::readable)
                .map(ZoneThickness::meanUm)
                .orElse(OptionalDouble.empty());
        int hatch = car.history()
                .zone(zone)
                .map(ZoneHistory::refinishScore)
                .map(ZoneLook::hatchOf)
                .orElse(0);
        int stipple = car.rust().zone(zone).map(FindingsInk::stipple).orElse(0);
        if (mean.isEmpty() && hatch == 0 && stipple == 0) {
            return Optional.empty();
        }
        OptionalDouble share =
                mean.isPresent() ? OptionalDouble.of(ramp.share(mean.getAsDouble())) : OptionalDouble.empty();
        String number = mean.isPresent() ? ramp.number(mean.getAsDouble()) : "";
        return Optional.of(new ZoneLook(share, number, hatch, stipple));
    }

    /** Density 1 to 5 by the grade; 0 for a zone without rust or not looked at. */
    private static int stipple(ZoneRust rust) {
        OptionalInt grade = rust.gradeD610();
        boolean rusty = rust.rust().isPresent() && rust.rust().get().mm2() > 0;
        if (!rusty || grade.isEmpty()) {
            return 0;
        }
        int g = grade.getAsInt();
        return g >= 9 ? 1 : g >= 7 ? 2 : g >= 5 ? 3 : g == 4 ? 4 : 5;
    }
}
