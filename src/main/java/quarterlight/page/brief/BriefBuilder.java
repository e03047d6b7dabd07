package quarterlight.page.brief;

import static quarterlight.language.Sentences.say;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import quarterlight.car.Zone;
import quarterlight.findings.ClaimedAndFound;
import quarterlight.findings.Findings;
import quarterlight.finish.FinishCautions;
import quarterlight.matters.Matter;
import quarterlight.matters.Matters;
import quarterlight.matters.NextLook;
import quarterlight.matters.rule.Safety;
import quarterlight.page.Anchor;
import quarterlight.page.PageFacts;
import quarterlight.page.ReportSelection;
import quarterlight.page.Shortened;
import quarterlight.page.WholeSentences;
import quarterlight.units.Days;
import quarterlight.units.Numerals;
import quarterlight.units.XmlText;
import quarterlight.visit.BriefWords;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.mark.OdometerFigure;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.statement.Judgment;
import quarterlight.visit.statement.Severity;

/** Puts the first page together within limits. */
final class BriefBuilder {
    private static final int MAX_NUMBERS = 5;
    private static final int LEAST_NUMBER = 6;
    /** A hash is broken into groups, so that it never widens its column. */
    private static final int MAX_SAFETY = 6;

    private static final int MAX_PLACES = 4;

    private final Findings car;
    private final Matters matters;
    private final BriefPictures pictures;
    private final LocalDate issued;
    private final Anchor anchor;
    private final BriefLimits limits;
    /** What has no room here in full and stands nowhere else. */
    private final List<BriefContent.Fact> whole = new ArrayList<>();

    BriefBuilder(
            Findings car,
            Matters matters,
            BriefPictures pictures,
            LocalDate issued,
            Anchor anchor,
            BriefLimits limits) {
        this.car = car;
        this.matters = matters;
        this.pictures = pictures;
        this.issued = issued;
        this.anchor = anchor;
        this.limits = limits;
    }

    BriefContent content() {
        VisitFacts facts = car.visit().facts();
        BriefWords words = facts.choices().brief();
        String paragraph = words.paragraph().map(XmlText::clean).orElseGet(() -> BriefText.composed(car, matters));
        List<ClaimedAndFound> claims = claims();
        List<Matter> shown = matters.lettered().stream().limit(limits.matters()).toList();
        return new BriefContent(
                cut(facts.car().name(), 120),
                subtitle(facts),
                pictures.portrait(),
                limits.drawing() ? pictures.drawing().views() : List.of(),
                limits.drawing() ? pictures.drawing().notDrawn() : "",
                facts(facts),
                numbers(),
                signed(facts, words),
                facts.choices().terms().map(text -> said(text, limits.terms())).orElse(""),
                kept(say("brief.brief-builder.in-short"), paragraph, limits.paragraph()),
                words.paragraph().isPresent(),
                safety(),
                shown.stream().map(this::line).toList(),
                more(shown.size()),
                claims.stream().limit(limits.claims()).map(this::line).toList(),
                claims.size() > limits.claims()
                        ? say("brief.brief-builder.more-claims-in-the-report", claims.size() - limits.claims())
                        : "",
                matters.checked().sentence(),
                PageFacts.check(car),
                ReportSelection.of(car.visit()).leftOut(car.catalog()),
                matters.next().stream().limit(limits.looks()).map(this::line).toList(),
                matters.next().size() > limits.looks()
                        ? say(
                                "brief.brief-builder.more-in-the-report",
                                matters.next().size() - limits.looks())
                        : "",
                anchor.text(),
                FinishCautions.texts().get(0),
                whole);
    }

    /** A name or number, which has no sentences: cut with a mark. */
    private static String cut(String text, int max) {
        return Shortened.to(XmlText.clean(text), max);
    }

    /** Sentences; what has no room stands in the report. */
    private static String said(String text, int max) {
        return WholeSentences.of(XmlText.clean(text), max);
    }

    /** The same of what the report says nowhere else. */
    private String kept(String label, String text, int max) {
        String clean = XmlText.clean(text).strip();
        String shown = said(text, max);
        if (!shown.equals(clean)) {
            whole.add(new BriefContent.Fact(label, clean));
        }
        return shown;
    }

