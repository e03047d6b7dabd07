package quarterlight.words.text;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A number as it is spoken or written, among tokens: {@code 12.6}, "four and a half", "five point one", "a hundred and ten", "one twenty"
 * (120), "two and three quarters". Pure.
 *
 * @param length how many tokens it takes
 */
public record SpokenNumber(double value, int length) {
    private static final Map<String, Integer> WORDS = new HashMap<>();
    private static final List<String> UNITS = List.of(
            "zero",
            "one",
            "two",
            "three",
            "four",
            "five",
            "six",
            "seven",
            "eight",
            "nine",
            "ten",
            "eleven",
            "twelve",
            "thirteen",
            "fourteen",
            "fifteen",
            "sixteen",
            "seventeen",
            "eighteen",
            "nineteen");
    private static final List<String> TENS =
            List.of("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety");

    private static final Pattern DECIMAL = Pattern.compile("\\d{1,12}(\\.\\d{1,6})?");
    private static final Pattern THREE = Pattern.compile("\\d{1,3}");
    private static final Pattern TWO = Pattern.compile("\\d{1,2}");

    static {
        for (int i = 0; i < UNITS.size(); i++) {
            WORDS.put(UNITS.get(i), i);
        }
        for (int i = 0; i < TENS.size(); i++) {
            WORDS.put(TENS.get(i), 20 + 10 * i);
        }
        WORDS.put("fourty", 40);
        WORDS.put("dozen", 12);
    }

    public static boolean isNumberWord(String word) {
        return !word.isEmpty()
                && (Character.isDigit(word.charAt(0))
                        || WORDS.containsKey(word)
                        || word.equals("hundred")
                        || word.equals("thousand"));
    }

    /** What a single word counts, if it is a number word up to ninety. */
    public static Optional<Integer> small(String word) {
        return Optional.ofNullable(WORDS.get(word));
    }

    /** As {@link #at}, with "one forty" for 140 and "one oh five" for 105, as readings in micrometers are spoken. */
    public static Optional<SpokenNumber> hundreds(List<Token> tokens, int from) {
        if (roundBeforeNext(tokens, from)) {
            return at(tokens.subList(0, from + 2), from);
        }
        Optional<SpokenNumber> plain = at(tokens, from);
        boolean digit = plain.isPresent()
                && plain.get().length() == 1
                && plain.get().value() >= 1
                && plain.get().value() <= 9;
        if (!digit || from + 1 >= tokens.size() || tokens.get(from).stop() != Punctuation.NONE) {
            return plain;
        }
        double first = plain.get().value() * 100;
        if (tokens.get(from + 1).is("oh", "o") && from + 2 < tokens.size()) {
            Optional<SpokenNumber> last = at(tokens, from + 2);
            return last.filter(n -> n.value() < 10)
                    .map(n -> new SpokenNumber(first + n.value(), 2 + n.length()))
                    .or(() -> plain);
        }
        Optional<SpokenNumber> rest = belowHundred(tokens, from + 1);
        return rest.filter(n -> n.value() >= 10 && n.value() < 100)
                .map(n -> new SpokenNumber(first + n.value(), 1 + n.length()))
                .or(() -> plain);
    }

    /** In "two hundred two twenty" the second "two" begins the next reading. */
    private static boolean roundBeforeNext(List<Token> tokens, int from) {
        return from + 3 < tokens.size()
                && tokens.get(from + 1).is("hundred")
                && small(tokens.get(from + 2).word()).filter(n -> n < 10).isPresent()
                && small(tokens.get(from + 3).word()).filter(n -> n >= 10).isPresent();
    }

    /** In "one forty one thirty" the second "one" begins the next hundred. */
    private static Optional<SpokenNumber> belowHundred(List<Token> tokens, int from) {
        Optional<SpokenNumber> all = at(tokens, from);
        boolean split = all.filter(n -> n.length() == 2).isPresent()
                && tokens.get(from + 1).is("one")
                && from + 2 < tokens.size()
                && small(tokens.get(from + 2).word()).filter(n -> n >= 10).isPresent();
        boolean next = from + 2 < tokens.size()
                && tokens.get(from + 2).is("hundred")
                && small(tokens.get(from).word()).filter(n -> n >= 10).isPresent();
        return split || next ? at(tokens.subList(0, from + 1), from) : all;
    }

    /** The number that begins at a token, if one does. */
    public static Optional<SpokenNumber> at(List<Token> tokens, int from) {
        String first = from < tokens.size() ? tokens.get(from).word() : "";
        if (!isNumberWord(first) && !first.equals("a") && !first.equals("half")) {
            return Optional.empty();
        }
        Reader reader = new Reader(tokens, from);
        return reader.number();
    }

