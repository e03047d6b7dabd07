package quarterlight.marks.judge;

import static quarterlight.language.Sentences.say;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import quarterlight.marks.code.Completion;
import quarterlight.marks.code.DateAmidWords;
import quarterlight.marks.code.DateCandidate;
import quarterlight.marks.code.DatePattern;
import quarterlight.marks.code.DatePatterns;
import quarterlight.marks.code.GlassMark;
import quarterlight.marks.code.TireDate;
import quarterlight.marks.code.UnreadLetter;
import quarterlight.units.Days;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.statement.Origin;

/** Judges date codes, tires and glass by the build window. */
public final class DateJudge {
    /** Kinds on which assemblies are often dated by month and day alone; common practice. */
    private static final Set<MarkKind> BEARING_DAYS = EnumSet.of(MarkKind.STAMP, MarkKind.TAG);
    /** Kinds that as often bear a number and no date; common practice. */
    private static final Set<MarkKind> NUMBERED = EnumSet.of(MarkKind.TAG, MarkKind.PAPER);

    private static final int DAYS_OF_YEAR = 366;

    private final Optional<BuildWindow> window;
    private final Optional<LocalDate> visitDay;
    private final DatePatterns patterns;
    private final DatePatterns formsOfVisit;
    private final UsualLeads leads;

    /**
     * @param visitDay the day of the visit, if known: nothing was dated after it
     * @param formsOfVisit forms that other marks of the visit name; they are tried where no listed pattern suits
     */
    public DateJudge(
            Optional<BuildWindow> window,
            Optional<LocalDate> visitDay,
            DatePatterns patterns,
            DatePatterns formsOfVisit,
            UsualLeads leads) {
        this.window = window;
        this.visitDay = visitDay;
        this.patterns = patterns;
        this.formsOfVisit = formsOfVisit;
        this.leads = leads;
    }

    /** A date code by the pattern that the mark asks for, else by every pattern. */
    public MarkJudgment code(Mark mark, String text) {
        if (UnreadLetter.count(text) > DatePatterns.MAX_UNREAD) {
            return MarkJudgment.bare(Verdict.CANNOT_TELL, say("marks.date.unread", UnreadLetter.count(text)));
        }
        Optional<DatePatterns> asked = asked(mark);
        if (asked.isEmpty()) {
            return MarkJudgment.bare(
                    Verdict.CANNOT_TELL,
                    say("marks.date.no-pattern", mark.pattern().orElseThrow()));
        }
        List<Completion> completions = asked.get().read(text);
        if (!completions.isEmpty()) {
            return dated(mark, completions, completions, List.of());
        }
        if (mark.pattern().isPresent()) {
            List<Completion> days = asked.get().readWithoutYear(text);
            return days.isEmpty()
                    ? MarkJudgment.bare(
                            Verdict.MALFORMED,
                            say(
                                    "marks.date.not-of-pattern",
                                    text,
                                    mark.pattern().get()))
                    : withoutYear(mark, text, days);
        }
        return otherwise(mark, text);
    }

    /** Says beside a date that fits how often the same text would fit by chance, in whatever year it can mean. */
    private MarkJudgment dated(Mark mark, List<Completion> completions, List<Completion> all, List<String> decoded) {
        MarkJudgment judged = judge(mark, completions, decoded);
        if (judged.verdict() != Verdict.FITS) {
            return judged;
        }
        long ofHundred = Math.round(100 * rule(mark).coincidence(distinct(all)));
        List<String> said = new ArrayList<>(judged.decoded());
        said.add(ofHundred < 1 ? say("marks.date.chance-under") : say("marks.date.chance", ofHundred));
        return new MarkJudgment(judged.verdict(), judged.why(), judged.candidates(), said);
    }

