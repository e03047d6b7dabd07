package quarterlight.page.report.text;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.findings.Findings;
import quarterlight.marks.MarksReport;
import quarterlight.marks.TimeLine;
import quarterlight.marks.code.DateCandidate;
import quarterlight.marks.judge.DateText;
import quarterlight.marks.judge.JudgedFeature;
import quarterlight.marks.judge.JudgedMark;
import quarterlight.page.line.TimeLineDrawing;
import quarterlight.page.line.TimeLineSvg;
import quarterlight.page.print.DrawnSvg;
import quarterlight.units.Days;
import quarterlight.units.Worded;
import quarterlight.visit.mark.Feature;
import quarterlight.visit.mark.Mark;

/** Marks as read and as decoded, and the features that date a car. */
public final class MarkTexts {
    private static final int NAMED = 3;
    private static final double WIDTH_MM = 178;
    private static final double WIDTH_PX = 760;

    private final Findings car;
    private final Shots shots;

    public MarkTexts(Findings car, Shots shots) {
        this.car = car;
        this.shots = shots;
    }

    public ReportContent.MarksText text() {
        List<String> sentences = new ArrayList<>();
        if (!car.visit().marks().isEmpty() || !car.visit().features().isEmpty()) {
            sentences.add(car.marks()
                    .window()
                    .map(window -> say("report.mark-texts.build-date-used", DateText.of(window)))
                    .orElse(say("report.mark-texts.neither-a-build-date-nor")));
            car.marks().contradictions().forEach(clash -> sentences.add(clash.sentence()));
            if (car.marks().contradictions().isEmpty()) {
                sentences.add(say("report.mark-texts.no-date-number-or-feature"));
            }
            sentences.add(MarksReport.caution());
        }
        return new ReportContent.MarksText(
                TimeLine.of(car.marks()).map(MarkTexts::line).orElse(""),
                car.marks().marks().stream().map(this::row).toList(),
                car.marks().features().stream().map(MarkTexts::row).toList(),
                sentences);
    }

    private static String line(TimeLine line) {
        TimeLineDrawing drawing = new TimeLineDrawing(line, InkPalette.LIGHT, TextMeasure.bundled(), WIDTH_PX);
        String name = say("report.mark-texts.time-line-of-the-dates");
        return DrawnSvg.sized(
                TimeLineSvg.element(drawing, name), WIDTH_MM, WIDTH_MM * drawing.heightPx() / WIDTH_PX, name);
    }

    private ReportContent.MarkRow row(JudgedMark judged) {
        Mark mark = judged.mark();
        List<String> more = new ArrayList<>();
        mark.expected().ifPresent(expected -> more.add(say("report.mark-texts.should-read", expected)));
        more.addAll(judged.decoded());
        if (judged.witnesses() > 1) {
            more.add(say("report.mark-texts.views", judged.witnesses()));
        }
        mark.note().ifPresent(more::add);
        String kind = Stream.concat(Stream.of(mark.kind().said()), mark.stage().map(Worded::said).stream())
                .collect(Collectors.joining(", "));
        return new ReportContent.MarkRow(
                mark.part(),
                kind,
                mark.text(),
                dates(judged.candidates()),
                judged.verdict().said(),
                judged.why(),
                String.join("; ", more),
                shots.link(mark.photo()));
    }

    /** The likeliest first; of many the rest by their number. */
    private static String dates(List<DateCandidate> candidates) {
        String named = candidates.stream().limit(NAMED).map(DateText::of).collect(Collectors.joining("; "));
        return candidates.size() > NAMED ? say("report.mark-texts.and-more", named, candidates.size() - NAMED) : named;
    }

    private static ReportContent.FeatureRow row(JudgedFeature judged) {
        Feature feature = judged.feature();
        Optional<Boolean> fitted = feature.fitted();
        return new ReportContent.FeatureRow(
                feature.feature(),
                Days.span(feature.from().first(), feature.to().last()),
                fitted.isEmpty()
                        ? say("report.mark-texts.not-established")
                        : fitted.get()
                                ? say("report.mark-texts.this-car-has-it")
                                : say("report.mark-texts.not-on-this-car"),
                judged.verdict().said(),
                Stream.concat(Stream.of(judged.why()), feature.note().stream()).collect(Collectors.joining(" ")));
    }
}
