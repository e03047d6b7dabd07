package quarterlight.car;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterlight.language.Language;
import quarterlight.units.Days;

/**
 * Dates as people write them: {@code March 1971}, {@code 14 June 2025}, {@code June 14, 2025}, {@code 6/14/2025}, {@code 14.6.2025},
 * {@code 3/1971}, and the form of {@link PartialDate}. A day and a month that could be either are not guessed: {@code 3/4/2025} is none.
 * Month names are English or German, whole or cut to three letters or more: {@code 14. Juni 2025}, {@code März 1971}. With German in hand
 * {@code 3.4.2025} is the third of April; {@code 3/4/2025} stays none. Years have four digits.
 */
public final class WrittenDate {
    private static final List<List<String>> MONTHS = List.of(Days.monthNames(), germanMonths());
    private static final Pattern DOTTED = Pattern.compile("\\s*\\d{1,2}\\.\\s?\\d{1,2}\\.\\s?\\d{4}\\s*");
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
                ? ofNumbers(
                        pieces,
                        Language.inHand() == Language.GERMAN
                                && DOTTED.matcher(typed).matches())
                : words.size() == 1 ? month(words.get(0)).flatMap(month -> named(month, pieces)) : Optional.empty();
    }

    private static List<String> germanMonths() {
        return List.of(
                "januar",
                "februar",
                "m\u00e4rz",
                "april",
                "mai",
                "juni",
                "juli",
                "august",
                "september",
                "oktober",
                "november",
                "dezember");
    }

    private static Optional<Integer> month(String word) {
        String asWritten = word.replace("maerz", "m\u00e4rz");
        for (List<String> names : MONTHS) {
            for (int i = 0; i < names.size(); i++) {
                if (word.length() >= SHORTEST
                        && (names.get(i).startsWith(asWritten) || word.equals("sept") && i == 8)) {
                    return Optional.of(i + 1);
                }
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

    /** @param dayFirst whether it is written in a way that puts the day first for sure */
    private static Optional<PartialDate> ofNumbers(List<String> pieces, boolean dayFirst) {
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
        if (dayFirst) {
            return day(pieces.get(2), second, first);
        }
        if (first <= MONTHS_OF_YEAR && second <= MONTHS_OF_YEAR && first != second) {
            return Optional.empty();
        }
        return first > MONTHS_OF_YEAR ? day(pieces.get(2), second, first) : day(pieces.get(2), first, second);
    }

    private static Optional<PartialDate> day(String year, int month, int day) {
        return PartialDate.parse("%s-%02d-%02d".formatted(year, month, day));
    }
}