    private static final class Reader {
        private final List<Token> tokens;
        private final int from;
        private int i;

        Reader(List<Token> tokens, int from) {
            this.tokens = tokens;
            this.from = from;
            this.i = from;
        }

        private String word(int at) {
            return at < tokens.size() ? tokens.get(at).word() : "";
        }

        Optional<SpokenNumber> number() {
            double value;
            String first = word(i);
            if (DECIMAL.matcher(first).matches()) {
                value = Double.parseDouble(first);
                i++;
            } else if (WORDS.containsKey(first)) {
                value = whole();
            } else if (first.equals("a")
                    && (word(i + 1).equals("hundred")
                            || word(i + 1).equals("thousand")
                            || word(i + 1).equals("dozen"))) {
                i++;
                value = word(i).equals("dozen") ? 12 : whole(1);
                i += word(i).equals("dozen") ? 1 : 0;
            } else if (first.equals("half") && word(i + 1).equals("a")) {
                i += 2;
                return Optional.of(new SpokenNumber(0.5, i - from));
            } else {
                return Optional.empty();
            }
            value += multiplied(value);
            value += fraction();
            return Optional.of(new SpokenNumber(value, i - from));
        }

        /** "12 hundred", "41 thousand 300". */
        private double multiplied(double value) {
            double more = 0;
            if (word(i).equals("hundred")) {
                i++;
                more = value * 99;
            }
            if (word(i).equals("thousand")) {
                i++;
                more = (value + more) * 1000 - value + rest();
            }
            return more;
        }

        private double rest() {
            if (word(i).equals("and") && isNumberWord(word(i + 1))) {
                i++;
            }
            if (WORDS.containsKey(word(i))) {
                double below = whole();
                return below + multiplied(below);
            }
            if (THREE.matcher(word(i)).matches()) {
                double below = Double.parseDouble(word(i));
                i++;
                return below + multiplied(below);
            }
            return 0;
        }

        private double whole() {
            int first = WORDS.get(word(i));
            i++;
            if (first >= 20 && first % 10 == 0 && goesOn()) {
                Integer unit = WORDS.get(word(i));
                if (unit != null && unit > 0 && unit < 10) {
                    i++;
                    first += unit;
                }
            }
            return whole(first);
        }

        /** No comma stands behind the last word: "forty, one thirty-eight" are two numbers. */
        private boolean goesOn() {
            return tokens.get(i - 1).stop() == Punctuation.NONE;
        }

        private double whole(double first) {
            double value = first;
            if (word(i).equals("hundred")) {
                i++;
                value *= 100;
                boolean and = word(i).equals("and");
                if (WORDS.containsKey(word(and ? i + 1 : i))
                        && !word(and ? i + 1 : i).equals("dozen")) {
                    int keep = i;
                    i += and ? 1 : 0;
                    int below = (int) whole();
                    if (below < 100) {
                        value += below;
                    } else {
                        i = keep;
                    }
                }
            }
            return value;
        }

        private double fraction() {
            if (word(i).equals("point") || word(i).equals("dot")) {
                double sum = 0;
                double step = 0.1;
                int k = i + 1;
                while (digit(word(k)) >= 0) {
                    for (char c : String.valueOf(digit(word(k))).toCharArray()) {
                        sum += (c - '0') * step;
                        step /= 10;
                    }
                    k++;
                    if (k - i > 2) {
                        break;
                    }
                }
                if (k > i + 1) {
                    i = k;
                    return sum;
                }
                return 0;
            }
            int and = word(i).equals("and") ? 1 : 0;
            if (word(i + and).equals("a") && word(i + and + 1).equals("half")
                    || word(i + and).equals("half") && and == 1) {
                i += and + (word(i + and).equals("a") ? 2 : 1);
                return 0.5;
            }
            if (word(i + and).equals("a") && word(i + and + 1).equals("quarter")) {
                i += and + 2;
                return 0.25;
            }
            if (word(i + and).equals("three") && word(i + and + 1).equals("quarters")) {
                i += and + 2;
                return 0.75;
            }
            return 0;
        }

        private static int digit(String word) {
            if (TWO.matcher(word).matches()) {
                return Integer.parseInt(word);
            }
            if (word.equals("oh") || word.equals("o")) {
                return 0;
            }
            Integer value = WORDS.get(word);
            return value == null || value > 9 ? -1 : value;
        }
    }
}
