package quarterlight.page;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.Legend;
import quarterlight.diagram.ink.LetterMark;
import quarterlight.diagram.ink.PinMark;
import quarterlight.diagram.ink.Surface;
import quarterlight.diagram.ink.ZoneLook;
import quarterlight.findings.Findings;
import quarterlight.findings.Measured;
import quarterlight.finish.FinishHistory;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.finish.scale.ThicknessSteps;
import quarterlight.rust.ZoneRust;
import quarterlight.thickness.ZoneThickness;
import quarterlight.visit.statement.Condition;

/**
 * What the findings look like on the diagram: thickness as a tint that tells how far it is from what this car should read, with its number;
 * likelihood as hatching, rust as stipple, what is rusted through heavily. What was not looked at stays bare.
 */
public final class FindingsInk {
    private static final List<String> HATCHES = List.of(
            "diagram.findings-ink.doubtful-20-to-39",
            "diagram.findings-ink.open-40-to-59",
            "diagram.findings-ink.likely-60-to-79",
            "diagram.findings-ink.very-likely-80-or-more");
    private static final List<String> STIPPLES = List.of(
            "diagram.findings-ink.specks-grade-10-or-9",
            "diagram.findings-ink.a-little-8-or-7",
            "diagram.findings-ink.some-6-or-5",
            "diagram.findings-ink.much-4",
            "diagram.findings-ink.most-of-it-3-to");
    private static final String THIN = "\u2009";

    private FindingsInk() {}

    /** @param pins numbered pins to draw; may be empty */
    public static DiagramInk of(Findings car, ThicknessRamp ramp, List<PinMark> pins) {
        return of(car, ramp, pins, List.of());
    }

    /** @param letters of matters; those of zones left out are not drawn */
    public static DiagramInk of(Findings car, ThicknessRamp ramp, List<PinMark> pins, List<LetterMark> letters) {
        return of(car.measured(), Optional.of(car.history()), ramp, ThicknessSteps.of(car.history()), pins, letters);
    }

    /** What is known before anything was judged: numbers with their tints, rust. */
    public static DiagramInk of(Measured car, ThicknessRamp ramp) {
        return of(car, Optional.empty(), ramp, car.steps(), List.of(), List.of());
    }

    private static DiagramInk of(
            Measured car,
            Optional<FinishHistory> history,
            ThicknessRamp ramp,
            ThicknessSteps steps,
            List<PinMark> pins,
            List<LetterMark> letters) {
        ReportSelection selection = ReportSelection.of(car.visit());
        Map<ZoneId, ZoneLook> looks = new HashMap<>();
        Map<ZoneId, String> names = new HashMap<>();
        for (Zone zone : car.catalog().zonesOf(car.visit().facts().car().body())) {
            names.put(zone.id(), zone.label());
            if (selection.shows(zone.id())) {
                ZoneLook look = look(car, history, zone.id(), ramp, steps);
                if (!look.equals(ZoneLook.NONE)) {
                    looks.put(zone.id(), look);
                }
            }
        }
        List<LetterMark> shown =
                letters.stream().filter(mark -> selection.shows(mark.zone())).toList();
        return new DiagramInk(
                looks, Map.of(), names, pins, shown, Optional.of(legend(looks, pins, shown, steps, ramp)));
    }

    /** What of a drawing its legend must explain, and nothing else. */
    public static Legend legend(
            Map<ZoneId, ZoneLook> looks,
            List<PinMark> pins,
            List<LetterMark> letters,
            ThicknessSteps steps,
            ThicknessRamp ramp) {
        List<Legend.Key> keys = new ArrayList<>();
        key(
                        say("diagram.findings-ink.refinish-likelihood-of-100"),
                        Legend.Sample.HATCH,
                        used(looks, ZoneLook::hatch),
                        HATCHES)
                .ifPresent(keys::add);
        rust(looks).ifPresent(keys::add);
        List<Legend.Swatch> marks = new ArrayList<>();
        if (letters.stream().anyMatch(LetterMark::grave)) {
            marks.add(Legend.Swatch.of(Legend.Sample.GRAVE_MATTER, say("diagram.findings-ink.grave-matter")));
        }
        if (letters.stream().anyMatch(mark -> !mark.grave())) {
            marks.add(Legend.Swatch.of(Legend.Sample.MATTER, say("diagram.findings-ink.other-matter")));
        }
        if (!pins.isEmpty()) {
            marks.add(Legend.Swatch.of(Legend.Sample.PHOTO, say("diagram.findings-ink.photo-by-its-number")));
        }
        if (!marks.isEmpty()) {
            keys.add(new Legend.Key(say("diagram.findings-ink.marks"), marks));
        }
        boolean valued = looks.values().stream().anyMatch(look -> look.step().isPresent());
        return new Legend(valued ? Optional.of(scale(steps, ramp)) : Optional.empty(), keys);
    }

