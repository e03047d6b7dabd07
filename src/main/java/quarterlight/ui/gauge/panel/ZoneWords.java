package quarterlight.ui.gauge.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.car.ZoneId;
import quarterlight.findings.Findings;
import quarterlight.finish.FinishCautions;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.page.report.text.LikelihoodTexts;
import quarterlight.thickness.ZoneThickness;
import quarterlight.thickness.statistics.Outlier;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.Texts;
import quarterlight.units.Thickness;
import quarterlight.units.ThicknessUnit;

/** What the statistics and, in short, the finish history of one zone say, line by line. Pure functions. */
public final class ZoneWords {
    private ZoneWords() {}

    public static List<String> of(Texts texts, Findings car, ZoneId zone, ThicknessUnit unit) {
        List<String> lines = new ArrayList<>();
        car.thickness().zone(zone).ifPresent(thickness -> lines.addAll(statistics(texts, thickness, unit)));
        if (lines.isEmpty()) {
            lines.add(texts.get("gauge.no-readings"));
        }
        Optional<ZoneHistory> history = car.history().zone(zone);
        history.ifPresent(found -> history(texts, car, found, lines));
        return lines;
    }

    /** The statistics alone. */
    static List<String> statistics(Texts texts, ZoneThickness zone, ThicknessUnit unit) {
        List<String> lines = new ArrayList<>();
        if (!zone.readable()) {
            lines.add(texts.get("gauge.not-readable"));
        }
        lines.add(texts.get(
                "gauge.counts", zone.readings(), zone.valueSpots(), zone.noMetal(), zone.overRange(), zone.excluded()));
        lines.add(texts.get(
                "gauge.mean",
                shown(zone.meanUm(), unit),
                shown(zone.sdUm(), unit),
                shown(zone.showsInterval() ? zone.ci95LowUm() : OptionalDouble.empty(), unit),
                shown(zone.showsInterval() ? zone.ci95HighUm() : OptionalDouble.empty(), unit)));
        lines.add(texts.get(
                "gauge.median",
                shown(zone.medianUm(), unit),
                shown(zone.madUm(), unit),
                shown(zone.minUm(), unit),
                shown(zone.maxUm(), unit),
                Format.unit(unit)));
        for (Outlier outlier : zone.outliers()) {
            lines.add(texts.get(
                    "gauge.outlier",
                    shown(OptionalDouble.of(outlier.um()), unit),
                    outlier.rule().said()));
        }
        return lines;
    }

    private static String shown(OptionalDouble um, ThicknessUnit unit) {
        return um.isPresent() ? Format.thickness(new Thickness(um.getAsDouble()), unit) : "\u2013";
    }

    private static void history(Texts texts, Findings car, ZoneHistory zone, List<String> lines) {
        lines.addAll(LikelihoodTexts.sentences(zone).subList(0, 2));
        lines.add(texts.get("gauge.profile", car.history().profile().said()));
        lines.add(FinishCautions.texts().get(0));
    }
}
