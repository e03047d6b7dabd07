package quarterlight.page.report;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.coverage.Gap;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ink.Surface;
import quarterlight.diagram.ink.ZoneLook;
import quarterlight.findings.Findings;
import quarterlight.findings.NotLookedAt;
import quarterlight.matters.Matters;
import quarterlight.page.Anchor;
import quarterlight.page.FindingsInk;
import quarterlight.page.MatterLetters;
import quarterlight.page.PageFacts;
import quarterlight.page.ReportSelection;
import quarterlight.page.ThicknessRamp;
import quarterlight.page.brief.BriefPage;
import quarterlight.page.print.Paper;
import quarterlight.page.report.back.Glossary;
import quarterlight.page.report.back.PhotoIndex;
import quarterlight.page.report.picture.ReportPictures;
import quarterlight.page.report.text.ClaimTexts;
import quarterlight.page.report.text.GaugeTexts;
import quarterlight.page.report.text.MarkTexts;
import quarterlight.page.report.text.MethodTexts;
import quarterlight.page.report.text.PanelRows;
import quarterlight.page.report.text.ReadingTexts;
import quarterlight.page.report.text.ReportContent;
import quarterlight.page.report.text.Shots;
import quarterlight.page.report.text.StripPlot;
import quarterlight.page.report.text.ZoneTexts;
import quarterlight.units.Days;
import quarterlight.units.Numerals;
import quarterlight.visit.VisitChoices;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.trial.Trial;
import quarterlight.visit.trial.TrialNames;

/** Puts the report together from its parts. */
final class ReportBuilder {
    private final Findings car;
    private final Matters matters;
    private final List<Gap> gaps;
    private final ReportSelection selection;
    private final Shots shots;
    private final ReportPictures pictures;
    private final ThicknessRamp ramp;
    private final ZoneTexts.PhotoWords words;
    private final Map<RecordId, String> said;
    private final BodyDiagram diagram;

    ReportBuilder(
            Findings car,
            Matters matters,
            List<Gap> gaps,
            ReportSelection selection,
            Shots shots,
            ReportPictures pictures,
            ThicknessRamp ramp,
            ZoneTexts.PhotoWords words,
            Map<RecordId, String> said,
            BodyDiagram diagram) {
        this.car = car;
        this.matters = matters;
        this.gaps = gaps;
        this.selection = selection;
        this.shots = shots;
        this.pictures = pictures;
        this.ramp = ramp;
        this.words = words;
        this.said = said;
        this.diagram = diagram;
    }

