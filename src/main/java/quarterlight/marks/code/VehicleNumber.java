package quarterlight.marks.code;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A 17-character vehicle identification number: check digit and model year.
 * <p>Source: 49 CFR 565 (values of letters, weights of places, remainder by 11 in place 9, model year in place 10); the cycle of
 * model-year letters repeats after 30 years, and on cars and light trucks a letter in place 7 tells the second cycle.
 *
 * @param text 17 capital letters and digits without I, O and Q
 */
public record VehicleNumber(String text) {
    /** Characters of such a number. */
    public static final int LENGTH = 17;
    /** The first model year that has such a number. */
    public static final int FIRST_MODEL_YEAR = 1981;

    private static final String LETTERS = "ABCDEFGHJKLMNPRSTUVWXYZ";
    private static final String VALUES = "12345678123457923456789";
    private static final int[] WEIGHTS = {8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2};
    private static final String YEARS = "ABCDEFGHJKLMNPRSTVWXY123456789";
    private static final int CHECK_PLACE = 8;
    private static final int YEAR_PLACE = 9;
    private static final int CYCLE_PLACE = 6;

    /** The number as letters and digits only; empty if it has not 17 characters or holds one that no such number has. */
    public static Optional<VehicleNumber> of(String read) {
        String plain = plain(read);
        boolean allowed = plain.chars().allMatch(c -> Character.isDigit(c) || LETTERS.indexOf(c) >= 0);
        return plain.length() == LENGTH && allowed ? Optional.of(new VehicleNumber(plain)) : Optional.empty();
    }

    /** Capital letters and digits of what was read, without blanks, hyphens and stars. */
    public static String plain(String read) {
        return read.toUpperCase(Locale.ROOT).replaceAll("[\\s*-]", "");
    }

    int weightedSum() {
        int sum = 0;
        for (int i = 0; i < LENGTH; i++) {
            sum += WEIGHTS[i] * value(text.charAt(i));
        }
        return sum;
    }

    /** Letters and digits that can stand in such a number. */
    static String letters() {
        return LETTERS + "0123456789";
    }

    /** The character of place 10. */
    public char yearLetter() {
        return text.charAt(YEAR_PLACE);
    }

    /** What the number can be if its unread letters ({@link UnreadLetter#LETTER}) are filled in, with a check digit that holds. */
    public static List<VehicleNumber> completions(String plain) {
        int at = plain.indexOf(UnreadLetter.LETTER);
        if (at < 0) {
            return of(plain).filter(VehicleNumber::checks).stream().toList();
        }
        return letters()
                .chars()
                .mapToObj(c -> plain.substring(0, at) + (char) c + plain.substring(at + 1))
                .flatMap(filled -> completions(filled).stream())
                .toList();
    }

    private static int value(char c) {
        return Character.isDigit(c) ? c - '0' : VALUES.charAt(LETTERS.indexOf(c)) - '0';
    }

    public char expectedCheck() {
        int rest = weightedSum() % 11;
        return rest == 10 ? 'X' : (char) ('0' + rest);
    }

    public char check() {
        return text.charAt(CHECK_PLACE);
    }

    public boolean checks() {
        return check() == expectedCheck();
    }

    /** North America (first place 1 to 5) and China (L): the regions where the check digit is compulsory. */
    public boolean inRegion() {
        char first = text.charAt(0);
        return (first >= '1' && first <= '5') || first == 'L';
    }

    /** The model years that place 10 can mean, with July before to December of each as its days; empty for I, O, Q, U, Z, 0. */
    public List<DateCandidate> modelYears() {
        int place = YEARS.indexOf(text.charAt(YEAR_PLACE));
        if (place < 0) {
            return List.of();
        }
        boolean second = Character.isLetter(text.charAt(CYCLE_PLACE));
        return Stream.of(second ? 2010 + place : 1980 + place)
                .map(year -> new DateCandidate(
                        LocalDate.of(year - 1, 7, 1), LocalDate.of(year, 12, 31), "model-year-letter"))
                .toList();
    }
}
