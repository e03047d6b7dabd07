package quarterlight.words.rule;

import static quarterlight.language.Sentences.say;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.words.Facet;
import quarterlight.words.clause.DraftBuilder;
import quarterlight.words.text.SpokenNumber;
import quarterlight.words.text.Token;
import quarterlight.words.text.WordSet;

/**
 * The figure of a function that is measured, as it is said: "twelve point four" and "fourteen one" volts, "five thirty-seconds" of tread, the lowest of the
 * cylinders. Pure.
 *
 * @param all every figure that was said, in order; more than one for cylinders alone
 */
record SpokenMeasure(double value, String unit, List<Double> all) {
    private static final String VOLT = "V";
    private static final String PSI = "psi";
    private static final String THIRTY_SECOND = "1/32 in";
    /** In which unit each is measured unless another is said, and within which figures. */
    private static final Map<String, Usual> USUAL = Map.of(
            "Battery at rest",
            new Usual(VOLT, 4, 30),
            "Charging",
            new Usual(VOLT, 4, 30),
            "Compression, lowest cylinder",
            new Usual(PSI, 20, 320),
            "Oil pressure warm",
            new Usual(PSI, 1, 120),
            "Idles",
            new Usual("rpm", 300, 2500));

    private static final Usual TREAD = new Usual("", 0.5, 20);
    private static final Set<String> PLACED = WordSet.of("number cylinder cylinders hole on in bank ");
    private static final int CYLINDERS = 16;
    private static final double LEAST_BAR = 2;
    private static final double MOST_BAR = 25;

    private record Usual(String unit, double least, double most) {}

    SpokenMeasure {
        all = List.copyOf(all);
    }

    /** What is measured of a function; empty if it is no measure or no figure that can be one is said. */
    static Optional<SpokenMeasure> of(String item, List<Token> tokens) {
        if (item.startsWith("Tread")) {
            return tread(tokens);
        }
        Usual usual = USUAL.get(item);
        if (usual == null) {
            return Optional.empty();
        }
        if (item.startsWith("Compression")) {
            return lowest(tokens, usual);
        }
        for (int i = 0; i < tokens.size(); i++) {
            Optional<SpokenNumber> number = usual.unit().equals(VOLT) ? volts(tokens, i) : SpokenNumber.at(tokens, i);
            Optional<Double> fit = number.filter(n -> n.value() >= usual.least() && n.value() <= usual.most())
                    .map(SpokenNumber::value);
            if (fit.isPresent()) {
                return Optional.of(new SpokenMeasure(fit.get(), usual.unit(), List.of(fit.get())));
            }
            i += number.map(n -> n.length() - 1).orElse(0);
        }
        return Optional.empty();
    }

    /** With what is said on: more cylinders; of any other function the first figure stands. */
    SpokenMeasure and(SpokenMeasure next) {
        if (!(unit.equals(PSI) || unit.equals("bar")) || !unit.equals(next.unit)) {
            return this;
        }
        List<Double> both = new ArrayList<>(all);
        both.addAll(next.all);
        return new SpokenMeasure(Math.min(value, next.value), unit, both);
    }

    /** Writes it down. */
    void note(DraftBuilder finding) {
        finding.with(Facet.VALUE, text(value)).with(Facet.UNIT, unit);
        if (all.size() > 1) {
            finding.because(
                    say("draft.lowest", all.stream().map(SpokenMeasure::text).collect(Collectors.joining(", ")), unit));
        }
    }

    private static String text(double figure) {
        return BigDecimal.valueOf(figure)
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** Whether figures of volts are said: of a battery at rest or one that is charged. */
    static boolean saysVolts(List<Token> tokens) {
        for (int i = 0; i < tokens.size(); i++) {
            Optional<SpokenNumber> number = volts(tokens, i);
            if (number.isPresent()
                    && number.get().value() > 9
                    && number.get().value() < 17
                    && (number.get().length() > 1 || tokens.get(i).word().contains("."))) {
                return true;
            }
            i += number.map(n -> n.length() - 1).orElse(0);
        }
        return false;
    }

    /** "fourteen one" is 14.1, as volts are said. */
    private static Optional<SpokenNumber> volts(List<Token> tokens, int at) {
        Optional<SpokenNumber> whole = SpokenNumber.at(tokens, at);
        boolean bare = whole.filter(n -> n.length() == 1 && n.value() >= 5 && n.value() <= 16 && n.value() % 1 == 0)
                .isPresent();
        if (!bare) {
            return whole;
        }
        Optional<SpokenNumber> tenth =
                SpokenNumber.at(tokens, at + 1).filter(n -> n.length() == 1 && n.value() <= 9 && n.value() % 1 == 0);
        return tenth.map(n -> new SpokenNumber(whole.get().value() + n.value() / 10, 2))
                .or(() -> whole);
    }

    /** "five thirty-seconds", "5/32", "6 32nds", "four millimeters". */
    private static Optional<SpokenMeasure> tread(List<Token> tokens) {
        for (int i = 0; i < tokens.size(); i++) {
            Optional<SpokenNumber> number = treadDepth(tokens, i);
            if (number.isEmpty()) {
                continue;
            }
            int to = i + number.get().length();
            String next = word(tokens, to);
            String after = word(tokens, to + 1);
            boolean thirtySeconds = next.equals("thirty") && (after.equals("second") || after.equals("seconds"))
                    || next.equals("32nds")
                    || next.equals("32nd")
                    || next.equals("32");
            if (thirtySeconds || next.startsWith("millimet") || next.equals("mm")) {
                double value = number.get().value();
                return Optional.of(new SpokenMeasure(value, thirtySeconds ? THIRTY_SECOND : "mm", List.of(value)));
            }
        }
        return Optional.empty();
    }

    private static Optional<SpokenNumber> treadDepth(List<Token> tokens, int at) {
        return SpokenNumber.at(tokens, at).filter(n -> n.value() >= TREAD.least() && n.value() <= TREAD.most());
    }

    /** Every cylinder's figure; which cylinder it is of is no figure. */
    private static Optional<SpokenMeasure> lowest(List<Token> tokens, Usual usual) {
        boolean bar = tokens.stream().anyMatch(t -> t.is("bar", "bars"));
        List<Double> all = new ArrayList<>();
        int i = 0;
        while (i < tokens.size()) {
            Optional<SpokenNumber> number = bar ? SpokenNumber.at(tokens, i) : SpokenNumber.hundreds(tokens, i);
            if (PLACED.contains(word(tokens, i - 1)) && isCylinder(tokens, i)) {
                i++;
                continue;
            }
            number.map(SpokenNumber::value)
                    .filter(value -> bar
                            ? value >= LEAST_BAR && value <= MOST_BAR
                            : value >= usual.least() && value <= usual.most())
                    .ifPresent(all::add);
            i += number.map(SpokenNumber::length).orElse(1);
        }
        return all.stream()
                .min(Double::compare)
                .map(least -> new SpokenMeasure(least, bar ? "bar" : usual.unit(), all));
    }

    private static boolean isCylinder(List<Token> tokens, int at) {
        return SpokenNumber.at(tokens.subList(0, Math.min(tokens.size(), at + 1)), at)
                .filter(n -> n.value() >= 1 && n.value() <= CYLINDERS && n.value() % 1 == 0)
                .isPresent();
    }

    private static String word(List<Token> tokens, int at) {
        return at >= 0 && at < tokens.size() ? tokens.get(at).word() : "";
    }
}
