package quarterlight.marks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import quarterlight.marks.code.DateCandidate;
import quarterlight.marks.judge.BuildWindow;
import quarterlight.marks.judge.JudgedMark;
import quarterlight.marks.judge.Verdict;
import quarterlight.units.Worded;

/**
 * The dates of a car for reading on one line of time: a row per stamp with what it can mean, and the build window.
 *
 * @param first first day shown
 * @param last last day shown
 * @param window when the car was built, if known
 * @param rows stamps that mean a date, in the order of their likeliest date; it may lie beyond the days shown
 * @param undated parts whose marks mean no date, each with its verdict in words
 */
public record TimeLine(
        LocalDate first, LocalDate last, Optional<BuildWindow> window, List<Row> rows, List<String> undated) {
    /** Farther than this from the build the line does not reach; the report names what lies beyond. */
    private static final int REACH_YEARS = 3;

    private static final int MARGIN_MONTHS = 3;
    /** The line reaches at least so far before and after the build. */
    private static final int MIN_MONTHS = 6;

    /**
     * One stamp.
     *
     * @param shown the likeliest candidate, wherever it lies, and those within reach of the build; 1 or more
     * @param others how many more it can mean, far from the build
     * @param contradicted true if something read speaks against it
     */
    public record Row(
            String part,
            String text,
            String stage,
            List<DateCandidate> shown,
            int others,
            Verdict verdict,
            boolean contradicted) {
        public Row {
            Objects.requireNonNull(part, "part");
            Objects.requireNonNull(text, "text");
            Objects.requireNonNull(stage, "stage");
            Objects.requireNonNull(verdict, "verdict");
            shown = List.copyOf(shown);
            if (shown.isEmpty()) {
                throw new IllegalArgumentException("a row of a time line shows a date");
            }
        }
    }

    public TimeLine {
        Objects.requireNonNull(window, "window");
        rows = List.copyOf(rows);
        undated = List.copyOf(undated);
        if (last.isBefore(first)) {
            throw new IllegalArgumentException("the last day " + last + " lies before the first " + first);
        }
    }

    /** The line of a report; empty if no mark means a date. */
    public static Optional<TimeLine> of(MarksReport report) {
        List<JudgedMark> dated = new ArrayList<>();
        List<String> undated = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (JudgedMark mark : report.marks()) {
            if (!seen.add(mark.mark().part() + "\n" + mark.mark().kind() + "\n" + mark.text())) {
                continue;
            }
            if (mark.candidates().isEmpty()) {
                undated.add(mark.mark().part() + ": " + mark.verdict().said());
            } else {
                dated.add(mark);
            }
        }
        if (dated.isEmpty()) {
            return Optional.empty();
        }
        List<Row> rows = dated.stream()
                .map(mark -> row(mark, report))
                .sorted((a, b) ->
                        a.shown().get(0).from().compareTo(b.shown().get(0).from()))
                .toList();
        LocalDate middle = report.window()
                .map(BuildWindow::first)
                .orElseGet(() -> rows.get(rows.size() / 2).shown().get(0).from());
        LocalDate until = report.window().map(BuildWindow::last).orElse(middle);
        List<LocalDate> near = Stream.concat(
                        Stream.of(middle.minusMonths(MIN_MONTHS), until.plusMonths(MIN_MONTHS)),
                        rows.stream()
                                .map(row -> row.shown().get(0))
                                .filter(date ->
                                        date.meets(middle.minusYears(REACH_YEARS), until.plusYears(REACH_YEARS)))
                                .flatMap(date -> Stream.of(date.from(), date.to())))
                .sorted()
                .toList();
        return Optional.of(new TimeLine(
                near.get(0).minusMonths(MARGIN_MONTHS).withDayOfMonth(1),
                near.get(near.size() - 1)
                        .plusMonths(MARGIN_MONTHS + 1L)
                        .withDayOfMonth(1)
                        .minusDays(1),
                report.window(),
                rows,
                undated));
    }

    private static Row row(JudgedMark mark, MarksReport report) {
        DateCandidate likeliest = mark.candidates().get(0);
        LocalDate from = report.window().map(BuildWindow::first).orElse(likeliest.from());
        LocalDate to = report.window().map(BuildWindow::last).orElse(likeliest.to());
        List<DateCandidate> shown = new ArrayList<>();
        Set<String> spans = new HashSet<>();
        int others = 0;
        for (DateCandidate date : mark.candidates()) {
            if (!spans.add(date.from() + " " + date.to())) {
                continue;
            }
            boolean near = date.meets(from.minusYears(REACH_YEARS), to.plusYears(REACH_YEARS));
            if (shown.isEmpty() || near) {
                shown.add(date);
            } else {
                others++;
            }
        }
        boolean contradicted = report.contradictions().stream()
                .anyMatch(contradiction -> contradiction.rows().contains(mark.row()));
        return new Row(
                mark.mark().part(),
                mark.text(),
                mark.mark().stage().map(Worded::said).orElseGet(mark.mark().kind()::said),
                shown,
                others,
                mark.verdict(),
                contradicted);
    }
}
