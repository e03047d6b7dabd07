package quarterlight.words.rule;

import static quarterlight.language.Sentences.say;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import quarterlight.words.DraftKind;
import quarterlight.words.Facet;
import quarterlight.words.clause.DraftBuilder;
import quarterlight.words.clause.Moment;
import quarterlight.words.clause.Rule;
import quarterlight.words.clause.SpokenContext;
import quarterlight.words.lexicon.Mention;
import quarterlight.words.lexicon.TermKind;
import quarterlight.words.text.Clause;
import quarterlight.words.text.SpokenNumber;
import quarterlight.words.text.WordSet;

/**
 * The check of the gauge on bare metal and shims: what the shim is, what the gauge showed on it, and whether it was before the readings or after them.
 */
final class GaugeRule implements Rule {
    private static final Set<String> SHIMS = WordSet.of("shim shims foil foils ");
    private static final Set<String> BARE = WordSet.of("bare zero zeroed ");
    private static final Set<String> NOTHING = WordSet.of("nothing zero zip ");
    private static final Set<String> AFTERWARDS = WordSet.of("again after afterwards done end finished still ");
    /** Without a unit, a figure above this is in micrometers. */
    private static final double MIL_AT_MOST = 45;

    private final SpokenContext ear;

    GaugeRule(SpokenContext ear) {
        this.ear = ear;
    }

    @Override
    public void read(Moment moment, List<DraftBuilder> found) {
        Clause clause = moment.clause();
        Optional<Mention> check = clause.first(TermKind.GAUGECHECK);
        if (check.isEmpty()) {
            return;
        }
        boolean after = clause.tokens().stream().anyMatch(t -> AFTERWARDS.contains(t.word()))
                || found.stream()
                        .anyMatch(f -> f.what == DraftKind.THICKNESS && f.index < moment.index() && !f.withdrawn);
        DraftBuilder finding = new DraftBuilder(DraftKind.GAUGE, moment)
                .zones(List.of())
                .from(check.get(), say("draft.gauge.check"))
                .with(Facet.TEXT, after ? "after" : "before");
        boolean laid = laid(moment, finding);
        if (laid || clause.tokens().stream().anyMatch(t -> SpokenNumber.isNumberWord(t.word()))) {
            found.add(finding.feature("gauge-figures", laid));
        }
    }

    /** What the gauge was laid on and what it showed, where both are said in the clause or the next. */
    private boolean laid(Moment moment, DraftBuilder finding) {
        Clause clause = moment.clause();
        int shim = first(clause, SHIMS);
        int at = shim >= 0 ? shim : first(clause, BARE);
        if (at < 0) {
            return false;
        }
        OptionalDouble nominal = shim >= 0 ? before(clause, shim) : OptionalDouble.of(0);
        OptionalDouble shown = after(clause, at + 1);
        Optional<Moment> next = shown.isPresent() ? Optional.empty() : next(moment);
        if (next.isPresent()) {
            shown = after(next.get().clause(), 0);
        }
        if (nominal.isEmpty() || shown.isEmpty()) {
            return false;
        }
        next.ifPresent(one -> finding.through(List.of(one)));
        double most = Math.max(nominal.getAsDouble(), shown.getAsDouble());
        String unit = clause.first(TermKind.UNIT)
                .or(() -> next.flatMap(one -> one.clause().first(TermKind.UNIT)))
                .map(Mention::value)
                .or(ear::unit)
                .orElse(most > MIL_AT_MOST ? "um" : "mil");
        finding.with(Facet.KIND, shim >= 0 ? "shim" : "bare")
                .with(Facet.EXPECTED, text(nominal.getAsDouble()))
                .with(Facet.VALUE, text(shown.getAsDouble()))
                .with(Facet.UNIT, unit)
                .because(say(
                        shim >= 0 ? "draft.gauge.shim" : "draft.gauge.bare",
                        text(nominal.getAsDouble()),
                        text(shown.getAsDouble()),
                        unit));
        return true;
    }

    private static Optional<Moment> next(Moment moment) {
        return moment.all().stream()
                .skip(moment.index() + 1L)
                .limit(1)
                .filter(one -> one.clause().source().equals(moment.clause().source())
                        && !one.has(TermKind.PART)
                        && !one.has(TermKind.GAUGECHECK))
                .findFirst();
    }

    private static int first(Clause clause, Set<String> words) {
        for (int i = 0; i < clause.size(); i++) {
            if (words.contains(clause.word(i))) {
                return i;
            }
        }
        return -1;
    }

    /** The last number before a place: "the five mil shim". */
    private static OptionalDouble before(Clause clause, int end) {
        OptionalDouble last = OptionalDouble.empty();
        int i = 0;
        while (i < end) {
            Optional<SpokenNumber> number = SpokenNumber.at(clause.tokens(), i);
            last = number.isPresent() ? OptionalDouble.of(number.get().value()) : last;
            i += number.map(SpokenNumber::length).orElse(1);
        }
        return last;
    }

    /** The first number behind a place, "point two" and "nothing" among them. */
    private static OptionalDouble after(Clause clause, int from) {
        for (int i = from; i < clause.size(); i++) {
            if (NOTHING.contains(clause.word(i))) {
                return OptionalDouble.of(0);
            }
            Optional<SpokenNumber> number = SpokenNumber.at(clause.tokens(), i);
            if (number.isPresent()) {
                boolean tenths = clause.word(i - 1).equals("point");
                return OptionalDouble.of(
                        tenths ? number.get().value() / 10 : number.get().value());
            }
        }
        return OptionalDouble.empty();
    }

    private static String text(double value) {
        return BigDecimal.valueOf(value)
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
