package quarterlight.car;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterlight.units.Days;

/**
 * Dates as people write them: {@code March 1971}, {@code 14 June 2025}, {@code June 14, 2025}, {@code 6/14/2025}, {@code 14.6.2025},
 * {@code 3/1971}, and the form of {@link PartialDate}. A day and a month that could be either are not guessed: {@code 3/4/2025} is none.
 * Month names are English, whole or cut to three letters or more. Years have four digits. Pure functions.
 */
public final class WrittenDate {
    private static final List<String> MONTHS = Days.monthNames();
    private static final int SHORTEST = 3;
    private static final int MONTHS_OF_YEAR = 12;
    private static final Pattern PIECE = Pattern.compile("\\p{L}+|\\d+");
    private static final Pattern ORDINAL = Pattern.compile("(?<=\\d)(st|nd|rd|th)\\b");

    private WrittenDate() {}

    /** Reads a date; empty if it is none, or could be two. */
    public static Optional<PartialDate> parse(String typed) {
        Optional<PartialDate> plain = PartialDate.parse(typed);
        if (plain.isPresent()) {
            return plain;
        }
        String text = ORDINAL.matcher(typed.toLowerCase(Locale.ROOT)).replaceAll("");
        if (!text.matches("[\\p{L}\\d\\s,./'-]+")) {
            return Optional.empty();
        }
        List<String> pieces = new ArrayList<>();
        Matcher m = PIECE.matcher(text);
        while (m.find()) {
            if (!m.group().equals("of") && !m.group().equals("the")) {
                pieces.add(m.group());
            }
        }
        List<String> words = pieces.stream()
                .filter(piece -> Character.isLetter(piece.charAt(0)))
                .toList();
        return words.isEmpty()
                ? ofNumbers(pieces)
                : words.size() == 1 ? month(words.get(0)).flatMap(month -> named(month, pieces)) : Optional.empty();
    }

    private static Optional<Integer> month(String word) {
        for (int i = 0; i < MONTHS.size(); i++) {
            if (word.length() >= SHORTEST && (MONTHS.get(i).startsWith(word) || word.equals("sept") && i == 8)) {
                return Optional.of(i + 1);
            }
        }
        return Optional.empty();
    }

    /** A named month with a year, and perhaps a day before or behind its name. */
    private static Optional<PartialDate> named(int month, List<String> pieces) {
        List<String> numbers = pieces.stream()
                .filter(piece -> Character.isDigit(piece.charAt(0)))
                .toList();
        List<String> years =
                numbers.stream().filter(number -> number.length() == 4).toList();
        List<String> days =
                numbers.stream().filter(number -> number.length() <= 2).toList();
        if (years.size() != 1 || days.size() > 1 || numbers.size() != years.size() + days.size()) {
            return Optional.empty();
        }
        return days.isEmpty()
                ? PartialDate.parse("%s-%02d".formatted(years.get(0), month))
                : day(years.get(0), month, Integer.parseInt(days.get(0)));
    }

    private static Optional<PartialDate> ofNumbers(List<String> pieces) {
        if (pieces.size() == 2 && pieces.get(1).length() == 4 && pieces.get(0).length() <= 2) {
            return PartialDate.parse("%s-%02d".formatted(pieces.get(1), Integer.parseInt(pieces.get(0))));
        }
        if (pieces.size() != 3 || pieces.stream().anyMatch(piece -> piece.length() > 4)) {
            return Optional.empty();
        }
        if (pieces.get(0).length() == 4
                && pieces.get(1).length() <= 2
                && pieces.get(2).length() <= 2) {
            return day(pieces.get(0), Integer.parseInt(pieces.get(1)), Integer.parseInt(pieces.get(2)));
        }
        if (pieces.get(2).length() != 4
                || pieces.get(0).length() > 2
                || pieces.get(1).length() > 2) {
            return Optional.empty();
        }
        int first = Integer.parseInt(pieces.get(0));
        int second = Integer.parseInt(pieces.get(1));
        if (first <= MONTHS_OF_YEAR && second <= MONTHS_OF_YEAR && first != second) {
            return Optional.empty();
        }
        return first > MONTHS_OF_YEAR ? day(pieces.get(2), second, first) : day(pieces.get(2), first, second);
    }

    private static Optional<PartialDate> day(String year, int month, int day) {
        return PartialDate.parse("%s-%02d-%02d".formatted(year, month, day));
    }
}
