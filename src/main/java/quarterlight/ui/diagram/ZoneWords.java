package quarterlight.ui.diagram;

import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.car.ZoneId;
import quarterlight.coverage.Gap;
import quarterlight.findings.Findings;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.thickness.ZoneThickness;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.units.Thickness;
import quarterlight.units.ThicknessUnit;

/** What is known of a zone in one line: name, thickness, likelihood, rust, photos, and what evidence it lacks while that layer is on. Event thread only. */
final class ZoneWords {
    private final UiContext parts;
    private final OpenVisit visit;
    private final Supplier<Set<Layer>> layers;

    /** @param layers those that are on */
    ZoneWords(UiContext parts, OpenVisit visit, Supplier<Set<Layer>> layers) {
        this.layers = Objects.requireNonNull(layers, "layers");
        this.parts = Objects.requireNonNull(parts, "parts");
        this.visit = Objects.requireNonNull(visit, "visit");
    }

    String of(ZoneId zone) {
        return Stream.of(
                        Optional.of(visit.label(zone)),
                        thickness(zone),
                        likelihood(zone),
                        rust(zone),
                        photos(zone),
                        coverage(zone))
                .flatMap(Optional::stream)
                .collect(Collectors.joining("  \u00b7  "));
    }

    private Optional<String> thickness(ZoneId zone) {
        ThicknessUnit unit = parts.settings().settings().unit();
        return visit.findings()
                .map(Findings::thickness)
                .flatMap(t -> t.zone(zone))
                .flatMap(t -> mean(t, unit));
    }

    private static Optional<String> mean(ZoneThickness zone, ThicknessUnit unit) {
        return zone.readable() && zone.meanUm().isPresent()
                ? Optional.of(
                        Format.thicknessWithUnit(new Thickness(zone.meanUm().getAsDouble()), unit))
                : Optional.empty();
    }

    private Optional<String> likelihood(ZoneId zone) {
        return visit.findings()
                .flatMap(f -> f.history().zone(zone))
                .filter(z -> !z.reasons().isEmpty())
                .map(z -> parts.texts().get("diagram.refinish", ZoneHistory.shown(z.refinishScore())));
    }

    private Optional<String> rust(ZoneId zone) {
        return visit.findings()
                .flatMap(f -> f.rust().zone(zone))
                .flatMap(z -> z.gradeInWords())
                .map(words -> parts.texts().get("diagram.rust", words));
    }

    /** What it lacks of what was asked for, kind by kind, with the counts. */
    private Optional<String> coverage(ZoneId zone) {
        if (!layers.get().contains(Layer.COVERAGE)) {
            return Optional.empty();
        }
        return visit.coverage().stream()
                .filter(one -> one.zone().id().equals(zone) && one.asked() > 0)
                .findFirst()
                .map(one -> one.gaps().isEmpty()
                        ? parts.texts().get("diagram.covered")
                        : parts.texts()
                                .get(
                                        "diagram.lacks",
                                        one.gaps().stream().map(this::lacking).collect(Collectors.joining(", "))));
    }

    private String lacking(Gap gap) {
        String what = gap.part()
                .map(part -> gap.lacks().said() + " of " + part)
                .orElse(gap.lacks().said());
        return parts.texts().get("diagram.lacking", what, gap.have(), gap.want());
    }

    private Optional<String> photos(ZoneId zone) {
        long count = visit.visit().pins().stream()
                .filter(pin -> pin.value().zone().equals(zone))
                .map(pin -> pin.value().photo())
                .distinct()
                .count();
        return count == 0 ? Optional.empty() : Optional.of(parts.texts().get("diagram.photos", count));
    }
}
