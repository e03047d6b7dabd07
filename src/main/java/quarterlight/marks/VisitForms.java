package quarterlight.marks;

import java.util.stream.Stream;
import quarterlight.marks.code.DatePattern;
import quarterlight.marks.code.DatePatterns;
import quarterlight.visit.VisitRecord;

/**
 * The date forms that marks of a visit name for themselves, each once, in the order of the marks. A maker dates parts of one car alike, so
 * another mark may well bear the same form. Forms without a year are left out: nearly any number suits them. Pure functions.
 */
public final class VisitForms {
    private VisitForms() {}

    public static DatePatterns of(VisitRecord visit) {
        return new DatePatterns(visit.marks().stream()
                .flatMap(row -> row.value().pattern().stream())
                .distinct()
                .flatMap(VisitForms::form)
                .filter(DatePattern::bearsYear)
                .toList());
    }

    /** None for the name of a listed pattern and for a form that is none. */
    private static Stream<DatePattern> form(String written) {
        return DatePattern.form(written).stream();
    }
}
