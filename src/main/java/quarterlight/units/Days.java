package quarterlight.units;

import static quarterlight.language.Sentences.say;

import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.language.Language;

/** Dates as people read them in the language in hand, {@code Apr 18, 2026} or {@code 18. April 2026}; files carry ISO 8601. */
public final class Days {
    private static final Map<Language, Forms> FORMS = Stream.of(Language.values())
            .collect(Collectors.toMap(
                    Function.identity(),
                    language -> language == Language.GERMAN
                            ? new Forms("d. MMMM uuuu", "MMMM uuuu", language.locale())
                            : new Forms("MMM d, uuuu", "MMM uuuu", Locale.US)));

    private Days() {}

    private record Forms(DateTimeFormatter day, DateTimeFormatter month) {
        Forms(String day, String month, Locale locale) {
            this(DateTimeFormatter.ofPattern(day, locale), DateTimeFormatter.ofPattern(month, locale));
        }

        static Forms inHand() {
            return FORMS.get(Language.inHand());
        }
    }

    public static String day(TemporalAccessor date) {
        return Forms.inHand().day().format(date);
    }

    public static String month(TemporalAccessor date) {
        return Forms.inHand().month().format(date);
    }

    /** The English names of the months in small letters, January first. */
    public static List<String> monthNames() {
        return Stream.of(Month.values())
                .map(month -> month.name().toLowerCase(Locale.ROOT))
                .toList();
    }

    /** A day, a whole month, a whole year, or from one day or month to another: {@code Aug 1970 to Jul 1971}. */
    public static String span(LocalDate first, LocalDate last) {
        if (first.equals(last)) {
            return day(first);
        }
        boolean wholeMonths = first.getDayOfMonth() == 1 && last.getDayOfMonth() == last.lengthOfMonth();
        if (!wholeMonths) {
            return say("common.days-to", day(first), day(last));
        }
        if (YearMonth.from(first).equals(YearMonth.from(last))) {
            return month(first);
        }
        boolean wholeYear = first.getDayOfYear() == 1 && last.equals(first.withDayOfYear(first.lengthOfYear()));
        return wholeYear ? Integer.toString(first.getYear()) : say("common.days-to", month(first), month(last));
    }
}
