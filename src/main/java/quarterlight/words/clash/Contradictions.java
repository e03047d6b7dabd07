package quarterlight.words.clash;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.pin.Recorded;
import quarterlight.words.Draft;
import quarterlight.words.Utterance;
import quarterlight.words.clause.Heard;

/**
 * Finds what contradicts each other among words, claims, papers, marks, readings and statements. It names both and decides nothing; a pair may be
 * explained by another place of the same panel, or by a later look. Rules in {@link Opposition}. Pure.
 */
public final class Contradictions {
    /** From here on a draft is taken as said. */
    private static final double LIKELY = 0.5;

    /** So many grounds against one sweeping word are told. */
    private static final int MAX_GROUNDS = 3;

    private Contradictions() {}

    /** Which rows of the visit come from the words of the walk, and are there already. */
    @FunctionalInterface
    public interface FromWords {
        boolean is(Recorded<?> row);
    }

    /**
     * Every pair, in the order of the walk; what only rows say comes last.
     *
     * @param dropped drafts that the inspector dropped or kept otherwise
     * @param fromWords rows made of drafts as they were read
     * @param ear reads a sentence that was written
     */
    public static List<Contradiction> of(
            Heard walk, VisitRecord visit, Predicate<Draft> dropped, FromWords fromWords, Function<String, Heard> ear) {
        List<String> sources = walk.moments().stream()
                .map(moment -> moment.clause().source())
                .distinct()
                .toList();
        List<Assertion> all =
                new ArrayList<>(SpokenAssertions.of(walk, draft -> draft.p() >= LIKELY && !dropped.test(draft)));
        all.sort(Comparator.comparingInt(
                        (Assertion one) -> sources.indexOf(words(one).source()))
                .thenComparingDouble(one -> words(one).atSeconds()));
        all.addAll(RowAssertions.of(visit, row -> !fromWords.is(row), ear));
        return pairs(all);
    }

    private static Utterance words(Assertion spoken) {
        return spoken.from().heard().orElseThrow();
    }

    private static List<Contradiction> pairs(List<Assertion> all) {
        Opposition opposition = new Opposition(all);
        Map<Testimony, Integer> grounds = new HashMap<>();
        Set<Set<Testimony>> told = new HashSet<>();
        List<Contradiction> found = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            for (int j = i + 1; j < all.size(); j++) {
                Assertion one = all.get(i);
                Assertion other = all.get(j);
                if (one.from().isOneWith(other.from())) {
                    continue;
                }
                Optional<Opposition.Ground> ground = opposition.of(one, other);
                if (ground.isPresent() && told.add(Set.of(one.from(), other.from())) && hasRoom(one, other, grounds)) {
                    found.add(new Contradiction(
                            ground.get().about(),
                            ground.get().about() == About.FUNCTION ? List.of() : one.common(other),
                            one.from(),
                            other.from(),
                            ground.get().why()));
                }
            }
        }
        return List.copyOf(found);
    }

    private static boolean hasRoom(Assertion one, Assertion other, Map<Testimony, Integer> grounds) {
        for (Assertion each : List.of(one, other)) {
            if (each.said() instanceof Assertion.Sweeping
                    && grounds.merge(each.from(), 1, Integer::sum) > MAX_GROUNDS) {
                return false;
            }
        }
        return true;
    }
}
