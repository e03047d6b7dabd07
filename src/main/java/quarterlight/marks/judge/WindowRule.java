package quarterlight.marks.judge;

import static quarterlight.language.Sentences.say;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import quarterlight.marks.code.Completion;
import quarterlight.marks.code.DateCandidate;

/**
 * Judges dates by the build window: a date fits if some day of it lies within the window or up to the usual lead before it (for
 * dates of shipping and sale: after it); else the candidate nearest to the window decides.
 *
 * @param beforeDays usual lead before the window
 * @param afterDays usual days after it
 */
record WindowRule(BuildWindow window, int beforeDays, int afterDays) {
    private static final int COINCIDENCE_MONTHS = 240;

    /** Candidates that fit first, then by their distance from the window, then the earlier one. */
    List<DateCandidate> ranked(List<DateCandidate> candidates) {
        List<DateCandidate> sorted = new ArrayList<>(candidates);
        sorted.sort(Comparator.comparing((DateCandidate date) -> !fits(date))
                .thenComparingLong(this::distanceDays)
                .thenComparing(DateCandidate::from));
        return List.copyOf(sorted);
    }

    boolean fits(DateCandidate date) {
        return date.meets(window.first().minusDays(beforeDays), window.last().plusDays(afterDays));
    }

    /** The verdict on a text that can mean any of these dates. */
    Verdict verdict(List<DateCandidate> candidates) {
        DateCandidate best = ranked(candidates).get(0);
        if (fits(best)) {
            return Verdict.FITS;
        }
        return best.from().isAfter(window.last()) ? Verdict.TOO_LATE : Verdict.UNUSUALLY_EARLY;
    }

    /** The verdicts that the ways to fill in unread letters lead to; one if the letters do not matter. */
    Set<Verdict> verdicts(List<Completion> completions) {
        Set<Verdict> found = new LinkedHashSet<>();
        completions.forEach(completion -> found.add(verdict(completion.candidates())));
        return found;
    }

    /** Days between a date and the window; 0 if they share a day. */
    long distanceDays(DateCandidate date) {
        return Math.max(0, Math.max(daysBefore(date.to()), daysAfter(date.from())));
    }

    private long daysBefore(LocalDate day) {
        return ChronoUnit.DAYS.between(day, window.first());
    }

    private long daysAfter(LocalDate day) {
        return ChronoUnit.DAYS.between(window.last(), day);
    }

    /** What a candidate says of the car, without a full stop: {@code Mar 4, 1971 lies 3 days before the build window}. */
    String sentence(DateCandidate date) {
        return distanceDays(date) == 0
                ? say("marks.window.in", DateText.of(date), DateText.of(window))
                : usual(date, isBefore(date) ? "marks.window.before" : "marks.window.after");
    }

    /** The same of the nearest of several that all do not fit. */
    String nearest(DateCandidate date) {
        return usual(date, isBefore(date) ? "marks.window.nearest-before" : "marks.window.nearest-after");
    }

    private boolean isBefore(DateCandidate date) {
        return date.to().isBefore(window.first());
    }

    private String usual(DateCandidate date, String key) {
        String place = say(key, DateText.of(date), DateText.span(distanceDays(date)), DateText.of(window));
        int usual = isBefore(date) ? beforeDays : afterDays;
        if (fits(date)) {
            return say("marks.window.usual", place, usual);
        }
        return usual > 0 ? say("marks.window.beyond", place, usual) : place;
    }

    /**
     * How often a text that has nothing to do with the car would fit: of windows like this one, moved by each number of months up
     * to 20 years either way but not at all, the share that some candidate fits.
     *
     * @return 0 to 1
     */
    double coincidence(List<DateCandidate> candidates) {
        int fit = 0;
        for (int months = -COINCIDENCE_MONTHS; months <= COINCIDENCE_MONTHS; months++) {
            WindowRule moved = new WindowRule(
                    new BuildWindow(
                            window.first().plusMonths(months), window.last().plusMonths(months)),
                    beforeDays,
                    afterDays);
            fit += months != 0 && candidates.stream().anyMatch(moved::fits) ? 1 : 0;
        }
        return (double) fit / (2 * COINCIDENCE_MONTHS);
    }
}
