package quarterlight.page.report.text;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quarterlight.car.Zone;
import quarterlight.findings.Findings;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.page.PageFacts;
import quarterlight.page.ThicknessRamp;
import quarterlight.rust.ZoneRust;
import quarterlight.thickness.ZoneThickness;

/** Measured panels of which nothing is to be said but that they are as expected: one line each, with a strip. */
public final class PanelRows {
    private final Findings car;
    private final ThicknessRamp spots;

    /** @param spots a scale wide enough for every spot */
    public PanelRows(Findings car, ThicknessRamp spots) {
        this.car = car;
        this.spots = spots;
    }

    /** The line of a panel with its chapter, which is not shown at length. */
    public ReportContent.PanelRow of(Zone zone, ReportContent.ZoneText chapter) {
        Optional<ZoneThickness> measured = car.thickness().zone(zone.id());
        List<String> words = new ArrayList<>();
        chapter.statements().forEach(said -> words.add(said.text()));
        car.history()
                .zone(zone.id())
                .map(found ->
                        say("report.panel-rows.refinish-likelihood-of-100", ZoneHistory.shown(found.refinishScore())))
                .ifPresent(words::add);
        car.rust()
                .zone(zone.id())
                .filter(ZoneRust::lookedAt)
                .ifPresent(rust -> words.add(say("report.panel-rows.rust", PageFacts.rust(rust))));
        return new ReportContent.PanelRow(
                chapter.id(),
                chapter.name(),
                measured.map(found -> PageFacts.mean(found, spots)).orElse(PageFacts.DASH),
                measured.map(found -> Integer.toString(found.spots().size())).orElse("0"),
                measured.filter(found -> !found.spots().isEmpty())
                        .map(found -> StripPlot.line(car, spots, found, chapter.name()))
                        .orElse(""),
                words,
                chapter.photos().stream()
                        .map(photo ->
                                new ReportContent.Link(photo.id(), say("report.panel-rows.photo", photo.number())))
                        .toList());
    }
}