    /**
     * The whole of it, but for the drawing.
     *
     * @param anchor what ties it to the evidence
     * @param heldBack how many papers and memos are not released
     * @param brief the first page, if it has one
     */
    ReportContent content(Paper paper, Anchor anchor, Optional<String> heldBack, Optional<BriefPage> brief) {
        MatterTexts full = new MatterTexts(
                car,
                shots,
                pictures,
                selection.full(),
                paper,
                brief.map(BriefPage::closer).orElse(Map.of()));
        ThicknessRamp spots = ramp.holdingSpots(car);
        ReadingTexts readings = new ReadingTexts(car, ramp, spots, selection.full(), diagram);
        ZoneTexts chapters = new ZoneTexts(car, shots, pictures, readings, words, said);
        Parts parts = parts(chapters, new PanelRows(car, spots));
        Set<String> targets = parts.targets();
        List<ReportContent.Fact> facts = new ArrayList<>();
        PageFacts.visit(car).forEach((label, text) -> facts.add(new ReportContent.Fact(label, text)));
        List<String> cautions = MethodTexts.cautions(car);
        List<String> rustCautions = parts.speaking().stream()
                .flatMap(zone -> zone.rust().stream())
                .flatMap(rust -> rust.cautions().stream())
                .distinct()
                .toList();
        ReportContent content = new ReportContent(
                car.visit().facts().car().name(),
                car.visit().facts().date().map(Days::day).orElse(say("report.report-builder.date-of-the-visit-not")),
                lead(targets.size()),
                facts,
                matters.all().stream()
                        .filter(m -> m.severity().compareTo(Severity.MINOR) >= 0)
                        .map(m -> full.of(m, targets))
                        .toList(),
                NotLookedAt.of(car).sentences(),
                ClaimTexts.of(car),
                "",
                say(
                        "report.report-builder.numbers-in-the-zones-mean",
                        ramp.unitName(),
                        MatterLetters.notDrawn(matters)),
                ramp.unitName(),
                parts.panels().isEmpty() ? "" : StripPlot.axis(car, spots),
                parts.speaking(),
                parts.panels(),
                parts.panelPhotos(),
                parts.quiet(),
                parts.experts(),
                selection.full() ? chapters.photos(shots.withoutZone()) : List.of(),
                leftOut(heldBack),
                new MarkTexts(car, shots).text(),
                car.visit().trials().stream()
                        .map(Recorded::value)
                        .map(this::row)
                        .toList(),
                missing(),
                new GaugeTexts(car, ramp).text(),
                selection.full() ? MethodTexts.method(car, ramp, anchor) : MethodTexts.record(anchor),
                cautions,
                IntStream.range(0, cautions.size())
                        .filter(i -> i != 0 && i != 2 && !rustCautions.contains(cautions.get(i)))
                        .mapToObj(cautions::get)
                        .toList(),
                rustCautions,
                own(brief),
                selection.full() ? PhotoIndex.of(car, shots) : List.of(),
                List.of(),
                MethodTexts.sources());
        return content.withGlossary(Glossary.of(content));
    }

    /** The zones by how much is to be said of them. */
    private record Parts(
            List<ReportContent.ZoneText> speaking,
            List<ReportContent.PanelRow> panels,
            List<ReportContent.PhotoText> panelPhotos,
            List<ReportContent.ZoneText> quiet,
            List<ReportContent.ZoneText> experts) {
        Set<String> targets() {
            Set<String> targets = new LinkedHashSet<>();
            speaking.forEach(zone -> targets.add(zone.id()));
            panels.forEach(panel -> targets.add(panel.target()));
            quiet.forEach(zone -> targets.add(zone.id()));
            return targets;
        }
    }

