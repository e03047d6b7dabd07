package quarterlight.page.report.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.findings.Findings;
import quarterlight.page.ReportSelection;
import quarterlight.page.ThicknessRamp;
import quarterlight.thickness.CarThickness;
import quarterlight.thickness.statistics.MeanDifference;
import quarterlight.thickness.statistics.VarianceComponents;

/** The panels set against one another: left less right, each less the rest where that is clear, and the scatter. */
final class PanelTexts {
    private PanelTexts() {}

    /** Full sentences; none if too little was measured. */
    static List<String> of(Findings car, ThicknessRamp ramp) {
        CarThickness found = CarThickness.of(car.thickness(), car.catalog());
        ReportSelection selection = ReportSelection.of(car.visit());
        List<String> sentences = new ArrayList<>();
        String sides = found.sides().stream()
                .filter(pair -> selection.shows(pair.left()) && selection.shows(pair.right()))
                .map(pair -> label(car, pair.left()).replace(", left", "") + " " + number(pair.difference(), ramp))
                .collect(Collectors.joining("; "));
        if (!sides.isEmpty()) {
            sentences.add("Left minus right, in " + ramp.unitName() + " with 95\u2009% intervals: " + sides + ".");
        }
        String apart = found.against().stream()
                .filter(one -> one.difference().isClear() && selection.shows(one.zone()))
                .map(one -> label(car, one.zone()) + " " + number(one.difference(), ramp))
                .collect(Collectors.joining("; "));
        if (!apart.isEmpty()) {
            sentences.add("Clearly different from the rest of the car: " + apart + ".");
        }
        found.components().ifPresent(scatter -> sentences.add(words(scatter, ramp)));
        return sentences;
    }

    private static String words(VarianceComponents scatter, ThicknessRamp ramp) {
        return "Standard deviation between panels " + ramp.number(scatter.sdBetween()) + ", within a panel "
                + ramp.number(scatter.sdWithin()) + "\u2009" + ramp.unitName()
                + (scatter.between() == 0 ? "; panels differ by no more than spots within a panel do." : ".");
    }

    private static String number(MeanDifference difference, ThicknessRamp ramp) {
        return signed(difference.difference(), ramp) + " (" + signed(difference.low(), ramp) + " to "
                + signed(difference.high(), ramp) + ")";
    }

    private static String signed(double um, ThicknessRamp ramp) {
        return (um > 0 ? "+" : "") + ramp.number(um);
    }

    private static String label(Findings car, ZoneId zone) {
        Optional<Zone> found = car.catalog().find(zone);
        return found.map(Zone::label).orElse(zone.value());
    }
}