    /** A text that no listed pattern of a year reads as a whole: one like other marks of the visit, a stamp's month and day, a date among words, or none. */
    private MarkJudgment otherwise(Mark mark, String text) {
        List<Completion> alike = formsOfVisit.read(text);
        if (!alike.isEmpty()) {
            return alike(mark, alike);
        }
        List<Completion> days =
                BEARING_DAYS.contains(mark.kind()) ? patterns.readWithoutYear(text) : List.<Completion>of();
        if (!days.isEmpty()) {
            return withoutYear(mark, text, days);
        }
        Optional<DateAmidWords> amid = patterns.readAmidWords(text);
        if (amid.isPresent()) {
            return amidWords(mark, amid.get());
        }
        return NUMBERED.contains(mark.kind())
                ? MarkJudgment.bare(Verdict.NOT_APPLICABLE, say("marks.date.bears-none"))
                : MarkJudgment.bare(Verdict.MALFORMED, say("marks.date.no-form", text, DatePattern.NONE));
    }

    /** A text that suits the form of other marks; which form that is, is said. */
    private MarkJudgment alike(Mark mark, List<Completion> completions) {
        MarkJudgment judged = dated(mark, completions, completions, List.of());
        String form = completions.get(0).candidates().get(0).pattern();
        return judged.because(judged.why() + "; read by the pattern " + form + " of other marks of this visit");
    }

    /** A day without a year: of all years, those within one of the build count. */
    private MarkJudgment withoutYear(Mark mark, String text, List<Completion> days) {
        if (window.isEmpty()) {
            return MarkJudgment.bare(Verdict.CANNOT_TELL, say("marks.date.day-only", text));
        }
        WindowRule rule = rule(mark);
        List<Completion> near = kept(days, date -> rule.distanceDays(date) <= DAYS_OF_YEAR);
        return dated(mark, near, days, List.of(say("marks.date.no-year")));
    }

    private MarkJudgment amidWords(Mark mark, DateAmidWords amid) {
        List<String> beside = List.of(say("marks.date.beside", amid.words()));
        MarkJudgment judged = dated(mark, amid.completions(), amid.completions(), beside);
        String why = say("marks.date.amid", amid.text(), judged.why());
        return judged.because(
                amid.isRework() && judged.verdict() == Verdict.TOO_LATE ? say("marks.date.rework", why) : why);
    }

    /** A certification label: two numbers are month and year before anything else. */
    public MarkJudgment label(Mark mark, String text) {
        if (mark.pattern().isPresent() || !LabelRule.isTwoNumbers(text)) {
            return code(mark, text);
        }
        List<Completion> completions = LabelRule.monthAndYear(text);
        return completions.isEmpty()
                ? MarkJudgment.bare(Verdict.MALFORMED, say("marks.label.no-month", text))
                : dated(mark, completions, completions, List.of());
    }

    private WindowRule rule(Mark mark) {
        return new WindowRule(window.orElseThrow(), leads.before(mark), leads.after(mark));
    }

    private static List<Completion> kept(List<Completion> completions, Predicate<DateCandidate> which) {
        List<Completion> left = new ArrayList<>();
        for (Completion completion : completions) {
            List<DateCandidate> dates =
                    completion.candidates().stream().filter(which).toList();
            if (!dates.isEmpty()) {
                left.add(new Completion(completion.text(), dates));
            }
        }
        return left;
    }

    private Optional<DatePatterns> asked(Mark mark) {
        if (mark.pattern().isEmpty()) {
            return Optional.of(patterns);
        }
        String name = mark.pattern().get();
        return (name.indexOf('{') < 0 ? patterns.named(name) : DatePattern.form(name))
                .map(pattern -> new DatePatterns(List.of(pattern)));
    }

    public MarkJudgment tire(Mark mark, String text) {
        List<Completion> completions = TireDate.read(text);
        if (completions.isEmpty()) {
            return MarkJudgment.bare(Verdict.MALFORMED, say("marks.tire.no-week"));
        }
        if (visitDay.isPresent()) {
            List<Completion> past = kept(completions, week -> !week.from().isAfter(visitDay.get()));
            if (past.isEmpty()) {
                return MarkJudgment.bare(
                        Verdict.MALFORMED,
                        say(
                                "marks.tire.after-visit",
                                Days.day(completions.get(0).candidates().get(0).from())));
            }
            completions = past;
        }
        boolean oldForm = completions.get(0).text().length() == 3;
        List<String> decoded =
                oldForm ? List.of(say("marks.tire.three-digits")) : List.of(say("marks.tire.four-digits"));
        MarkJudgment judged = dated(mark, completions, completions, decoded);
        return judged.verdict() == Verdict.TOO_LATE ? judged.because(say("marks.tire.renewed", judged.why())) : judged;
    }

