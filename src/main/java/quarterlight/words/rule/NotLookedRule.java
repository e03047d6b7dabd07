package quarterlight.words.rule;

import java.util.List;
import quarterlight.words.DraftKind;
import quarterlight.words.clause.DraftBuilder;
import quarterlight.words.clause.Moment;
import quarterlight.words.clause.Rule;
import quarterlight.words.lexicon.TermKind;

/** What the inspector says was not looked at. */
final class NotLookedRule implements Rule {
    @Override
    public void read(Moment moment, List<DraftBuilder> found) {
        moment.clause()
                .first(TermKind.NOTLOOKED)
                .or(() -> moment.clause().first(TermKind.NOTTRIED).filter(m -> !moment.has(TermKind.ITEM)))
                .ifPresent(m -> found.add(new DraftBuilder(DraftKind.NOT_LOOKED_AT, moment)
                        .from(m, DraftKind.NOT_LOOKED_AT.said())
                        .feature("not-looked-with-item", moment.has(TermKind.ITEM))
                        .feature("not-looked-as-not-tried", m.kind() == TermKind.NOTTRIED)
                        .feature("not-looked-with-condition", moment.has(TermKind.CONDITION))
                        .feature("not-looked-part-here", moment.has(TermKind.PART))));
    }
}