    private String subtitle(VisitFacts facts) {
        return say(
                "brief.brief-builder.issued",
                facts.date()
                        .map(date -> say("brief.brief-builder.visit-of", Days.day(date)))
                        .orElse(say("brief.brief-builder.date-of-the-visit-not")),
                Days.day(issued));
    }

    private List<BriefContent.Fact> facts(VisitFacts facts) {
        Map<String, String> rows = new LinkedHashMap<>();
        rows.put(
                say("brief.brief-builder.body"),
                facts.car().body().style().said() + ", "
                        + facts.car().body().construction().said());
        facts.car()
                .modelYear()
                .ifPresent(year -> rows.put(say("brief.brief-builder.model-year"), Integer.toString(year)));
        facts.car().built().ifPresent(date -> rows.put(say("brief.brief-builder.claimed-build-date"), date.said()));
        odometer(facts).ifPresent(text -> rows.put(say("brief.brief-builder.odometer"), text));
        facts.light().ifPresent(text -> rows.put(say("brief.brief-builder.light"), text));
        facts.lifted().ifPresent(text -> rows.put(say("brief.brief-builder.lifted"), text));
        facts.takenApart().ifPresent(text -> rows.put(say("brief.brief-builder.taken-apart"), text));
        return rows.entrySet().stream()
                .map(row -> new BriefContent.Fact(row.getKey(), kept(row.getKey(), row.getValue(), limits.facts())))
                .toList();
    }

    /** The latest figure, else the fact as typed. */
    private Optional<String> odometer(VisitFacts facts) {
        List<OdometerFigure> figures =
                car.visit().odometer().stream().map(Recorded::value).toList();
        return figures.isEmpty()
                ? facts.odometer()
                : Optional.of(figures.get(figures.size() - 1))
                        .map(figure -> Numerals.typed(figure.figure()) + "\u00a0"
                                + figure.unit().said() + ", " + figure.source().said());
    }

    /** Numbers that tell which car it is, as read; of several views of one part the one read best. */
    private List<BriefContent.Fact> numbers() {
        return car.visit().marks().stream()
                .map(Recorded::value)
                .filter(BriefBuilder::tellsWhichCar)
                .sorted(Comparator.comparing(Mark::kind))
                .collect(Collectors.toMap(Mark::part, mark -> mark, BriefBuilder::readBest, LinkedHashMap::new))
                .values()
                .stream()
                .map(mark -> new BriefContent.Fact(cut(mark.part(), limits.facts()), cut(mark.text(), limits.facts())))
                .limit(MAX_NUMBERS)
                .toList();
    }

    /** A stamp of few letters is a date code, no number of the car. */
    private static boolean tellsWhichCar(Mark mark) {
        return mark.kind() == MarkKind.VIN
                || mark.kind() == MarkKind.PLATE
                || mark.kind() == MarkKind.STAMP && mark.text().strip().length() >= LEAST_NUMBER;
    }

    private static Mark readBest(Mark a, Mark b) {
        return unread(b) < unread(a) ? b : a;
    }

    private static long unread(Mark mark) {
        return mark.text().chars().filter(letter -> letter == '?').count();
    }

    private List<BriefContent.Fact> signed(VisitFacts facts, BriefWords words) {
        List<BriefContent.Fact> signed = new ArrayList<>();
        facts.inspector()
                .ifPresent(name -> signed.add(
                        new BriefContent.Fact(say("brief.brief-builder.inspector"), cut(name, limits.facts()))));
        words.credentials()
                .ifPresent(text -> signed.add(
                        new BriefContent.Fact("", kept(say("brief.brief-builder.credentials"), text, limits.facts()))));
        words.contact()
                .ifPresent(text -> signed.add(
                        new BriefContent.Fact("", kept(say("brief.brief-builder.contact"), text, limits.facts()))));
        facts.client()
                .ifPresent(name ->
                        signed.add(new BriefContent.Fact(say("brief.brief-builder.for"), cut(name, limits.facts()))));
        return signed;
    }

