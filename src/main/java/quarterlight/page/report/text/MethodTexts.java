package quarterlight.page.report.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import quarterlight.about.ProgramVersion;
import quarterlight.capture.CameraClock;
import quarterlight.car.ZoneId;
import quarterlight.findings.Findings;
import quarterlight.finish.FinishCautions;
import quarterlight.finish.FinishHistory;
import quarterlight.finish.history.Scenario;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.finish.number.FactoryLevel;
import quarterlight.matters.rule.MatterRule;
import quarterlight.page.Anchor;
import quarterlight.page.PageFacts;
import quarterlight.page.ThicknessRamp;
import quarterlight.rust.RiDegree;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.trial.TrialResult;

/** How the figures came about, what they cannot tell, and the published sources behind them. */
public final class MethodTexts {
    private MethodTexts() {}

    /** @param anchor what ties the pages to the evidence */
    public static List<ReportContent.Paragraph> method(Findings car, ThicknessRamp ramp, Anchor anchor) {
        List<ReportContent.Paragraph> method = new ArrayList<>(
                List.of(thickness(car, ramp), finish(car, ramp), rust(), marks(), order(), photos(car)));
        method.addAll(record(anchor));
        return method;
    }

    /** What ties the pages to the visit and to the program. */
    public static List<ReportContent.Paragraph> record(Anchor anchor) {
        List<ReportContent.Paragraph> record = new ArrayList<>();
        List<String> anchored = anchored(anchor);
        if (!anchored.isEmpty()) {
            record.add(new ReportContent.Paragraph("Record", anchored));
        }
        record.add(new ReportContent.Paragraph("Versions", List.of(versions())));
        return record;
    }

    /** By which program and rules the pages were made. */
    static String versions() {
        return "Made by " + ProgramVersion.ours().text() + "; model of finish history version " + FinishHistory.VERSION
                + "; rule of what matters version " + MatterRule.VERSION + ".";
    }

    private static List<String> anchored(Anchor anchor) {
        List<String> sentences = new ArrayList<>();
        anchor.logHead().ifPresent(head -> {
            String[] parts = head.split(" ");
            sentences.add("When these pages were made, the visit's edit log ended with entry " + parts[0]
                    + ", whose hash (SHA-256) is "
                    + parts[parts.length - 1]
                    + ". If that entry still stands in the log of the visit or of its archive, nothing that was"
                    + " entered before these pages were made has been changed unseen since.");
        });
        anchor.key()
                .ifPresent(print -> sentences.add("Archives of this visit are signed; the fingerprint (SHA-256) of the"
                        + " inspector's key is " + print
                        + ". A good signature proves that the holder of that key signed these bytes; the time of"
                        + " signing is the signer's word."));
        anchor.archive().ifPresent(hash -> sentences.add("The archive made last: " + hash + "."));
        return sentences;
    }

    private static ReportContent.Paragraph thickness(Findings car, ThicknessRamp ramp) {
        List<String> sentences = new ArrayList<>(List.of(
                "Readings at one place make a spot and count by their mean; mean, standard deviation and interval are"
                        + " over spots, median and range over readings. Outliers are pointed out, never dropped.",
                "A gauge reads the distance to metal: by magnetic induction to steel, by eddy current to aluminum."
                        + " Fiberglass, plastic and wood cannot be read.",
                "Thickness alone proves nothing. Filler and lead count as substrate in some published guidance."));
        List<String> other = car.visit().facts().car().substrates().entrySet().stream()
                .map(e -> label(car, e.getKey()) + " (" + e.getValue().word() + ")")
                .sorted()
                .toList();
        sentences.add("Zones are taken to be of "
                + car.visit().facts().car().substrate().word()
                + (other.isEmpty() ? "." : ", save " + String.join(", ", other) + "."));
        sentences.addAll(PanelTexts.of(car, ramp));
        return new ReportContent.Paragraph("Coating thickness", sentences);
    }

    static ReportContent.Paragraph finish(Findings car, ThicknessRamp ramp) {
        FinishHistory history = car.history();
        FactoryLevel level = FactoryLevel.of(history.profile());
        List<String> sentences = new ArrayList<>(history.remarks());
        sentences.add("Refinish and repair likelihoods follow from a stated model (version " + FinishHistory.VERSION
                + "): what each history of a panel would lead one to expect of thickness, signs and rust, weighed"
                + " against what was found. Most of its numbers are judgments from common practice, without a"
                + " published source; they are not fixed but averaged over their plausible ranges.");
        if (history.zones().isEmpty()) {
            sentences.add("No panel has a reading or a sign, so nothing is said of the finish.");
            return new ReportContent.Paragraph("Finish history", sentences);
        }
        sentences.add(String.format(
                Locale.US,
                "Finish profile: %s, whose factory level is taken to be about %s\u2009%s before measuring. From the"
                        + " readings it is %s\u2009%s, standard deviation %s\u2009%s.",
                history.profile().word(),
                ramp.number(ThicknessUnit.MIL.toUm(level.medianMil())),
                ramp.unitName(),
                ramp.number(history.carLevel().um()),
                ramp.unitName(),
                ramp.number(history.carLevelSd().um()),
                ramp.unitName()));
        sentences.add("Of the car after all evidence: "
                + Arrays.stream(Scenario.values())
                        .map(s -> words(s) + " " + percent(history.scenarios().get(s)))
                        .collect(Collectors.joining(", "))
                + ".");
        sentences.add("The band of a likelihood runs from the 5th to the 95th percentile over the ranges of the judged"
                + " numbers.");
        sentences.add(
                "A reason's figure is how far the logarithm (base 10) of the odds moves when that evidence is left"
                        + " out; above 0 points to refinishing. Reasons do not add up.");
        return new ReportContent.Paragraph("Finish history", sentences);
    }

