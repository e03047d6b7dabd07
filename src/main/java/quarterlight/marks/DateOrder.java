package quarterlight.marks;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import quarterlight.car.ZoneId;
import quarterlight.marks.code.DateCandidate;
import quarterlight.marks.judge.BuildWindow;
import quarterlight.marks.judge.DateText;
import quarterlight.marks.judge.JudgedMark;
import quarterlight.marks.judge.LabelRule;
import quarterlight.marks.judge.UsualLeads;
import quarterlight.marks.judge.Verdict;
import quarterlight.marks.order.DaySet;
import quarterlight.marks.order.DaySet.Stretch;
import quarterlight.marks.order.Lag;
import quarterlight.marks.order.OrderOfDays;
import quarterlight.units.Days;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.mark.MarkStage;
import quarterlight.visit.pin.RecordId;

/**
 * The order of dates: cast, machined, assembled, fitted, car built, shipped, sold, each within its usual lead, worked out over all
 * candidates of all marks that fit the car by themselves.
 * <p>A date comes before the next stage of the same part; what is cast or machined in a zone before the assembly of that zone (the
 * assembled mark whose part is named an assembly); everything else before the car's build. Tires and glass are replaced in
 * service and take no part. Of several views of one stamp one takes part.
 *
 * @param built days that the dates together leave for the car's build; empty if there is neither a build window nor a date
 * @param left days left for each mark that takes part
 * @param contradictions pairs of dates that do not go together
 */
public record DateOrder(Optional<DaySet> built, Map<RecordId, DaySet> left, List<Contradiction> contradictions) {
    private static final int BUILT = 0;
    /** Marks of the build first, then what comes after it, then from the last stage before it to the first. */
    private static final List<MarkStage> TURNS = List.of(
            MarkStage.BUILT,
            MarkStage.SHIPPED,
            MarkStage.SOLD,
            MarkStage.FITTED,
            MarkStage.ASSEMBLED,
            MarkStage.MACHINED,
            MarkStage.CAST);

    public DateOrder {
        left = Map.copyOf(left);
        contradictions = List.copyOf(contradictions);
    }

    static DateOrder of(Optional<BuildWindow> window, List<JudgedMark> marks, UsualLeads leads) {
        List<JudgedMark> events = new ArrayList<>(marks.stream()
                .filter(DateOrder::takesPart)
                .filter(mark -> isFirstView(mark, marks))
                .toList());
        events.sort(Comparator.comparing(DateOrder::place));
        List<DaySet> days = new ArrayList<>();
        days.add(window.map(w -> DaySet.of(w.first(), w.last())).orElse(DaySet.ALL));
        events.forEach(event -> days.add(days(event)));
        List<Lag> lags = new ArrayList<>();
        for (int i = 0; i < events.size(); i++) {
            lags.add(lag(i, events, leads));
        }
        OrderOfDays order = OrderOfDays.of(days, lags);
        Map<RecordId, DaySet> left = new HashMap<>();
        for (int i = 0; i < events.size(); i++) {
            left.put(events.get(i).row(), order.remaining().get(i + 1));
        }
        List<Contradiction> found =
                order.clashes().stream().map(clash -> said(clash, events)).toList();
        boolean known = window.isPresent() || !events.isEmpty();
        return new DateOrder(known ? Optional.of(order.remaining().get(BUILT)) : Optional.empty(), left, found);
    }

    private static boolean takesPart(JudgedMark mark) {
        boolean service = mark.mark().kind() == MarkKind.TIRE || mark.mark().kind() == MarkKind.GLASS;
        boolean open = mark.verdict() == Verdict.FITS || mark.verdict() == Verdict.CANNOT_TELL;
        return !service && open && !mark.candidates().isEmpty();
    }

    private static boolean isFirstView(JudgedMark mark, List<JudgedMark> marks) {
        return marks.stream()
                .filter(other -> other.text().equalsIgnoreCase(mark.text())
                        && StampViews.same(other.mark().part(), mark.mark().part())
                        && other.mark().kind() == mark.mark().kind()
                        && stage(other.mark()).equals(stage(mark.mark())))
                .findFirst()
                .filter(mark::equals)
                .isPresent();
    }

    /** The stage as noted, else what the kind of mark tells. */
    private static Optional<MarkStage> stage(Mark mark) {
        if (mark.stage().isPresent()) {
            return mark.stage();
        }
        return switch (mark.kind()) {
            case CASTING -> Optional.of(MarkStage.CAST);
            case VIN -> Optional.of(MarkStage.BUILT);
            case LABEL -> LabelRule.saysBuild(mark) ? Optional.of(MarkStage.BUILT) : Optional.empty();
            default -> Optional.empty();
        };
    }

    private static int place(JudgedMark mark) {
        return stage(mark.mark()).map(TURNS::indexOf).orElse(TURNS.size());
    }

