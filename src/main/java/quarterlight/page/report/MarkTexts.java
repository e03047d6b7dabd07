package quarterlight.page.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.findings.Findings;
import quarterlight.units.Worded;
import quarterlight.visit.Feature;
import quarterlight.visit.Mark;
import quarterlight.visit.Recorded;

/** Marks as read and as decoded, and the features that date a car. */
final class MarkTexts {
    private final Findings car;
    private final Shots shots;

    MarkTexts(Findings car, Shots shots) {
        this.car = car;
        this.shots = shots;
    }

    ReportContent.MarksText text() {
        return new ReportContent.MarksText(
                "",
                car.visit().marks().stream().map(Recorded::value).map(this::row).toList(),
                car.visit().features().stream()
                        .map(Recorded::value)
                        .map(MarkTexts::row)
                        .toList(),
                List.of());
    }

    private ReportContent.MarkRow row(Mark mark) {
        List<String> more = new ArrayList<>();
        mark.expected().ifPresent(expected -> more.add("should read " + expected));
        mark.note().ifPresent(more::add);
        String kind = Stream.concat(Stream.of(mark.kind().word()), mark.stage().map(Worded::word).stream())
                .collect(Collectors.joining(", "));
        return new ReportContent.MarkRow(
                mark.part(), kind, mark.text(), "", "", "", String.join("; ", more), shots.link(mark.photo()));
    }

    private static ReportContent.FeatureRow row(Feature feature) {
        Optional<Boolean> fitted = feature.fitted();
        return new ReportContent.FeatureRow(
                feature.feature(),
                feature.from().text() + " to " + feature.to().text(),
                fitted.isEmpty() ? "not established" : fitted.get() ? "this car has it" : "this car has it not",
                feature.note().orElse(""));
    }
}
