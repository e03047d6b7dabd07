package quarterlight.words.place;

import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import quarterlight.words.lexicon.Mention;
import quarterlight.words.lexicon.PartName;
import quarterlight.words.lexicon.TermKind;
import quarterlight.words.text.Clause;
import quarterlight.words.text.WordSet;

/** Which clauses lead to another region of the walk: "underneath now" does, "the outside edge" and "it's green underneath" do not. Pure. */
final class Regions {
    private static final Set<String> PASSING = Set.of("from", "of", "to", "like", "for");
    private static final Set<String> GOES_ON = Set.of("it", "the", "of", "that", "this");
    /** "The outside edge": inside and outside of one part. */
    private static final Set<String> OF_A_PART = WordSet.of(
            "and bolster bottom corner corners edge edges face faces half layer lip mirror one panel seam sidewall skin"
                    + " surface top wall");

    private static final Set<String> OPENING = Set.of("and", "but", "so", "well", "though");
    /** What is said of the place at hand begins with one of these. */
    private static final Set<String> POINTING = WordSet.of("it it's no that's there's they're");

    private Regions() {}

    /** @param met whether a name that needs another part at hand means it here: "the inside" of a hood */
    static Optional<String> entered(Clause clause, boolean atHand, Predicate<PartName> met) {
        return clause.all(TermKind.REGION)
                .filter(m -> clause.all(TermKind.PART).noneMatch(p -> p.overlaps(m) && p.length() > m.length()))
                .filter(m -> clause.all(TermKind.PART)
                        .noneMatch(p -> p.overlaps(m)
                                && p.phrase().part().when().startsWith("on-")
                                && met.test(p.phrase().part())))
                .filter(m -> !clause.has(TermKind.HYPO) && !clause.has(TermKind.OTHER) || clause.size() <= 4)
                .filter(m -> clause.all(TermKind.MARK).noneMatch(o -> o.overlaps(m) && o.length() > m.length()))
                .filter(m -> !PASSING.contains(clause.word(m.from() - 1)) && !GOES_ON.contains(clause.word(m.to())))
                .filter(m -> !(m.length() == 1 && OF_A_PART.contains(clause.word(m.to()))))
                .filter(m -> !(atHand && ofPlace(clause, m)))
                .findFirst()
                .map(Mention::value);
    }

    /** "It's green underneath", "that's rust under it", "I can't get it in the air": no step of the walk. */
    private static boolean ofPlace(Clause clause, Mention region) {
        int first = OPENING.contains(clause.word(0)) ? 1 : 0;
        boolean pointing = region.from() > first && POINTING.contains(clause.word(first));
        boolean denied = clause.all(TermKind.NEG).anyMatch(n -> n.from() < region.from());
        boolean relative = clause.word(region.to() - 1).equals("it")
                && (region.from() > first || clause.has(TermKind.CONDITION) || clause.has(TermKind.ORIGIN));
        return pointing || denied || relative;
    }
}
