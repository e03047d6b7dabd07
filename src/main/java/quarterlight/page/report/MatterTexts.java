package quarterlight.page.report;

import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import quarterlight.findings.Findings;
import quarterlight.matters.Matter;
import quarterlight.matters.rule.MatterRule;
import quarterlight.page.print.Paper;
import quarterlight.page.report.picture.PrintedPicture;
import quarterlight.page.report.picture.ReportPictures;
import quarterlight.page.report.text.ReportContent;
import quarterlight.page.report.text.Shots;
import quarterlight.page.report.text.ZoneTexts;
import quarterlight.visit.statement.Severity;

/** What matters, in full: each with what it rests on, the lettered ones with a photo half a page wide and a part of it closer. */
final class MatterTexts {
    private static final double SIDES_MM = 24;
    private static final double BESIDE_MM = 4;
    /** A part stands below the words, so that words and part are about as high as the photo beside them. */
    private static final double CLOSER_SHARE = 0.62;

    private static final double CLOSER_ASPECT = 3.0 / 4;

    private final Findings car;
    private final Shots shots;
    private final ReportPictures pictures;
    private final boolean full;
    private final double halfMm;
    private final Map<String, String> closer;

    /**
     * @param full whether the photos stand elsewhere in the report too, so that one can be referred to
     * @param closer addresses of the close crops by the matter's id
     */
    MatterTexts(
            Findings car, Shots shots, ReportPictures pictures, boolean full, Paper paper, Map<String, String> closer) {
        this.car = car;
        this.shots = shots;
        this.pictures = pictures;
        this.full = full;
        this.halfMm = (paper.widthMm() - SIDES_MM - BESIDE_MM) / 2;
        this.closer = Map.copyOf(closer);
    }

    /** @param targets places of the report that a zone can be looked up at */
    ReportContent.MatterText of(Matter matter, Set<String> targets) {
        List<ReportContent.Link> links = matter.zones().stream()
                .filter(zone -> targets.contains(ZoneTexts.id(zone)))
                .map(zone -> new ReportContent.Link(
                        ZoneTexts.id(zone), car.catalog().get(zone).label()))
                .toList();
        List<Shots.Shot> shown = shown(matter);
        Optional<ReportContent.SeenText> seen = matter.letter().isPresent() ? seen(matter, shown) : Optional.empty();
        return new ReportContent.MatterText(
                matter.letter().map(String::valueOf).orElse(""),
                matter.severity() == Severity.GRAVE,
                matter.severity().said(),
                reason(matter),
                shown.stream()
                        .filter(one -> full)
                        .limit(seen.isPresent() && seen.get().others() ? 2 : 1)
                        .map(one -> new ReportContent.Link(one.id(), say("report.matter-texts.photo", one.number())))
                        .toList(),
                seen,
                matter.place(),
                matter.sentence(),
                further(matter),
                matter.safety().isPresent(),
                links);
    }

    /** The photos that show it, each once, the best first; those that can be seen before those that cannot. */
    private List<Shots.Shot> shown(Matter matter) {
        List<Shots.Shot> all = matter.photos().stream()
                .flatMap(photo -> shots.all().stream()
                        .filter(one -> one.frame().photo().equals(photo))
                        .limit(1))
                .toList();
        List<Shots.Shot> seen =
                all.stream().filter(one -> pictures.of(one.frame()).isPresent()).toList();
        return seen.isEmpty() ? all : seen;
    }

    /** The first photo, its longer side half the width of the page, and a part of it closer, else another photo, smaller. */
    private Optional<ReportContent.SeenText> seen(Matter matter, List<Shots.Shot> shown) {
        if (shown.isEmpty() || pictures.of(shown.get(0).frame()).isEmpty()) {
            return Optional.empty();
        }
        Shots.Shot first = shown.get(0);
        String part = closer.getOrDefault(matter.id(), "");
        if (part.startsWith(first.frame().address() + "-close-")) {
            ReportContent.PictureText closely = new ReportContent.PictureText(
                    part,
                    say("report.matter-texts.closer", alt(first, matter)),
                    mm(CLOSER_SHARE * halfMm),
                    mm(CLOSER_SHARE * CLOSER_ASPECT * halfMm),
                    "");
            return Optional.of(new ReportContent.SeenText(picture(first, matter, halfMm), List.of(closely), false));
        }
        List<ReportContent.PictureText> other = shown.stream()
                .skip(1)
                .limit(1)
                .map(shot -> picture(shot, matter, CLOSER_SHARE * halfMm))
                .toList();
        return Optional.of(new ReportContent.SeenText(picture(first, matter, halfMm), other, !other.isEmpty()));
    }

    private ReportContent.PictureText picture(Shots.Shot shot, Matter matter, double longerMm) {
        PrintedPicture printed = pictures.of(shot.frame()).orElseThrow();
        double scale = longerMm / Math.max(printed.width(), printed.height());
        return new ReportContent.PictureText(
                shot.frame().address(),
                alt(shot, matter),
                mm(printed.width() * scale),
                mm(printed.height() * scale),
                full ? shot.id() : "");
    }

    private static String alt(Shots.Shot shot, Matter matter) {
        return say(
                "report.matter-texts.of",
                shot.number().isEmpty()
                        ? say("report.matter-texts.photo-2")
                        : say("report.matter-texts.photo-3", shot.number()),
                matter.place());
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

    private static String mm(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
