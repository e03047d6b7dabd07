package quarterlight.visit.statement;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.units.Worded;

/** What a statement says in words of closed lists: what it is, how it is, or both. */
public record Facets(Optional<Origin> origin, Optional<Condition> condition) {
    public Facets {
        Objects.requireNonNull(origin, "origin");
        Objects.requireNonNull(condition, "condition");
        if (origin.isEmpty() && condition.isEmpty()) {
            throw new IllegalArgumentException("a statement has an origin or a condition");
        }
    }

    public static Facets of(Origin origin) {
        return new Facets(Optional.of(origin), Optional.empty());
    }

    public static Facets of(Condition condition) {
        return new Facets(Optional.empty(), Optional.of(condition));
    }

    /** The word of the earlier single list: {@code as built} means original, the others are origins or conditions. */
    public static Optional<Facets> ofEarlierKind(String word) {
        if (word.strip().equalsIgnoreCase("as built")) {
            return Optional.of(of(Origin.ORIGINAL));
        }
        return Worded.find(Origin.class, word).map(Facets::of).or(() -> Worded.find(Condition.class, word)
                .map(Facets::of));
    }

    public boolean is(Origin wanted) {
        return origin.equals(Optional.of(wanted));
    }

    public boolean is(Condition wanted) {
        return condition.equals(Optional.of(wanted));
    }

    /** Both as they are said in the language in hand: {@code replaced, damaged}. */
    public String words() {
        return joined(Worded::said);
    }

    /** Both by the words of files and keys, whatever the language. */
    public String codes() {
        return joined(Worded::word);
    }

    private String joined(Function<Worded, String> words) {
        return Stream.<Optional<? extends Worded>>of(origin, condition)
                .flatMap(Optional::stream)
                .map(words)
                .collect(Collectors.joining(", "));
    }
}