    private static Legend.Steps scale(ThicknessSteps steps, ThicknessRamp ramp) {
        List<String> limits = steps.limitsUm().stream().map(ramp::number).toList();
        List<String> ranges = new ArrayList<>();
        ranges.add(say("diagram.findings-ink.under", limits.get(0)));
        for (int i = 1; i < limits.size(); i++) {
            ranges.add(say("diagram.findings-ink.to", limits.get(i - 1), limits.get(i)));
        }
        ranges.add(say("diagram.findings-ink.over", limits.get(limits.size() - 1)));
        return new Legend.Steps(
                say("diagram.findings-ink.mean-coating-thickness-untinted", ramp.unitName()),
                ramp.unitName(),
                limits,
                ranges);
    }

    private static Optional<Legend.Key> rust(Map<ZoneId, ZoneLook> looks) {
        List<Legend.Swatch> swatches =
                new ArrayList<>(swatches(Legend.Sample.STIPPLE, used(looks, ZoneLook::stipple), STIPPLES));
        if (looks.values().stream().anyMatch(look -> look.surface() == Surface.THROUGH)) {
            swatches.add(Legend.Swatch.of(Legend.Sample.THROUGH, say("diagram.findings-ink.rusted-through")));
        }
        return swatches.isEmpty()
                ? Optional.empty()
                : Optional.of(new Legend.Key(say("diagram.findings-ink.rust-astm-d610", THIN), swatches));
    }

    private static Optional<Legend.Key> key(String title, Legend.Sample sample, int[] densities, List<String> words) {
        List<Legend.Swatch> swatches = swatches(sample, densities, words);
        return swatches.isEmpty() ? Optional.empty() : Optional.of(new Legend.Key(title, swatches));
    }

    private static List<Legend.Swatch> swatches(Legend.Sample sample, int[] densities, List<String> words) {
        return IntStream.of(densities)
                .mapToObj(density -> new Legend.Swatch(sample, density, say(words.get(density - 1))))
                .toList();
    }

    private static int[] used(Map<ZoneId, ZoneLook> looks, java.util.function.ToIntFunction<ZoneLook> density) {
        return looks.values().stream()
                .mapToInt(density)
                .filter(d -> d > 0)
                .distinct()
                .sorted()
                .toArray();
    }

    private static ZoneLook look(
            Measured car, Optional<FinishHistory> history, ZoneId zone, ThicknessRamp ramp, ThicknessSteps steps) {
        OptionalDouble mean = car.thickness()
                .zone(zone)
                .filter(ZoneThickness::readable)
                .map(ZoneThickness::meanUm)
                .orElse(OptionalDouble.empty());
        int hatch = history.flatMap(judged -> judged.zone(zone))
                .map(ZoneHistory::refinishScore)
                .map(ZoneLook::hatchOf)
                .orElse(0);
        int stipple = car.rust().zone(zone).map(FindingsInk::stipple).orElse(0);
        return new ZoneLook(
                mean.isPresent() ? OptionalInt.of(steps.of(mean.getAsDouble())) : OptionalInt.empty(),
                mean.isPresent() ? ramp.number(mean.getAsDouble()) : "",
                hatch,
                stipple,
                isThrough(car, zone) ? Surface.THROUGH : Surface.PLAIN);
    }

    /** A hole outlined on a photo, or seen and said. */
    private static boolean isThrough(Measured car, ZoneId zone) {
        boolean traced =
                car.rust().zone(zone).map(rust -> rust.holes().orElse(0) > 0).orElse(false);
        return traced
                || car.visit().standing().stream()
                        .anyMatch(said -> said.zone().equals(zone) && said.is(Condition.RUSTED_THROUGH));
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
