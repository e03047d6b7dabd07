package quarterlight.words.rule;

import java.util.List;
import quarterlight.words.DraftKind;
import quarterlight.words.clause.DraftBuilder;
import quarterlight.words.clause.Moment;
import quarterlight.words.clause.Rule;
import quarterlight.words.lexicon.TermKind;
import quarterlight.words.text.SpokenNumber;

/** The check of the gauge on bare metal and shims. */
final class GaugeRule implements Rule {
    @Override
    public void read(Moment moment, List<DraftBuilder> found) {
        boolean figures = moment.clause().tokens().stream().anyMatch(t -> SpokenNumber.isNumberWord(t.word()));
        moment.clause()
                .first(TermKind.GAUGECHECK)
                .filter(m -> figures)
                .ifPresent(m -> found.add(new DraftBuilder(DraftKind.GAUGE, moment)
                        .zones(List.of())
                        .from(m, "a check of the gauge")));
    }
}