    private static DaySet days(JudgedMark mark) {
        return DaySet.of(mark.candidates().stream().map(DateOrder::stretch).toList());
    }

    private static Stretch stretch(DateCandidate date) {
        return new Stretch(date.from().toEpochDay(), date.to().toEpochDay());
    }

    private static Lag lag(int i, List<JudgedMark> events, UsualLeads leads) {
        Mark mark = events.get(i).mark();
        Optional<MarkStage> stage = stage(mark);
        if (stage.filter(MarkStage.BUILT::equals).isPresent()) {
            int tolerance = leads.builtTolerance(mark);
            return new Lag(i + 1, BUILT, -tolerance, tolerance);
        }
        if (stage.filter(UsualLeads::isAfterBuild).isPresent()) {
            return new Lag(
                    stage.filter(MarkStage.SOLD::equals).isPresent() ? shipped(events) : BUILT,
                    i + 1,
                    0,
                    leads.after(mark));
        }
        int next = stage.map(s -> next(i, s, events)).orElse(BUILT);
        return new Lag(i + 1, next, 0, leads.before(mark));
    }

    /** The shipping that a sale comes after; the build where none is dated. */
    private static int shipped(List<JudgedMark> events) {
        return IntStream.range(0, events.size())
                .filter(k -> stage(events.get(k).mark())
                        .filter(MarkStage.SHIPPED::equals)
                        .isPresent())
                .map(k -> k + 1)
                .findFirst()
                .orElse(BUILT);
    }

    /** The event that comes next: a later stage of the same part, else the assembly of its zone, else the build. */
    private static int next(int i, MarkStage stage, List<JudgedMark> events) {
        Mark mark = events.get(i).mark();
        int next = BUILT;
        MarkStage soonest = MarkStage.BUILT;
        for (int k = 0; k < events.size(); k++) {
            Mark other = events.get(k).mark();
            MarkStage later = stage(other).orElse(MarkStage.BUILT);
            boolean between = later.compareTo(stage) > 0 && later.compareTo(soonest) < 0;
            if (between && StampViews.same(mark.part(), other.part())) {
                soonest = later;
                next = k + 1;
            }
        }
        if (next == BUILT && stage.compareTo(MarkStage.ASSEMBLED) < 0) {
            for (int k = 0; k < events.size(); k++) {
                if (isAssemblyOf(events.get(k).mark(), mark.zone())) {
                    return k + 1;
                }
            }
        }
        return next;
    }

    private static boolean isAssemblyOf(Mark mark, Optional<ZoneId> zone) {
        return zone.isPresent()
                && mark.zone().equals(zone)
                && stage(mark).filter(MarkStage.ASSEMBLED::equals).isPresent()
                && mark.part().toLowerCase(Locale.ROOT).matches(".*\\b(assembly|komplett)\\b.*");
    }

    private static Contradiction said(OrderOfDays.Clash clash, List<JudgedMark> events) {
        Lag lag = clash.lag();
        Stretch a = clash.earlier().stretches().get(0);
        Stretch b = clash.later().stretches().get(0);
        for (Stretch x : clash.earlier().stretches()) {
            for (Stretch y : clash.later().stretches()) {
                if (off(x, y, lag) < off(a, b, lag)) {
                    a = x;
                    b = y;
                }
            }
        }
        boolean after = a.from() + lag.leastDays() > b.to();
        String first = name(lag.earlier(), a, events);
        String second = name(lag.later(), b, events);
        String sentence = after
                ? say("marks.order.after", first, DateText.span(a.from() - b.to()), second)
                : say("marks.order.before", first, DateText.span(b.from() - a.to()), second, lag.mostDays());
        JudgedMark about = events.get((lag.earlier() == BUILT ? lag.later() : lag.earlier()) - 1);
        List<RecordId> rows = List.of(lag.earlier(), lag.later()).stream()
                .filter(number -> number != BUILT)
                .map(number -> events.get(number - 1).row())
                .toList();
        return new Contradiction(
                Contradiction.Kind.ORDER, about.mark().part(), about.mark().zone(), rows, capital(sentence) + ".");
    }

    /** By how many days two stretches miss what the lag allows. */
    private static long off(Stretch a, Stretch b, Lag lag) {
        return Math.max(a.from() + lag.leastDays() - b.to(), b.from() - a.to() - lag.mostDays());
    }

    private static String name(int number, Stretch days, List<JudgedMark> events) {
        String date = Days.span(days.first(), days.last());
        if (number == BUILT) {
            return say("marks.order.build", date);
        }
        Mark mark = events.get(number - 1).mark();
        return mark.part() + " (" + stage(mark).map(stage -> stage.said() + " ").orElse("") + date + ")";
    }

    static String capital(String sentence) {
        return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }
}
