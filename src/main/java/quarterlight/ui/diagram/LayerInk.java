package quarterlight.ui.diagram;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import quarterlight.car.ZoneId;
import quarterlight.coverage.ZoneCoverage;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.Legend;
import quarterlight.diagram.ink.PinMark;
import quarterlight.diagram.ink.ZoneLook;
import quarterlight.findings.Findings;
import quarterlight.page.FindingsInk;
import quarterlight.page.ThicknessRamp;
import quarterlight.units.ThicknessUnit;

/** What the layers that are switched on show of the findings. Pure functions. */
final class LayerInk {
    private LayerInk() {}

    /**
     * @param coverage how far zones are covered; in place of hatching by likelihood and of numbers if that layer is on
     * @param names the zones' names, shown where nothing was worked out yet
     */
    static DiagramInk of(
            Optional<Findings> findings,
            List<ZoneCoverage> coverage,
            Set<Layer> layers,
            ThicknessUnit unit,
            List<PinMark> pins,
            Map<ZoneId, String> names) {
        List<PinMark> shown = layers.contains(Layer.PINS) ? pins : List.of();
        if (findings.isEmpty()) {
            return new DiagramInk(Map.of(), Map.of(), names, shown, Optional.empty());
        }
        if (layers.contains(Layer.COVERAGE)) {
            return coverage(coverage, names, shown);
        }
        ThicknessRamp ramp = ThicknessRamp.of(List.of(findings.get()), unit);
        DiagramInk whole = FindingsInk.of(findings.get(), ramp, shown);
        Map<ZoneId, ZoneLook> looks = new HashMap<>();
        whole.looks().forEach((zone, look) -> looks.put(zone, only(look, layers)));
        return new DiagramInk(
                looks, Map.of(), whole.names(), shown, whole.legend().map(legend -> only(legend, layers)));
    }

    /** Evidence that is lacking: sparse hatching where some is there, dense where there is none, with the number of gaps. */
    private static DiagramInk coverage(List<ZoneCoverage> coverage, Map<ZoneId, String> names, List<PinMark> pins) {
        Map<ZoneId, ZoneLook> looks = new HashMap<>();
        for (ZoneCoverage zone : coverage) {
            int hatch =
                    switch (zone.state()) {
                        case MISSING -> 2;
                        case PARTLY -> 1;
                        case FULL, NOT_ASKED -> 0;
                    };
            if (hatch > 0) {
                String gaps = Integer.toString(zone.gaps().size());
                looks.put(zone.zone().id(), new ZoneLook(OptionalDouble.empty(), gaps, hatch, 0));
            }
        }
        Legend legend = new Legend(
                Optional.empty(),
                List.of(),
                "Evidence lacking; the number counts the kinds",
                List.of("some is there", "none is there"),
                "",
                List.of());
        return new DiagramInk(looks, Map.of(), names, pins, Optional.of(legend));
    }

    private static ZoneLook only(ZoneLook look, Set<Layer> layers) {
        boolean thickness = layers.contains(Layer.THICKNESS);
        return new ZoneLook(
                thickness ? look.share() : OptionalDouble.empty(),
                thickness ? look.number() : "",
                layers.contains(Layer.LIKELIHOOD) ? look.hatch() : 0,
                layers.contains(Layer.RUST) ? look.stipple() : 0);
    }

    private static Legend only(Legend legend, Set<Layer> layers) {
        boolean thickness = layers.contains(Layer.THICKNESS);
        return new Legend(
                thickness ? legend.scale() : Optional.empty(),
                thickness ? legend.ticks() : List.of(),
                layers.contains(Layer.LIKELIHOOD) ? legend.hatchTitle() : "",
                legend.hatches(),
                layers.contains(Layer.RUST) ? legend.stippleTitle() : "",
                legend.stipples());
    }
}
