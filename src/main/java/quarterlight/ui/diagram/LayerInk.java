package quarterlight.ui.diagram;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import quarterlight.car.ZoneId;
import quarterlight.coverage.ZoneCoverage;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.Legend;
import quarterlight.diagram.ink.PinMark;
import quarterlight.diagram.ink.Surface;
import quarterlight.diagram.ink.ZoneLook;
import quarterlight.findings.Findings;
import quarterlight.findings.Measured;
import quarterlight.finish.scale.ThicknessSteps;
import quarterlight.page.FindingsInk;
import quarterlight.page.ThicknessRamp;
import quarterlight.ui.kit.Texts;
import quarterlight.units.ThicknessUnit;

/** What the layers that are switched on show of the findings. Pure functions. */
final class LayerInk {
    private LayerInk() {}

    /**
     * @param measured what is known before anything was judged, shown until the findings are there
     * @param coverage how far zones are covered; in place of hatching by likelihood and of numbers if that layer is on
     * @param names the zones' names, shown where nothing was worked out yet
     */
    static DiagramInk of(
            Texts texts,
            Optional<Measured> measured,
            Optional<Findings> findings,
            List<ZoneCoverage> coverage,
            Set<Layer> layers,
            ThicknessUnit unit,
            List<PinMark> pins,
            Map<ZoneId, String> names) {
        List<PinMark> shown = layers.contains(Layer.PINS) ? pins : List.of();
        boolean covering = layers.contains(Layer.COVERAGE);
        if (findings.isEmpty() && (covering || measured.isEmpty())) {
            return new DiagramInk(Map.of(), Map.of(), names, shown, Optional.empty());
        }
        if (covering) {
            return coverage(texts, coverage, names, shown);
        }
        if (findings.isEmpty()) {
            Measured bare = measured.get();
            ThicknessRamp ramp = ThicknessRamp.of(bare, unit);
            return only(FindingsInk.of(bare, ramp), bare.steps(), ramp, layers, shown);
        }
        ThicknessRamp ramp = ThicknessRamp.of(List.of(findings.get()), unit);
        return only(
                FindingsInk.of(findings.get(), ramp, shown),
                ThicknessSteps.of(findings.get().history()),
                ramp,
                layers,
                shown);
    }

    private static DiagramInk only(
            DiagramInk whole, ThicknessSteps steps, ThicknessRamp ramp, Set<Layer> layers, List<PinMark> shown) {
        Map<ZoneId, ZoneLook> looks = new HashMap<>();
        whole.looks().forEach((zone, look) -> looks.put(zone, only(look, layers)));
        Legend legend = FindingsInk.legend(looks, shown, whole.letters(), steps, ramp);
        return new DiagramInk(looks, Map.of(), whole.names(), shown, whole.letters(), Optional.of(legend));
    }

    /** How far the evidence reaches: complete, in part, missing; how many kinds a zone lacks stands in its name, on demand. */
    private static DiagramInk coverage(
            Texts texts, List<ZoneCoverage> coverage, Map<ZoneId, String> names, List<PinMark> pins) {
        Map<ZoneId, ZoneLook> looks = new HashMap<>();
        Map<ZoneId, String> counted = new HashMap<>(names);
        for (ZoneCoverage zone : coverage) {
            ZoneId id = zone.zone().id();
            surface(zone).ifPresent(surface -> looks.put(id, ZoneLook.of(surface)));
            if (!zone.gaps().isEmpty()) {
                counted.put(
                        id,
                        texts.get(
                                "diagram.lacks.count",
                                names.getOrDefault(id, id.value()),
                                zone.gaps().size()));
            }
        }
        Legend legend = new Legend(
                Optional.empty(),
                List.of(new Legend.Key(
                        texts.get("diagram.coverage.key"),
                        List.of(
                                Legend.Swatch.of(Legend.Sample.COMPLETE, texts.get("diagram.coverage.complete")),
                                Legend.Swatch.of(Legend.Sample.PARTIAL, texts.get("diagram.coverage.partial")),
                                Legend.Swatch.of(Legend.Sample.MISSING, texts.get("diagram.coverage.missing"))))));
        return new DiagramInk(looks, Map.of(), counted, pins, Optional.of(legend));
    }

    private static Optional<Surface> surface(ZoneCoverage zone) {
        return switch (zone.state()) {
            case MISSING -> Optional.of(Surface.MISSING);
            case PARTLY -> Optional.of(Surface.PARTIAL);
            case FULL -> Optional.of(Surface.COMPLETE);
            case NOT_ASKED -> Optional.empty();
        };
    }

    private static ZoneLook only(ZoneLook look, Set<Layer> layers) {
        boolean thickness = layers.contains(Layer.THICKNESS);
        boolean rust = layers.contains(Layer.RUST);
        return new ZoneLook(
                thickness ? look.step() : OptionalInt.empty(),
                thickness ? look.number() : "",
                layers.contains(Layer.LIKELIHOOD) ? look.hatch() : 0,
                rust ? look.stipple() : 0,
                rust ? look.surface() : Surface.PLAIN);
    }
}
