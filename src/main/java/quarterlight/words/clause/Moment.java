package quarterlight.words.clause;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import quarterlight.words.lexicon.Mention;
import quarterlight.words.lexicon.TermKind;
import quarterlight.words.place.SpokenPlace;
import quarterlight.words.text.Clause;

/** A clause with the place it speaks of, among its neighbors. */
public record Moment(Clause clause, SpokenPlace place, int index, List<Moment> all) {
    private static final Set<TermKind> TOPICS = Set.of(TermKind.PART, TermKind.ITEM);

    public boolean has(TermKind kind) {
        return clause.has(kind);
    }

    public Stream<Mention> all(TermKind kind) {
        return clause.all(kind);
    }

    /** The clauses that follow in the same sentence, up to one that names another part or function. */
    public List<Moment> rest() {
        int end = index + 1;
        while (end < all.size() && sameThought(all.get(end))) {
            end++;
        }
        return all.subList(Math.min(index + 1, all.size()), end);
    }

    private boolean sameThought(Moment next) {
        return next.clause.sentence() == clause.sentence()
                && next.clause.source().equals(clause.source())
                && next.clause.at() - clause.at() < 12
                && next.clause.mentions().stream().noneMatch(m -> TOPICS.contains(m.kind()));
    }

    /** The clause before, if it belongs to the same file and was said within some seconds. */
    public Stream<Moment> before(double seconds) {
        if (index == 0) {
            return Stream.empty();
        }
        Moment last = all.get(index - 1);
        return last.clause.source().equals(clause.source()) && clause.at() - last.clause.until() <= seconds
                ? Stream.of(last)
                : Stream.empty();
    }

    /** The clauses just before, the nearest first, whatever sentence they belong to. */
    public Stream<Moment> lately(int count, double seconds) {
        return java.util.stream.IntStream.iterate(index - 1, i -> i >= 0 && i >= index - count, i -> i - 1)
                .mapToObj(all::get)
                .filter(m -> m.clause.source().equals(clause.source()) && clause.at() - m.clause.at() <= seconds);
    }

    /** The earlier clauses of the same sentence, the nearest first. */
    public List<Moment> earlier() {
        int from = index;
        while (from > 0
                && all.get(from - 1).clause.sentence() == clause.sentence()
                && all.get(from - 1).clause.source().equals(clause.source())
                && clause.at() - all.get(from - 1).clause.at() < 20) {
            from--;
        }
        List<Moment> found = new java.util.ArrayList<>(all.subList(from, index));
        java.util.Collections.reverse(found);
        return found;
    }
}