    private Parts parts(ZoneTexts chapters, PanelRows rows) {
        Parts parts = new Parts(
                new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        if (!selection.full()) {
            return parts;
        }
        Map<ZoneId, ZoneLook> looks = FindingsInk.of(car, ramp, List.of()).looks();
        for (Zone zone : zones()) {
            Optional<ReportContent.ZoneText> chapter = chapters.of(zone);
            if (chapter.isEmpty()) {
                continue;
            }
            boolean speaks = matter(zone.id()) || isMarked(looks.getOrDefault(zone.id(), ZoneLook.NONE));
            boolean measured = chapter.get().readings().isPresent();
            if (speaks) {
                parts.speaking().add(chapter.get());
            } else if (measured) {
                parts.panels().add(rows.of(zone, chapter.get()));
                parts.panelPhotos().addAll(chapter.get().photos());
            } else {
                parts.quiet().add(chapter.get());
            }
            if (measured || chapter.get().likelihood().isPresent()) {
                parts.experts().add(chapter.get());
            }
        }
        return parts;
    }

    /** Whether the drawing shows more of a zone than a usual value. */
    private static boolean isMarked(ZoneLook look) {
        return look.step().orElse(0) != 0 || look.hatch() > 0 || look.stipple() > 0 || look.surface() != Surface.PLAIN;
    }

    /** The inspector's own words on terms and limits, and what the first page had no room for. */
    private List<ReportContent.Paragraph> own(Optional<BriefPage> brief) {
        List<ReportContent.Paragraph> own = new ArrayList<>();
        List<String> cut = brief.stream()
                .flatMap(page -> page.content().whole().stream())
                .map(fact -> fact.label() + ": " + fact.text())
                .toList();
        if (!cut.isEmpty()) {
            own.add(new ReportContent.Paragraph(say("report.report-builder.what-page-1-has-no"), cut));
        }
        VisitChoices choices = car.visit().facts().choices();
        choices.limits()
                .ifPresent(text -> own.add(
                        new ReportContent.Paragraph(say("report.report-builder.limits-of-this-visit"), List.of(text))));
        choices.terms()
                .ifPresent(text ->
                        own.add(new ReportContent.Paragraph(say("report.report-builder.terms"), List.of(text))));
        return own;
    }

    private List<Zone> zones() {
        Set<ZoneId> own = car.catalog().zonesOf(car.visit().facts().car().body()).stream()
                .map(Zone::id)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        car.visit().statements().forEach(row -> own.add(row.value().zone()));
        shots.all().forEach(shot -> shot.zone().ifPresent(own::add));
        return car.catalog().all().stream()
                .filter(zone -> own.contains(zone.id()) && selection.shows(zone.id()))
                .toList();
    }

    private boolean matter(ZoneId zone) {
        return matters.lettered().stream().anyMatch(matter -> matter.zones().contains(zone));
    }

    private List<String> lead(int chapters) {
        int readings = car.visit().readings().size();
        String measured = readings == 0
                ? say("report.report-builder.no-coating-thickness-was-measured")
                : say(
                        "report.report-builder.gauge-readings-in-zones",
                        readings,
                        car.thickness().zones().size());
        long photos = shots.all().stream().map(Shots.Shot::frame).distinct().count();
        return List.of(say(
                "report.report-builder.what-was-seen-measured-and",
                photos,
                measured,
                car.visit().marks().size(),
                car.visit().trials().size(),
                chapters));
    }

    private List<String> leftOut(Optional<String> heldBack) {
        List<String> sentences = new ArrayList<>(selection.sentences(car.catalog()));
        heldBack.ifPresent(sentences::add);
        long aside = car.visit().photos().stream()
                .filter(photo -> photo.setAside().isPresent())
                .count();
        if (aside > 0) {
            sentences.add(say("report.report-builder.photos-set-aside-by-the", aside));
        }
        return sentences;
    }

    private ReportContent.TrialRow row(Trial trial) {
        String value = trial.value()
                .map(v -> Numerals.typed(v) + "\u2009" + trial.unit().orElse(""))
                .orElse("");
        String zone = trial.zone()
                .map(id -> car.catalog().find(id).map(Zone::label).orElse(id.value()))
                .orElse("");
        return new ReportContent.TrialRow(
                TrialNames.said(trial.item()),
                trial.result().said(),
                value.strip(),
                zone,
                trial.note().orElse(""));
    }

    /** Gaps of one kind together, their zones in the order of the walk. */
    private List<ReportContent.GapRow> missing() {
        Map<String, List<Gap>> kinds = new LinkedHashMap<>();
        for (Gap gap : gaps) {
            if (selection.shows(gap.zone().id())) {
                kinds.computeIfAbsent(gap.lacks().said() + "\n" + gap.why(), kind -> new ArrayList<>())
                        .add(gap);
            }
        }
        return kinds.values().stream()
                .map(same -> new ReportContent.GapRow(
                        same.get(0).lacks().said(),
                        same.get(0).why(),
                        same.stream().map(ReportBuilder::named).collect(Collectors.joining("; "))))
                .toList();
    }

    private static String named(Gap gap) {
        List<String> more = new ArrayList<>();
        gap.part().ifPresent(more::add);
        if (gap.want() > 1) {
            more.add(say("report.report-builder.of", gap.have(), gap.want()));
        }
        gap.excuse().ifPresent(excuse -> more.add(say("report.report-builder.not-looked-at", excuse)));
        return gap.zone().label() + (more.isEmpty() ? "" : " (" + String.join(", ", more) + ")");
    }
}
