package quarterlight.marks.judge;

import static quarterlight.language.Sentences.say;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import quarterlight.marks.code.Completion;
import quarterlight.marks.code.DatePattern;
import quarterlight.marks.code.DatePatterns;
import quarterlight.units.Days;
import quarterlight.visit.mark.Mark;

/**
 * What is known of certification labels: month and year, without a day, in which the car was completed at the place of its main assembly
 * (49 CFR 567.4; for cars from September 1, 1969, from memory), on the hinge pillar, the door latch post, the edge or inside of the door, or by
 * the instrument panel.
 */
public final class LabelRule {
    private static final LocalDate FIRST_REQUIRED = LocalDate.of(1969, 9, 1);
    private static final Pattern PLACES = Pattern.compile("door-.*|.-pillar-.*|dash|steering-column|cab-corner-.*");

    private static final Pattern TWO_NUMBERS = Pattern.compile("[0-9?]{1,4}[ /.-]+[0-9?]{1,4}");
    private static final DatePatterns MONTH_FIRST = new DatePatterns(List.of(
            new DatePattern("month-year", "{m} {yy}", "03/73", "Mar 1973"),
            new DatePattern("month-long-year", "{m} {yyyy}", "03/1973", "Mar 1973")));
    private static final DatePatterns YEAR_FIRST = new DatePatterns(List.of(
            new DatePattern("year-month", "{yy} {mm}", "73-03", "Mar 1973"),
            new DatePattern("long-year-month", "{yyyy} {mm}", "1973-03", "Mar 1973")));

    private LabelRule() {}

    /** Two numbers of a label: month and year (49 CFR 567.4); the year first only where the first can be no month. */
    static List<Completion> monthAndYear(String text) {
        List<Completion> usual = MONTH_FIRST.read(text);
        return usual.isEmpty() ? YEAR_FIRST.read(text) : usual;
    }

    static boolean isTwoNumbers(String text) {
        return TWO_NUMBERS.matcher(text.strip()).matches();
    }

    /** True for a label at a place where certification labels are; one elsewhere may be a part's own. */
    public static boolean saysBuild(Mark mark) {
        return mark.zone().map(zone -> PLACES.matcher(zone.value()).matches()).orElse(true);
    }

    /** The judgement with what the rule says of such a label. */
    public static MarkJudgment with(MarkJudgment judged, Mark mark, Optional<BuildWindow> window) {
        if (judged.candidates().isEmpty() || !saysBuild(mark)) {
            return judged;
        }
        List<String> decoded = new ArrayList<>(judged.decoded());
        boolean month = judged.candidates().get(0).from().getDayOfMonth() == 1
                && !judged.candidates()
                        .get(0)
                        .from()
                        .equals(judged.candidates().get(0).to());
        decoded.add(month ? say("marks.label.month") : say("marks.label.day"));
        if (window.filter(built -> built.last().isBefore(FIRST_REQUIRED)).isPresent()) {
            decoded.add(say("marks.label.since", Days.day(FIRST_REQUIRED)));
        }
        return new MarkJudgment(judged.verdict(), judged.why(), judged.candidates(), decoded);
    }
}
