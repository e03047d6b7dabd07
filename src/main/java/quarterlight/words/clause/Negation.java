package quarterlight.words.clause;

import java.util.Set;
import quarterlight.words.lexicon.Mention;
import quarterlight.words.lexicon.TermKind;
import quarterlight.words.text.Clause;

/** Whether a phrase is denied where it stands: "no cracks", "hasn't been welded", "none of it leaks". Pure. */
public final class Negation {
    private static final int REACH = 5;
    private static final Set<String> BREAKS = Set.of("but", "except", "just", "only", "besides");
    private static final Set<TermKind> SAYING =
            Set.of(TermKind.CONDITION, TermKind.ORIGIN, TermKind.SIGN, TermKind.SIGNNO, TermKind.GOOD);

    private Negation() {}

    public static boolean of(Clause clause, Mention said) {
        return clause.all(TermKind.NEG)
                .filter(neg -> neg.to() <= said.from() && said.from() - neg.to() <= REACH)
                .anyMatch(neg -> free(clause, neg.to(), said.from(), said));
    }

    private static boolean free(Clause clause, int from, int to, Mention said) {
        for (int i = from; i < to; i++) {
            if (BREAKS.contains(clause.word(i))) {
                return false;
            }
        }
        return clause.mentions().stream()
                .filter(m -> SAYING.contains(m.kind()) && !m.overlaps(said))
                .noneMatch(m -> m.from() >= from
                        && m.to() <= to
                        && !clause.word(m.to()).equals("or")
                        && !clause.word(m.to()).equals("and"));
    }
}
