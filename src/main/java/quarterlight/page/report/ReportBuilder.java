package quarterlight.page.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.coverage.Gap;
import quarterlight.diagram.BodyDiagram;
import quarterlight.findings.Findings;
import quarterlight.findings.Matter;
import quarterlight.findings.NotLookedAt;
import quarterlight.page.PageFacts;
import quarterlight.page.ReportSelection;
import quarterlight.page.ThicknessRamp;
import quarterlight.page.report.picture.ReportPictures;
import quarterlight.page.report.text.ClaimTexts;
import quarterlight.page.report.text.GaugeTexts;
import quarterlight.page.report.text.MarkTexts;
import quarterlight.page.report.text.MethodTexts;
import quarterlight.page.report.text.ReadingTexts;
import quarterlight.page.report.text.ReportContent;
import quarterlight.page.report.text.Shots;
import quarterlight.page.report.text.StripPlot;
import quarterlight.page.report.text.ZoneTexts;
import quarterlight.thickness.ZoneThickness;
import quarterlight.units.Days;
import quarterlight.visit.VisitChoices;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.trial.Trial;

/** Puts the report together from its parts. */
final class ReportBuilder {
    /** How many things matter most. */
    private static final int MAX_MATTERS = 5;

    private final Findings car;
    private final List<Matter> matters;
    private final List<Gap> gaps;
    private final ReportSelection selection;
    private final Shots shots;
    private final ReportPictures pictures;
    private final ThicknessRamp ramp;
    private final ZoneTexts.PhotoWords words;
    private final BodyDiagram diagram;

    ReportBuilder(
            Findings car,
            List<Matter> matters,
            List<Gap> gaps,
            ReportSelection selection,
            Shots shots,
            ReportPictures pictures,
            ThicknessRamp ramp,
            ZoneTexts.PhotoWords words,
            BodyDiagram diagram) {
        this.car = car;
        this.matters = matters;
        this.gaps = gaps;
        this.selection = selection;
        this.shots = shots;
        this.pictures = pictures;
        this.ramp = ramp;
        this.words = words;
        this.diagram = diagram;
    }

    /** @param drawing the body diagram as an element of the page */
    ReportContent content(String drawing) {
        return content(drawing, Optional.empty());
    }

    /**
     * The same.
     *
     * @param logHead number and hash of the last entry of the visit's edit log, which anchors it
     */
    ReportContent content(String drawing, Optional<String> logHead) {
        ThicknessRamp spots = ramp.holdingSpots(car);
        ReadingTexts readings = new ReadingTexts(car, ramp, spots, selection.full(), diagram);
        ZoneTexts chapters = new ZoneTexts(car, shots, pictures, readings, words);
        List<ReportContent.ZoneText> zones = zones().stream()
                .filter(zone -> selection.full() || matter(zone.id()))
                .map(chapters::of)
                .flatMap(Optional::stream)
                .toList();
        Set<String> targets = zones.stream().map(ReportContent.ZoneText::id).collect(Collectors.toSet());
        List<ReportContent.Fact> facts = new ArrayList<>();
        PageFacts.visit(car).forEach((label, text) -> facts.add(new ReportContent.Fact(label, text)));
        return new ReportContent(
                car.visit().facts().car().name(),
                car.visit().facts().date().map(Days::day).orElse("date of the visit not given"),
                lead(zones.size()),
                facts,
                matters.stream().limit(MAX_MATTERS).map(m -> matter(m, targets)).toList(),
                NotLookedAt.of(car).sentences(),
                ClaimTexts.of(car),
                drawing,
                "Numbers in the zones: mean coating thickness in " + ramp.unitName()
                        + ". Hatching: refinish likelihood. Dots: rust. Discs: photos, by their numbers.",
                overview(targets),
                ramp.unitName(),
                strips(spots),
                zones,
                chapters.photos(shots.withoutZone()),
                leftOut(),
                new MarkTexts(car, shots).text(),
                car.visit().trials().stream()
                        .map(Recorded::value)
                        .map(this::row)
                        .toList(),
                missing(),
                new GaugeTexts(car, ramp).text(),
                MethodTexts.method(car, ramp, logHead),
                MethodTexts.cautions(car),
                own(),
                MethodTexts.sources());
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

    private boolean matter(ZoneId zone) {
        return matters.stream().limit(MAX_MATTERS).anyMatch(matter -> matter.zones()
                .contains(zone));
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
        return new ReportContent.MatterText(
                matter.place(), matter.headline(), matter.evidence(), matter.structural(), links);
    }

    private List<ReportContent.ZoneRow> overview(Set<String> targets) {
        Map<String, ZoneId> ids = zones().stream().collect(Collectors.toMap(Zone::label, Zone::id, (a, b) -> a));
        return PageFacts.zones(car, ramp).stream()
                .filter(row -> ids.containsKey(row.get(0)))
                .map(row -> {
                    String target = ZoneTexts.id(ids.get(row.get(0)));
                    return new ReportContent.ZoneRow(
                            targets.contains(target) ? target : "",
                            row.get(0),
                            row.get(1),
                            row.get(2),
                            row.get(3),
                            row.get(4),
                            row.get(5),
                            row.get(6));
                })
                .toList();
    }

    private String strips(ThicknessRamp spots) {
        List<ZoneThickness> measured = car.thickness().zones().stream()
                .filter(zone -> zone.readable() && !zone.spots().isEmpty() && selection.shows(zone.zone()))
                .toList();
        List<String> labels = measured.stream()
                .map(zone -> car.catalog()
                        .find(zone.zone())
                        .map(Zone::label)
                        .orElse(zone.zone().value()))
                .toList();
        return measured.isEmpty() ? "" : StripPlot.several(car, spots, measured, labels);
    }

    private List<String> leftOut() {
        List<String> sentences = new ArrayList<>(selection.sentences(car.catalog()));
        long aside = car.visit().photos().stream()
                .filter(photo -> photo.setAside().isPresent())
                .count();
        if (aside > 0) {
            sentences.add(aside + (aside == 1 ? " photo" : " photos")
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
