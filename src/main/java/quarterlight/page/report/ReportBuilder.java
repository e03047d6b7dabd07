package quarterlight.page.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
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
import quarterlight.matters.Matter;
import quarterlight.matters.Matters;
import quarterlight.matters.rule.MatterRule;
import quarterlight.page.Anchor;
import quarterlight.page.FindingsInk;
import quarterlight.page.MatterLetters;
import quarterlight.page.PageFacts;
import quarterlight.page.ReportSelection;
import quarterlight.page.ThicknessRamp;
import quarterlight.page.report.back.Glossary;
import quarterlight.page.report.back.PhotoIndex;
import quarterlight.page.report.picture.PrintedPicture;
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

/** Puts the report together from its parts. */
final class ReportBuilder {
    /** Half the width of a page. */
    private static final double LARGE_WIDTH_MM = 86;

    private static final double MIDDLE_WIDTH_MM = 58;
    private static final double SHARE = 0.75;
    private static final double BESIDE_MM = 4;

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

    /** @param drawing the body diagram as an element of the page */
    ReportContent content(String drawing) {
        return content(drawing, Anchor.NONE, Optional.empty());
    }

    /**
     * The same.
     *
     * @param anchor what ties it to the evidence
     * @param heldBack how many papers and memos are not released
     */
    ReportContent content(String drawing, Anchor anchor, Optional<String> heldBack) {
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
                car.visit().facts().date().map(Days::day).orElse("date of the visit not given"),
                lead(targets.size()),
                facts,
                matters.all().stream()
                        .filter(m -> m.severity().compareTo(Severity.MINOR) >= 0)
                        .map(m -> matter(m, targets))
                        .toList(),
                NotLookedAt.of(car).sentences(),
                ClaimTexts.of(car),
                drawing,
                "Numbers in the zones: mean coating thickness in " + ramp.unitName()
                        + ". The legend below says what else is drawn." + MatterLetters.notDrawn(matters),
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
                own(),
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

    /** The inspector's own words on terms and limits. */
    private List<ReportContent.Paragraph> own() {
        List<ReportContent.Paragraph> own = new ArrayList<>();
        VisitChoices choices = car.visit().facts().choices();
        choices.limits().ifPresent(text -> own.add(new ReportContent.Paragraph("Limits of this visit", List.of(text))));
        choices.terms().ifPresent(text -> own.add(new ReportContent.Paragraph("Terms", List.of(text))));
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

    private static String mm(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    private boolean matter(ZoneId zone) {
        return matters.lettered().stream().anyMatch(matter -> matter.zones().contains(zone));
    }

    private List<String> lead(int chapters) {
        int readings = car.visit().readings().size();
        String measured = readings == 0
                ? "no coating thickness was measured"
                : readings + " gauge readings in " + car.thickness().zones().size() + " zones";
        long photos = shots.all().stream().map(Shots.Shot::frame).distinct().count();
        return List.of("What was seen, measured and tried on one visit: " + photos + " photos, " + measured + ", "
                + car.visit().marks().size() + " marks, " + car.visit().trials().size() + " trials, evidence on "
                + chapters
                + " zones. Every figure is shown with its basis.");
    }

    private ReportContent.MatterText matter(Matter matter, Set<String> targets) {
        List<ReportContent.Link> links = matter.zones().stream()
                .filter(zone -> targets.contains(ZoneTexts.id(zone)))
                .map(zone -> new ReportContent.Link(
                        ZoneTexts.id(zone), car.catalog().get(zone).label()))
                .toList();
        Optional<Shots.Shot> shot = matter.photos().stream()
                .flatMap(photo ->
                        shots.all().stream().filter(one -> one.frame().photo().equals(photo)))
                .findFirst();
        Optional<PrintedPicture> picture =
                shot.filter(one -> matter.letter().isPresent()).flatMap(one -> pictures.of(one.frame()));
        boolean grave = matter.severity() == Severity.GRAVE;
        double wide = grave ? LARGE_WIDTH_MM : MIDDLE_WIDTH_MM;
        double scale = picture.map(p -> Math.min(wide / p.width(), SHARE * wide / p.height()))
                .orElse(0.0);
        return new ReportContent.MatterText(
                matter.letter().map(String::valueOf).orElse(""),
                grave,
                matter.severity().word(),
                reason(matter),
                shot.filter(one -> selection.full())
                        .map(one -> new ReportContent.Link(one.id(), "photo " + one.number())),
                picture.isPresent() ? shot.orElseThrow().frame().address() : "",
                "Photo " + shot.map(Shots.Shot::number).orElse("") + " of " + matter.place(),
                picture.map(p -> mm(p.width() * scale)).orElse(""),
                picture.map(p -> mm(p.height() * scale)).orElse(""),
                mm(wide + BESIDE_MM),
                matter.place(),
                matter.sentence(),
                further(matter),
                matter.safety().isPresent(),
                links);
    }

    /** Why it is as severe as it is; empty where it is only as the inspector gave it. */
    private static String reason(Matter matter) {
        boolean given = matter.rule() == MatterRule.STATED && matter.decision().isEmpty();
        return given
                ? ""
                : matter.letter().isPresent() || matter.decision().isPresent()
                        ? matter.why()
                        : matter.rule().why();
    }

    /** What the evidence says beyond the sentence and the zones named above it. */
    private List<String> further(Matter matter) {
        return matter.further().stream()
                .filter(text -> !matter.isWidespread()
                        || !matter.zones().stream()
                                .allMatch(zone ->
                                        text.contains(car.catalog().get(zone).label())))
                .toList();
    }

    private List<String> leftOut(Optional<String> heldBack) {
        List<String> sentences = new ArrayList<>(selection.sentences(car.catalog()));
        heldBack.ifPresent(sentences::add);
        long aside = car.visit().photos().stream()
                .filter(photo -> photo.setAside().isPresent())
                .count();
        if (aside > 0) {
            sentences.add(Numerals.count(aside, "photo", "photos")
                    + " set aside by the inspector, for example as duplicates or blurry, and not used.");
        }
        return sentences;
    }

    private ReportContent.TrialRow row(Trial trial) {
        String value = trial.value()
                .map(v -> v.toPlainString() + "\u2009" + trial.unit().orElse(""))
                .orElse("");
        String zone = trial.zone()
                .map(id -> car.catalog().find(id).map(Zone::label).orElse(id.value()))
                .orElse("");
        return new ReportContent.TrialRow(
                trial.item(),
                trial.result().word(),
                value.strip(),
                zone,
                trial.note().orElse(""));
    }

    /** Gaps of one kind together, their zones in the order of the walk. */
    private List<ReportContent.GapRow> missing() {
        Map<String, List<Gap>> kinds = new LinkedHashMap<>();
        for (Gap gap : gaps) {
            if (selection.shows(gap.zone().id())) {
                kinds.computeIfAbsent(gap.lacks().word() + "\n" + gap.why(), kind -> new ArrayList<>())
                        .add(gap);
            }
        }
        return kinds.values().stream()
                .map(same -> new ReportContent.GapRow(
                        same.get(0).lacks().word(),
                        same.get(0).why(),
                        same.stream().map(ReportBuilder::named).collect(Collectors.joining("; "))))
                .toList();
    }

    private static String named(Gap gap) {
        List<String> more = new ArrayList<>();
        gap.part().ifPresent(more::add);
        if (gap.want() > 1) {
            more.add(gap.have() + " of " + gap.want());
        }
        gap.excuse().ifPresent(excuse -> more.add("not looked at: " + excuse));
        return gap.zone().label() + (more.isEmpty() ? "" : " (" + String.join(", ", more) + ")");
    }
}
