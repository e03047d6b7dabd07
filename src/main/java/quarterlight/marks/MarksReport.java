package quarterlight.marks;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import quarterlight.car.ZoneId;
import quarterlight.marks.code.DatePattern;
import quarterlight.marks.code.DatePatterns;
import quarterlight.marks.code.UnreadLetter;
import quarterlight.marks.code.VehicleNumber;
import quarterlight.marks.judge.BuildWindow;
import quarterlight.marks.judge.DateJudge;
import quarterlight.marks.judge.FeatureVerdict;
import quarterlight.marks.judge.JudgedFeature;
import quarterlight.marks.judge.JudgedMark;
import quarterlight.marks.judge.LabelRule;
import quarterlight.marks.judge.MarkJudgment;
import quarterlight.marks.judge.NumberJudge;
import quarterlight.marks.judge.NumberMatch;
import quarterlight.marks.judge.UsualLeads;
import quarterlight.marks.judge.Verdict;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.pin.Recorded;

/**
 * All that the marks and features of a visit say of the car: each decoded and judged, the order of their dates, and what does not go
 * together. Aids for questions to the seller, not proof.
 *
 * @param window when the car was built, if a build date or model year is given
 * @param marks in the order of the visit
 * @param contradictions dates first, then order, numbers, features
 */
public record MarksReport(
        Optional<BuildWindow> window,
        List<JudgedMark> marks,
        DateOrder order,
        List<JudgedFeature> features,
        List<Contradiction> contradictions) {
    public MarksReport {
        Objects.requireNonNull(window, "window");
        Objects.requireNonNull(order, "order");
        marks = List.copyOf(marks);
        features = List.copyOf(features);
        contradictions = List.copyOf(contradictions);
    }

    /** Said wherever results of this kind are shown. */
    public static String caution() {
        return say("marks.caution");
    }

    /** How many marks and features were held against the car, tires apart. */
    public int judged(Predicate<Optional<ZoneId>> zones) {
        long dated = marks.stream()
                .filter(mark -> mark.isJudged() && mark.mark().kind() != MarkKind.TIRE)
                .filter(mark -> zones.test(mark.mark().zone()))
                .count();
        long fitted = features.stream()
                .filter(feature -> feature.verdict() != FeatureVerdict.CANNOT_TELL)
                .filter(feature -> zones.test(feature.feature().zone()))
                .count();
        return (int) (dated + fitted);
    }

    /** Works out the report of a visit. */
    public static MarksReport of(VisitRecord visit, DatePatterns patterns) {
        return new Reader(visit, patterns).report();
    }

    /** Judges mark by mark. */
    private static final class Reader {
        private final VisitRecord visit;
        private final DatePatterns patterns;
        private final DatePatterns forms;
        private final Optional<BuildWindow> window;
        private final DateJudge dates;
        private final NumberJudge numbers;

        private Reader(VisitRecord visit, DatePatterns patterns) {
            this.visit = visit;
            this.patterns = patterns;
            this.window = BuildWindow.of(visit.facts().car());
            this.forms = VisitForms.of(visit);
            this.dates = new DateJudge(window, visit.facts().date(), patterns, forms, UsualLeads.V1);
            this.numbers = new NumberJudge(visit.facts().car(), window, dates);
        }

        private MarksReport report() {
            List<JudgedMark> judged = visit.marks().stream().map(this::judged).toList();
            DateOrder order = DateOrder.of(window, judged, UsualLeads.V1);
            List<JudgedMark> marks =
                    judged.stream().map(mark -> withOrder(mark, order)).toList();
            List<JudgedFeature> features = JudgedFeature.of(
                    visit.features().stream().map(Recorded::value).toList(), window);
            return new MarksReport(
                    window, marks, order, features, new Contradictions(marks, order, features, numbers).all());
        }

        private static JudgedMark withOrder(JudgedMark mark, DateOrder order) {
            String said = order.contradictions().stream()
                    .filter(clash -> clash.rows().contains(mark.row()))
                    .map(clash -> clash.sentence().substring(0, clash.sentence().length() - 1))
                    .collect(Collectors.joining("; "));
            return said.isEmpty() ? mark : mark.and(say("marks.but", said));
        }

        private JudgedMark judged(Recorded<Mark> row) {
            Mark mark = row.value();
            StampViews views = StampViews.of(mark, visit);
            MarkJudgment judged = judge(mark, views.text());
            List<NumberMatch> matches = matches(row, views.text());
            StringBuilder why = new StringBuilder(judged.why());
            matches.forEach(match -> why.append("; ").append(say("marks.match.it", match.sentence())));
            if (UnreadLetter.count(mark.text()) > UnreadLetter.count(views.text())) {
                why.append("; ").append(say("marks.other-view"));
            }
            views.odd().forEach(odd -> why.append("; ").append(say("marks.other-row", odd)));
            return new JudgedMark(
                    row.id(),
                    mark,
                    views.text(),
                    judged.candidates(),
                    judged.verdict(),
                    DateOrder.capital(why.append('.').toString()),
                    judged.decoded(),
                    matches,
                    views.count());
        }

        private MarkJudgment judge(Mark mark, String text) {
            if (mark.pattern().filter(DatePattern.NONE::equals).isPresent()) {
                return MarkJudgment.bare(Verdict.NOT_APPLICABLE, say("marks.number-not-date"));
            }
            boolean asked = mark.pattern().isPresent();
            return switch (mark.kind()) {
                case VIN -> numbers.judge(text);
                case TIRE -> dates.tire(mark, text);
                case LABEL ->
                    isLongNumber(text) && !asked
                            ? numbers.judge(text)
                            : LabelRule.with(dates.label(mark, text), mark, window);
                case GLASS -> asked ? dates.code(mark, text) : dates.glass(text);
                default -> {
                    if (!asked && isLongNumber(text)) {
                        yield numbers.judge(text);
                    }
                    yield !asked && isNumber(mark, text)
                            ? MarkJudgment.bare(Verdict.NOT_APPLICABLE, say("marks.maker-number"))
                            : dates.code(mark, text);
                }
            };
        }

        private static boolean isLongNumber(String text) {
            String plain = VehicleNumber.plain(text);
            return plain.length() == VehicleNumber.LENGTH && plain.matches("[A-Z0-9?]+");
        }

        /** A plate or stamp that means no date and is to agree with something, or that only plates bear. */
        private boolean isNumber(Mark mark, String text) {
            boolean compared =
                    mark.expected().isPresent() && !isDate(mark.expected().get());
            return (compared || mark.kind() == MarkKind.PLATE) && !isDate(text);
        }

        private boolean isDate(String text) {
            return patterns.suit(text) || forms.suit(text);
        }

        private List<NumberMatch> matches(Recorded<Mark> row, String text) {
            List<NumberMatch> all = new ArrayList<>();
            Mark mark = row.value();
            mark.expected().ifPresent(expected -> all.add(NumberMatch.of(text, say("marks.match.expected"), expected)));
            visit.marks().stream()
                    .filter(other -> other.value().kind() == MarkKind.VIN)
                    .findFirst()
                    .filter(first -> !first.id().equals(row.id()) && mark.kind() == MarkKind.VIN)
                    .filter(first ->
                            !first.value().text().equals(mark.expected().orElse("")))
                    .ifPresent(first -> all.add(NumberMatch.of(
                            text, first.value().part(), first.value().text())));
            return all;
        }
    }
}