    /** One line for each danger, whatever the number of its matters. */
    private List<BriefContent.SafetyLine> safety() {
        Map<Safety, List<Matter>> dangers = new LinkedHashMap<>();
        matters.safety()
                .forEach(matter -> dangers.computeIfAbsent(matter.safety().orElseThrow(), s -> new ArrayList<>())
                        .add(matter));
        return dangers.entrySet().stream()
                .limit(MAX_SAFETY)
                .map(danger -> new BriefContent.SafetyLine(
                        danger.getKey().subject(),
                        danger.getValue().stream()
                                .flatMap(matter -> matter.letter().stream())
                                .map(String::valueOf)
                                .collect(Collectors.joining(", ")),
                        places(danger.getValue()),
                        danger.getKey().caution()))
                .toList();
    }

    private String places(List<Matter> some) {
        List<String> names = some.stream()
                .filter(matter -> !matter.zones().isEmpty())
                .map(Matter::place)
                .filter(place -> !place.equals(say("matters.whole-car")))
                .distinct()
                .toList();
        String first = names.stream().limit(MAX_PLACES).collect(Collectors.joining("; "));
        return names.size() > MAX_PLACES
                ? say("brief.brief-builder.and-more", first, names.size() - MAX_PLACES)
                : first;
    }

    private BriefContent.MatterLine line(Matter matter) {
        String place = matter.zones().size() > 1
                ? WholeSentences.list(List.of(matter.place().split("; ")), limits.sentence() / 2)
                : cut(matter.place(), limits.sentence() / 2);
        return new BriefContent.MatterLine(
                matter.letter().map(String::valueOf).orElse(""),
                matter.severity().said(),
                matter.severity() == Severity.GRAVE,
                said(matter.sentence(), limits.sentence()),
                place,
                matter.isOverridden()
                        ? say(
                                "brief.brief-builder.set-by-the-inspector-by",
                                matter.ruled().said(),
                                said(matter.decision().orElseThrow().reason(), limits.sentence() / 2))
                        : "",
                limits.crops() ? pictures.crop(matter) : "",
                say("brief.brief-builder.photo-of", place));
    }

    /** What else there is, by severity, with where it stands. */
    private String more(int shown) {
        List<Matter> rest = matters.all().stream()
                .filter(matter ->
                        matter.letter().isEmpty() || matters.lettered().indexOf(matter) >= shown)
                .toList();
        List<String> counts = new ArrayList<>();
        for (Severity severity : List.of(Severity.GRAVE, Severity.MAJOR, Severity.MINOR, Severity.NOTE)) {
            long count = rest.stream()
                    .filter(matter -> matter.severity() == severity)
                    .count();
            if (count > 0) {
                String word = severity == Severity.NOTE
                        ? (count == 1 ? say("brief.brief-builder.note") : say("brief.brief-builder.notes"))
                        : severity.said();
                counts.add(count + " " + word);
            }
        }
        return counts.isEmpty() ? "" : say("brief.brief-builder.besides-these-all-in-the", String.join(", ", counts));
    }

    /** Contradicted ones first, then open ones. */
    private List<ClaimedAndFound> claims() {
        List<Judgment> order = List.of(Judgment.CONTRADICTED, Judgment.OPEN, Judgment.SUPPORTED);
        return ClaimedAndFound.of(car).stream()
                .sorted(Comparator.comparingInt(laid -> order.indexOf(laid.judgment())))
                .toList();
    }

    private BriefContent.ClaimLine line(ClaimedAndFound laid) {
        String zone = laid.claim()
                .zone()
                .flatMap(car.catalog()::find)
                .map(Zone::label)
                .map(label -> label + ": ")
                .orElse("");
        return new BriefContent.ClaimLine(
                zone + said(laid.claim().text(), limits.sentence() / 2 + 20),
                laid.claim().by().said(),
                laid.judgment().said(),
                laid.found().isEmpty() ? "" : said(laid.found().get(0), limits.sentence() / 2 + 20));
    }

    private BriefContent.LookLine line(NextLook look) {
        return new BriefContent.LookLine(
                look.what().length() <= limits.sentence() ? look.what() : look.inShort(), look.why());
    }
}