    private static String words(Scenario scenario) {
        return switch (scenario) {
            case AS_BUILT -> "as built";
            case SOME_PANELS -> "some panels refinished";
            case WHOLE_CAR_OVER -> "whole car refinished over its finish";
            case WHOLE_CAR_STRIPPED -> "whole car stripped and refinished";
        };
    }

    private static String percent(double share) {
        return ZoneHistory.shown(share) + "\u2009%";
    }

    private static ReportContent.Paragraph rust() {
        return new ReportContent.Paragraph(
                "Rust",
                List.of(
                        "Rust is outlined on a photo and measured against something of known size on the same photo;"
                                + " the figure after \u00b1 is one standard deviation from the marking alone. Outlines on"
                                + " one photo are merged.",
                        "The share is of the zone's nominal area, an estimate (panels to 10 to 20\u2009%, edges and"
                                + " bay to 40\u2009%, underbody to 50\u2009%). Grades: ASTM D610,"
                                + " with a suggested letter; " + RiDegree.rule() + ".",
                        "A zone that was not looked at is not a clean zone."));
    }

    private static ReportContent.Paragraph marks() {
        return new ReportContent.Paragraph(
                "Marks and dates",
                List.of("A mark is printed as it was read; a letter that could not be read is a question mark. Its"
                        + " dates are all dates that a known pattern allows. A part dated after the car was not on"
                        + " it when it was built; one dated up to the usual lead before it fits. That a date fits"
                        + " does not prove that the part was there from the beginning."));
    }

    private static ReportContent.Paragraph order() {
        return new ReportContent.Paragraph(
                "What matters most",
                List.of("Every finding has a severity by one written rule from common practice, version "
                        + MatterRule.VERSION
                        + ": statements, trials, gauge checks, rust, finish, dates, numbers, claims and what was not"
                        + " looked at. It is an order for reading, not a price."));
    }

    private static ReportContent.Paragraph photos(Findings car) {
        List<String> sentences = new ArrayList<>();
        sentences.add(
                "Photos are printed reduced and without the data their files carry; the originals are kept unaltered"
                        + " with the visit. Times are local to the visit ("
                        + car.visit().facts().timezone() + ").");
        for (CameraClock clock : car.times().cameras()) {
            if (!clock.shift().isZero()) {
                long seconds = clock.shift().abs().toSeconds();
                sentences.add(String.format(
                        Locale.US,
                        "The clock of one camera (%d photos) was set %s by %d:%02d:%02d.",
                        clock.photos(),
                        clock.shift().isNegative() ? "back" : "forward",
                        seconds / 3600,
                        seconds / 60 % 60,
                        seconds % 60));
            }
        }
        return new ReportContent.Paragraph("Photos and times", sentences);
    }

    public static List<String> cautions(Findings car) {
        List<String> cautions = new ArrayList<>(FinishCautions.texts());
        PageFacts.cautions(car).forEach(cautions::add);
        cautions.add(FinishCautions.oldPaint());
        boolean bypassed = car.visit().trials().stream().anyMatch(t -> t.value().result() == TrialResult.BYPASSED);
        if (bypassed) {
            cautions.add("With a bypassed interlock the engine can be cranked in gear and the car can move: chock the"
                    + " wheels, keep clear, and have it put right by someone licensed for it before the car is"
                    + " used.");
        }
        cautions.add(
                "Work under a car, on fuel, on the battery and on brakes (old linings can hold asbestos) can injure:"
                        + " local rules and licensed people come first.");
        return cautions;
    }

    public static List<String> sources() {
        return List.of(
                "ISO 2178 and ISO 2360: magnetic induction and eddy current methods, their scopes.",
                "ASTM D7091: checking a gauge, combined tolerance of gauge and shim (from memory).",
                "SSPC-PA 2: spots, and readings that do not repeat (from memory).",
                "JCGM 100:2008 (GUM), 5.1 and annex G.4: combining uncertainties.",
                "ENFSI guideline for evaluative reporting in forensic science (2015): words for the weight of"
                        + " evidence.",
                "ASTM D610-08 (2012), table 1; ISO 4628-3 (2003, 2016) as tabulated by a coating consultancy: grades"
                        + " of rust.",
                "49 CFR 565 and 574.5: vehicle identification numbers and tire dates. ISO 8601: weeks.",
                "Factory levels of finish: a German leaflet on total paint thickness (Mar 11, 2025); I-CAR note on"
                        + " clearcoat thickness; W. C. Anderson, Old Cars Weekly restoration series, part 9 (2010).",
                "Everything else, especially weights of signs, repair needs, what a visit must cover and the order of"
                        + " what matters, is common practice without a published source.");
    }

    private static String label(Findings car, ZoneId zone) {
        return car.catalog().find(zone).map(z -> z.label()).orElse(zone.value());
    }
}
