package quarterlight.marks;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.marks.code.Completion;
import quarterlight.marks.code.DateCandidate;
import quarterlight.marks.code.DatePattern;
import quarterlight.marks.code.DatePatterns;
import quarterlight.marks.code.GlassMark;
import quarterlight.marks.code.TireDate;
import quarterlight.marks.code.Unread;
import quarterlight.visit.Mark;

/** Judges date codes, tires and glass by the build window. */
final class DateJudge {
    private final Optional<BuildWindow> window;
    private final DatePatterns patterns;
    private final UsualLeads leads;

    DateJudge(Optional<BuildWindow> window, DatePatterns patterns, UsualLeads leads) {
        this.window = window;
        this.patterns = patterns;
        this.leads = leads;
    }

    /** A date code by the pattern that the mark asks for, else by every pattern. */
    Judgement code(Mark mark, String text) {
        if (Unread.count(text) > DatePatterns.MOST_UNREAD) {
            return Judgement.bare(
                    Verdict.CANNOT_TELL, Unread.count(text) + " letters are unread: it could be nearly any date");
        }
        Optional<DatePatterns> asked = asked(mark);
        if (asked.isEmpty()) {
            return Judgement.bare(
                    Verdict.CANNOT_TELL,
                    "no date pattern is called '" + mark.pattern().orElseThrow()
                            + "': name one that is listed, or write its form with braces");
        }
        List<Completion> completions = asked.get().read(text);
        if (completions.isEmpty()) {
            String said = mark.pattern()
                    .map(name -> "does not suit the pattern " + name)
                    .orElse("suits no date pattern; if it is no date, the pattern '" + DatePattern.NONE + "' says so");
            return Judgement.bare(Verdict.MALFORMED, text + " " + said);
        }
        return judge(mark, completions, List.of());
    }

    private Optional<DatePatterns> asked(Mark mark) {
        if (mark.pattern().isEmpty()) {
            return Optional.of(patterns);
        }
        String name = mark.pattern().get();
        if (name.indexOf('{') < 0) {
            return patterns.named(name).map(pattern -> new DatePatterns(List.of(pattern)));
        }
        try {
            return Optional.of(new DatePatterns(List.of(new DatePattern(name, name, "", ""))));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    Judgement tire(Mark mark, String text) {
        List<Completion> completions = TireDate.read(text);
        if (completions.isEmpty()) {
            return Judgement.bare(
                    Verdict.MALFORMED,
                    "it does not end in the three or four digits of a week that there is (49 CFR 574.5); the whole number"
                            + " may stand on the other side of the tire only");
        }
        boolean oldForm = completions.get(0).text().length() == 3;
        List<String> decoded = oldForm
                ? List.of("Three digits: made before 2000, the decade is open (49 CFR 574.5)")
                : List.of("Four digits: week and year of making (49 CFR 574.5)");
        Judgement judged = judge(mark, completions, decoded);
        return judged.verdict() == Verdict.TOO_LATE
                ? new Judgement(
                        judged.verdict(),
                        judged.why() + ": it was renewed in service, as tires are",
                        judged.candidates(),
                        judged.decoded())
                : judged;
    }

    Judgement glass(String text) {
        return new Judgement(
                Verdict.CANNOT_TELL,
                "no published rule reads a date from the mark of a pane; it is kept as read",
                List.of(),
                GlassMark.read(text));
    }

    /** Judges by the rule: every way to fill in unread letters must lead to the same verdict. */
    Judgement judge(Mark mark, List<Completion> completions, List<String> decoded) {
        List<DateCandidate> all = distinct(completions);
        if (window.isEmpty()) {
            return new Judgement(
                    Verdict.CANNOT_TELL, "neither a build date nor a model year of the car is given", all, decoded);
        }
        WindowRule rule = new WindowRule(window.get(), leads.before(mark), leads.after(mark));
        List<DateCandidate> ranked = rule.ranked(all);
        Set<Verdict> verdicts = rule.verdicts(completions);
        if (verdicts.size() > 1) {
            return new Judgement(
                    Verdict.CANNOT_TELL,
                    "the unread letters leave it open: by what they are it is "
                            + verdicts.stream().sorted().map(Verdict::word).collect(Collectors.joining(" or ")),
                    ranked,
                    decoded);
        }
        return new Judgement(verdicts.iterator().next(), why(rule, ranked), ranked, decoded);
    }

    private static String why(WindowRule rule, List<DateCandidate> ranked) {
        DateCandidate best = ranked.get(0);
        return rule.fits(best) || ranked.size() == 1
                ? rule.sentence(best)
                : "even the nearest reading, " + rule.sentence(best).replaceFirst(" lies ", ", lies ");
    }

    private static List<DateCandidate> distinct(List<Completion> completions) {
        Set<DateCandidate> all = new LinkedHashSet<>();
        completions.forEach(completion -> all.addAll(completion.candidates()));
        return List.copyOf(all);
    }
}
