package quarterlight.page.report.text;

import static quarterlight.language.Sentences.say;

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
                .map(pair -> label(car, pair.left()).replaceFirst(", (left|links)", "") + " "
                        + number(pair.difference(), ramp))
                .collect(Collectors.joining("; "));
        if (!sides.isEmpty()) {
            sentences.add(say("report.panel-texts.left-minus-right-in-with", ramp.unitName(), sides));
        }
        String apart = found.against().stream()
                .filter(one -> one.difference().isClear() && selection.shows(one.zone()))
                .map(one -> label(car, one.zone()) + " " + number(one.difference(), ramp))
                .collect(Collectors.joining("; "));
        if (!apart.isEmpty()) {
            sentences.add(say("report.panel-texts.clearly-different-from-the-rest", apart));
        }
        found.components().ifPresent(scatter -> sentences.add(words(scatter, ramp)));
        return sentences;
    }

    private static String words(VarianceComponents scatter, ThicknessRamp ramp) {
        return say(
                "report.panel-texts.standard-deviation-between-panels",
                ramp.number(scatter.sdBetween()),
                ramp.number(scatter.sdWithin()),
                ramp.unitName(),
                scatter.between() == 0 ? say("report.panel-texts.panels-differ-by-no-more") : ".");
    }

    private static String number(MeanDifference difference, ThicknessRamp ramp) {
        return say(
                "report.panel-texts.to",
                signed(difference.difference(), ramp),
                signed(difference.low(), ramp),
                signed(difference.high(), ramp));
    }

    private static String signed(double um, ThicknessRamp ramp) {
        return (um > 0 ? "+" : "") + ramp.number(um);
    }

    private static String label(Findings car, ZoneId zone) {
        Optional<Zone> found = car.catalog().find(zone);
        return found.map(Zone::label).orElse(zone.value());
    }
}
