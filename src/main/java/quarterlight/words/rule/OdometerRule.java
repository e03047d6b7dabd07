package quarterlight.words.rule;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import quarterlight.car.ZoneId;
import quarterlight.words.DraftKind;
import quarterlight.words.Facet;
import quarterlight.words.clause.DraftBuilder;
import quarterlight.words.clause.Meaning;
import quarterlight.words.clause.Moment;
import quarterlight.words.clause.Rule;
import quarterlight.words.lexicon.TermKind;
import quarterlight.words.text.Clause;
import quarterlight.words.text.SpokenCode;
import quarterlight.words.text.SpokenNumber;

/** The figure of the odometer, as a number or figure by figure. */
final class OdometerRule implements Rule {
    private static final int MIN_FIGURE = 100;
    private static final int MAX_LENGTH = 7;
    private static final int MIN_LENGTH = 4;

    @Override
    public void read(Moment moment, List<DraftBuilder> found) {
        Clause clause = moment.clause();
        boolean here = moment.has(TermKind.ODOMETER);
        boolean near = here
                || Stream.concat(moment.earlier().stream(), moment.before(3))
                        .limit(3)
                        .anyMatch(m -> m.has(TermKind.ODOMETER));
        if (!here && (moment.has(TermKind.PART) || moment.has(TermKind.MARK) || moment.has(TermKind.ITEM))) {
            return;
        }
        if (!near || moment.has(TermKind.CLAIM)) {
            return;
        }
        figure(clause, here)
                .ifPresent(figure -> found.add(new DraftBuilder(DraftKind.ODOMETER, moment)
                        .zones(List.of(new ZoneId("dash")))
                        .with(Facet.TEXT, figure)
                        .with(Facet.VALUE, figure)
                        .because(Meaning.quote("odometer", figure))
                        .feature("odometer-here", here)
                        .feature("odometer-long", figure.length() >= MIN_LENGTH + 1)));
    }

    private static Optional<String> figure(Clause clause, boolean here) {
        Optional<String> code = SpokenCode.in(clause.tokens(), MIN_LENGTH).stream()
                .filter(c -> c.letters() == 0
                        && c.text().length() <= MAX_LENGTH
                        && !c.text().contains("?"))
                .map(c -> c.text().replaceFirst("^0+(?=.)", ""))
                .reduce((a, b) -> a.length() >= b.length() ? a : b);
        for (int i = 0; i < clause.size(); i++) {
            Optional<SpokenNumber> number = SpokenNumber.at(clause.tokens(), i);
            if (number.isPresent() && number.get().length() > 1 && number.get().value() >= 1000) {
                return number.map(n -> String.valueOf((long) n.value()));
            }
        }
        if (code.isPresent()) {
            return code;
        }
        for (int i = 0; here && i < clause.size(); i++) {
            Optional<SpokenNumber> number = SpokenNumber.at(clause.tokens(), i);
            if (number.isPresent() && number.get().value() >= MIN_FIGURE) {
                return number.map(n -> String.valueOf((long) n.value()));
            }
        }
        return Optional.empty();
    }
}