    public MarkJudgment glass(String text) {
        return new MarkJudgment(Verdict.CANNOT_TELL, say("marks.glass.no-date"), List.of(), GlassMark.read(text));
    }

    /** A model year against the build: no part's lead lies between them. */
    MarkJudgment modelYear(List<Completion> completions) {
        return judge(completions, List.of(), window.map(built -> new WindowRule(built, 0, 0)));
    }

    /** Judges by the usual leads of the mark; a part that was replaced by what it can mean since the car was built. */
    private MarkJudgment judge(Mark mark, List<Completion> completions, List<String> decoded) {
        if (window.isPresent() && mark.origin().filter(Origin.REPLACED::equals).isPresent()) {
            Optional<MarkJudgment> renewed = renewed(completions, decoded);
            if (renewed.isPresent()) {
                return renewed.get();
            }
        }
        return judge(completions, decoded, window.map(built -> rule(mark)));
    }

    /**
     * The date of a part that took another's place: a day from the build on, and not after the visit. Empty if it can mean no such day, so that it is
     * judged as any part is.
     */
    private Optional<MarkJudgment> renewed(List<Completion> completions, List<String> decoded) {
        BuildWindow built = window.orElseThrow();
        List<Completion> since = kept(
                completions,
                date -> !date.to().isBefore(built.first())
                        && visitDay.filter(day -> date.from().isAfter(day)).isEmpty());
        if (since.isEmpty()) {
            return Optional.empty();
        }
        List<DateCandidate> ranked = new WindowRule(built, 0, 0).ranked(distinct(since));
        DateCandidate nearest = ranked.get(0);
        Verdict verdict = nearest.meets(built.first(), built.last()) ? Verdict.FITS : Verdict.TOO_LATE;
        String why = ranked.size() > 1
                ? say("marks.date.renewed-nearest", DateText.of(nearest), ranked.size())
                : say("marks.date.renewed", DateText.of(nearest));
        return Optional.of(new MarkJudgment(verdict, why, ranked, decoded));
    }

    /** Judges by the rule: every way to fill in unread letters must lead to the same verdict. */
    private MarkJudgment judge(List<Completion> completions, List<String> decoded, Optional<WindowRule> asked) {
        List<DateCandidate> all = distinct(completions);
        if (asked.isEmpty()) {
            return new MarkJudgment(Verdict.CANNOT_TELL, say("marks.date.no-build"), all, decoded);
        }
        WindowRule rule = asked.get();
        List<DateCandidate> ranked = rule.ranked(all);
        Set<Verdict> verdicts = rule.verdicts(completions);
        if (verdicts.size() > 1) {
            return new MarkJudgment(
                    Verdict.CANNOT_TELL,
                    say(
                            "marks.date.unread-open",
                            verdicts.stream()
                                    .sorted()
                                    .map(Verdict::said)
                                    .collect(Collectors.joining(" " + say("common.or") + " "))),
                    ranked,
                    decoded);
        }
        return new MarkJudgment(verdicts.iterator().next(), why(rule, ranked), ranked, decoded);
    }

    private static String why(WindowRule rule, List<DateCandidate> ranked) {
        DateCandidate best = ranked.get(0);
        return rule.fits(best) || ranked.size() == 1 ? rule.sentence(best) : rule.nearest(best);
    }

    private static List<DateCandidate> distinct(List<Completion> completions) {
        Set<DateCandidate> all = new LinkedHashSet<>();
        completions.forEach(completion -> all.addAll(completion.candidates()));
        return List.copyOf(all);
    }
}
