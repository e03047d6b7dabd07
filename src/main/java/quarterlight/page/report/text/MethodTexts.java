package quarterlight.page.report.text;

import static quarterlight.language.Sentences.figure;
import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
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
import quarterlight.visit.annotation.NoteShape;
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
            record.add(new ReportContent.Paragraph(say("report.method-texts.record"), anchored));
        }
        record.add(new ReportContent.Paragraph(say("report.method-texts.versions"), List.of(versions())));
        return record;
    }

    /** By which program and rules the pages were made. */
    static String versions() {
        return say(
                "report.method-texts.made-by-model-of-finish",
                ProgramVersion.ours().text(),
                FinishHistory.VERSION,
                MatterRule.VERSION);
    }

    private static List<String> anchored(Anchor anchor) {
        List<String> sentences = new ArrayList<>();
        anchor.logHead().ifPresent(head -> {
            String[] parts = head.split(" ");
            sentences.add(say("report.method-texts.when-these-pages-were-made", parts[0], parts[parts.length - 1]));
        });
        anchor.key().ifPresent(print -> sentences.add(say("report.method-texts.archives-of-this-visit-are", print)));
        anchor.archive().ifPresent(hash -> sentences.add(say("report.method-texts.the-archive-made-last", hash)));
        return sentences;
    }

    private static ReportContent.Paragraph thickness(Findings car, ThicknessRamp ramp) {
        List<String> sentences = new ArrayList<>(List.of(
                say("report.method-texts.readings-at-one-place-make"),
                say("report.method-texts.a-gauge-reads-the-distance"),
                say("report.method-texts.thickness-alone-proves-nothing")));
        List<String> other = car.visit().facts().car().substrates().entrySet().stream()
                .map(e -> label(car, e.getKey()) + " (" + e.getValue().said() + ")")
                .sorted()
                .toList();
        sentences.add(say(
                "report.method-texts.zones-are-taken-to-be",
                car.visit().facts().car().substrate().said(),
                other.isEmpty() ? "." : say("report.method-texts.save", String.join(", ", other))));
        sentences.addAll(PanelTexts.of(car, ramp));
        return new ReportContent.Paragraph(say("report.method-texts.coating-thickness"), sentences);
    }

    static ReportContent.Paragraph finish(Findings car, ThicknessRamp ramp) {
        FinishHistory history = car.history();
        FactoryLevel level = FactoryLevel.of(history.profile());
        List<String> sentences = new ArrayList<>(history.remarks());
        sentences.add(say("report.method-texts.refinish-and-repair-likelihoods", FinishHistory.VERSION));
        if (history.zones().isEmpty()) {
            sentences.add(say("report.method-texts.no-panel-has-a-reading"));
            return new ReportContent.Paragraph(say("report.method-texts.finish-history"), sentences);
        }
        sentences.add(say(
                "report.method-texts.finish-profile-whose-factory-level",
                history.profile().said(),
                ramp.number(ThicknessUnit.MIL.toUm(level.medianMil())),
                ramp.unitName(),
                ramp.number(history.carLevel().um()),
                ramp.number(history.carLevelSd().um())));
        sentences.add(say(
                "report.method-texts.of-the-car-after-all",
                Arrays.stream(Scenario.values())
                        .map(s -> words(s) + " " + percent(history.scenarios().get(s)))
                        .collect(Collectors.joining(", "))));
        sentences.add(say("report.method-texts.the-band-of-a-likelihood"));
        sentences.add(say("report.method-texts.a-reason-s-figure-is"));
        return new ReportContent.Paragraph(say("report.method-texts.finish-history"), sentences);
    }

    private static String words(Scenario scenario) {
        return switch (scenario) {
            case AS_BUILT -> say("report.method-texts.as-built");
            case SOME_PANELS -> say("report.method-texts.some-panels-refinished");
            case WHOLE_CAR_OVER -> say("report.method-texts.whole-car-refinished-over-its");
            case WHOLE_CAR_STRIPPED -> say("report.method-texts.whole-car-stripped-and-refinished");
        };
    }

    private static String percent(double share) {
        return ZoneHistory.shown(share) + "\u2009%";
    }

    private static ReportContent.Paragraph rust() {
        return new ReportContent.Paragraph(
                say("report.method-texts.rust"),
                List.of(
                        say("report.method-texts.rust-is-outlined-on-a"),
                        say("report.method-texts.the-share-is-of-the", RiDegree.rule()),
                        say("report.method-texts.a-zone-that-was-not")));
    }

    private static ReportContent.Paragraph marks() {
        return new ReportContent.Paragraph(
                say("report.method-texts.marks-and-dates"), List.of(say("report.method-texts.a-mark-is-printed-as")));
    }

    private static ReportContent.Paragraph order() {
        return new ReportContent.Paragraph(
                say("report.method-texts.what-matters-most"),
                List.of(say("report.method-texts.every-finding-has-a-severity", MatterRule.VERSION)));
    }

    private static ReportContent.Paragraph photos(Findings car) {
        List<String> sentences = new ArrayList<>();
        sentences.add(say(
                "report.method-texts.photos-are-printed-reduced-and",
                car.visit().facts().timezone()));
        for (CameraClock clock : car.times().cameras()) {
            if (!clock.shift().isZero()) {
                long seconds = clock.shift().abs().toSeconds();
                sentences.add(say(
                        "report.method-texts.the-clock-of-one-camera",
                        clock.photos(),
                        clock.shift().isNegative()
                                ? say("report.method-texts.back")
                                : say("report.method-texts.forward"),
                        seconds / 3600,
                        figure("%02d", seconds / 60 % 60),
                        figure("%02d", seconds % 60)));
            }
        }
        if (car.visit().photoNotes().stream().anyMatch(note -> note.value().shape() == NoteShape.MEASURE)) {
            sentences.add(say("report.method-texts.a-length-on-a-photo"));
        }
        return new ReportContent.Paragraph(say("report.method-texts.photos-and-times"), sentences);
    }

    public static List<String> cautions(Findings car) {
        List<String> cautions = new ArrayList<>(FinishCautions.texts());
        PageFacts.cautions(car).forEach(cautions::add);
        cautions.add(FinishCautions.oldPaint());
        boolean bypassed = car.visit().trials().stream().anyMatch(t -> t.value().result() == TrialResult.BYPASSED);
        if (bypassed) {
            cautions.add(say("report.method-texts.with-a-bypassed-interlock-the"));
        }
        cautions.add(say("report.method-texts.work-under-a-car-on"));
        return cautions;
    }

    public static List<String> sources() {
        return List.of(
                say("report.method-texts.iso-2178-and-iso-2360"),
                say("report.method-texts.astm-d7091-checking-a-gauge"),
                say("report.method-texts.sspc-pa-2-spots-and"),
                say("report.method-texts.jcgm-100-2008-gum-5"),
                say("report.method-texts.enfsi-guideline-for-evaluative"),
                say("report.method-texts.astm-d610-08-2012-table"),
                say("report.method-texts.49-cfr-565-and-574"),
                say("report.method-texts.factory-levels-of-finish-a"),
                say("report.method-texts.everything-else-especially-weights"));
    }

    private static String label(Findings car, ZoneId zone) {
        return car.catalog().find(zone).map(z -> z.label()).orElse(zone.value());
    }
}
