package quarterlight.marks;

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
record VehicleNumber(String text) {
    static final int LENGTH = 17;
    static final int FIRST_MODEL_YEAR = 1981;
    private static final String LETTERS = "ABCDEFGHJKLMNPRSTUVWXYZ";
    private static final String VALUES = "12345678123457923456789";
    private static final int[] WEIGHTS = {8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2};
    private static final String YEARS = "ABCDEFGHJKLMNPRSTVWXY123456789";
    private static final int CHECK_PLACE = 8;
    private static final int YEAR_PLACE = 9;
    private static final int CYCLE_PLACE = 6;

    /** The number as letters and digits only; empty if it has not 17 characters or holds one that no such number has. */
    static Optional<VehicleNumber> of(String read) {
        String plain = plain(read);
        boolean allowed = plain.chars().allMatch(c -> Character.isDigit(c) || LETTERS.indexOf(c) >= 0);
        return plain.length() == LENGTH && allowed ? Optional.of(new VehicleNumber(plain)) : Optional.empty();
    }

    static String plain(String read) {
        return read.toUpperCase(Locale.ROOT).replaceAll("[\\s*-]", "");
    }

    int weightedSum() {
        int sum = 0;
        for (int i = 0; i < LENGTH; i++) {
            sum += WEIGHTS[i] * value(text.charAt(i));
        }
        return sum;
    }

    private static int value(char c) {
        return Character.isDigit(c) ? c - '0' : VALUES.charAt(LETTERS.indexOf(c)) - '0';
    }

    char expectedCheck() {
        int rest = weightedSum() % 11;
        return rest == 10 ? 'X' : (char) ('0' + rest);
    }

    char check() {
        return text.charAt(CHECK_PLACE);
    }

    boolean checks() {
        return check() == expectedCheck();
    }

    /** North America (first place 1 to 5) and China (L): the regions where the check digit is compulsory. */
    boolean inRegion() {
        char first = text.charAt(0);
        return (first >= '1' && first <= '5') || first == 'L';
    }

    /** A letter other than X in place 9 tells that the place holds no check digit. */
    boolean placeNineIsNoCheck() {
        return Character.isLetter(check()) && check() != 'X';
    }

    /** The model years that place 10 can mean, with July before to December of each as its days; empty for I, O, Q, U, Z, 0. */
    List<DateCandidate> modelYears() {
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
