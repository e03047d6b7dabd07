package quarterlight.words.text;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import quarterlight.words.lexicon.Mention;
import quarterlight.words.lexicon.TermKind;

/**
 * Where speech without punctuation turns to another part: its name stands here as a subject, with a verb behind it ("... tanks are old |
 * steering box is leaking").
 *
 * @param byStart what the lexicon knows, by the token with which it begins
 */
record Subjects(List<Token> tokens, Map<Integer, List<Mention>> byStart) {
    private static final int WIDEST = 5;

    /** Behind these a part with its verb is an object, a condition or a comparison. */
    private static final Set<String> HOLDING = WordSet.of(
            "'cause after as because before believe bet feel figure guess hear heard hope how if know like mean say"
                    + " says see swear tell than think till unless until what when where whether which while why");

    private static final Set<String> VERBS = WordSet.of(
            "ain't are aren't comes doesn't don't feels goes has hasn't is isn't latches leaks looks moves needs opens"
                    + " reads rings runs says shows shuts sits smells sounds sticks turns was wasn't were works won't");

    /** Behind "'s" these show that it is a verb and no owner. */
    private static final Set<String> AFTER_S = WordSet.of(
            "a all already also always an been been both clean dead done falling fine full getting going gone good got"
                    + " had half hanging here in just kind like mostly never new no nothing not off ok okay on only"
                    + " original out pretty real really right rotten shot sitting so solid some sort still straight the"
                    + " there too up very wet");

    private static final Set<String> ENDS = Set.of("front", "rear", "left", "right", "back");
    private static final Set<String> PLACING = WordSet.of("on over at in");

    private static final Set<TermKind> SAYING = Set.of(
            TermKind.CONDITION,
            TermKind.ORIGIN,
            TermKind.SIGN,
            TermKind.SIGNNO,
            TermKind.GOOD,
            TermKind.BAD,
            TermKind.PARTIAL,
            TermKind.NEG,
            TermKind.NOTLOOKED,
            TermKind.NOTTRIED);

    /** A part with its verb begins here, and nothing before it takes it in. */
    boolean begins(int i) {
        if (i > 0 && HOLDING.contains(tokens.get(i - 1).word()) && !hedged(i)) {
            return false;
        }
        int k = i;
        while (k < Math.min(i + WIDEST, tokens.size()) && part(k).isEmpty() && other(i).isEmpty()) {
            if (!CutWords.BEFORE_PART.contains(tokens.get(k).word())) {
                return false;
            }
            k++;
        }
        return k < tokens.size()
                && part(k).or(() -> other(i)).filter(m -> verb(placed(m.to()))).isPresent();
    }

    /** "far as I can see | torque boxes are ...". */
    private boolean hedged(int i) {
        return IntStream.range(Math.max(0, i - WIDEST), i)
                .mapToObj(k -> byStart.getOrDefault(k, List.of()))
                .flatMap(List::stream)
                .anyMatch(m -> m.kind() == TermKind.HEDGE && m.length() > 2 && m.to() == i);
    }

    /** "behind the wheel | bonnet ...": two parts beside each other, the first of which is an object. */
    boolean follows(int start, int i) {
        if (part(i).isEmpty()) {
            return false;
        }
        for (int k = i - 1; k > start; k--) {
            if (part(k).filter(m -> m.to() == i).isPresent()) {
                String before = word(k - 1);
                return CutWords.DETERMINERS.contains(before) && k - 1 > start || CutWords.PREPOSITIONS.contains(before);
            }
        }
        return false;
    }

    private Optional<Mention> part(int i) {
        return byStart.getOrDefault(i, List.of()).stream()
                .filter(m -> m.kind() == TermKind.PART)
                .max(Comparator.comparingInt(Mention::length));
    }

    /** "its opposite number", "the other one". */
    private Optional<Mention> other(int i) {
        return byStart.getOrDefault(i, List.of()).stream()
                .filter(m -> m.kind() == TermKind.SIDE && m.length() > 1
                        || m.kind() == TermKind.END && word(m.from()).endsWith("s"))
                .findFirst();
    }

    /** Behind "on the left", "on this side", "here". */
    private int placed(int from) {
        int i = from;
        while (i < from + 2 && ENDS.contains(word(i))) {
            i++;
        }
        if (PLACING.contains(word(i))) {
            int k = i + 1;
            while (k < i + WIDEST
                    && (CutWords.DETERMINERS.contains(word(k)) || CutWords.SIDES.contains(word(k)))
                    && !word(k).equals("'s")) {
                k++;
            }
            boolean side = word(k).equals("side") || word(k).equals("corner") || word(k).equals("end");
            if (side || k > i + 1 && CutWords.SIDES.contains(word(k - 1))) {
                return side ? k + 1 : k;
            }
            return i;
        }
        return word(i).equals("here") || word(i).equals("there") ? i + 1 : i;
    }

    private boolean verb(int i) {
        if (i >= tokens.size() || tokens.get(i - 1).stop() != Punctuation.NONE) {
            return false;
        }
        if (word(i - 1).equals("'s")) {
            return says(i);
        }
        return word(i).equals("'s") ? says(i + 1) : VERBS.contains(word(i)) || Figures.at(tokens, i);
    }

    private boolean says(int i) {
        return AFTER_S.contains(word(i))
                || byStart.getOrDefault(i, List.of()).stream().anyMatch(m -> SAYING.contains(m.kind()));
    }

    private String word(int i) {
        return i < tokens.size() ? tokens.get(i).word() : "";
    }
}
