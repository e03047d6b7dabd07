package quarterlight.words.text;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import quarterlight.words.lexicon.Mention;

/**
 * Cuts speech into clauses, with and without punctuation. Without it a clause ends before a word that opens a new thought ("okay",
 * "but"), and before the name of a part or a subject ("it's", "somebody") once the clause has said something. Pure.
 */
public final class Clauses {
    private Clauses() {}

    public static List<Clause> of(String source, List<Token> tokens, List<Mention> all) {
        List<Mention> mentions =
                all.stream().filter(m -> m.kind().givesDrafts()).toList();
        List<Mention> aside = all.stream().filter(m -> !m.kind().givesDrafts()).toList();
        boolean punctuated = Tokens.punctuated(tokens);
        Map<Integer, List<Mention>> byStart = new HashMap<>();
        Set<Integer> byEnd = new HashSet<>();
        mentions.stream().filter(m -> CutWords.NAMING.contains(m.kind())).forEach(m -> byEnd.add(m.to()));
        BitSet inside = new BitSet(tokens.size() + 1);
        for (Mention m : mentions) {
            byStart.computeIfAbsent(m.from(), k -> new ArrayList<>()).add(m);
            for (int i = m.from() + 1; i < m.to(); i++) {
                inside.set(i);
            }
        }
        Cutter cutter = new Cutter(tokens, byStart, byEnd, inside, punctuated);
        Voices voices = new Voices(tokens, byStart, punctuated);
        List<Clause> clauses = new ArrayList<>();
        int start = 0;
        int sentence = 0;
        boolean told = false;
        for (int i = 1; i <= tokens.size(); i++) {
            boolean end = i == tokens.size();
            boolean stop = !end && cutter.sentenceEnds(i);
            if (end || stop || cutter.cuts(start, i)) {
                told = voices.told(start, told);
                clauses.add(clause(source, tokens, byStart, start, i, sentence, told)
                        .aside(within(aside, start, i)));
                sentence += stop || end ? 1 : 0;
                start = i;
            }
        }
        return List.copyOf(clauses);
    }

    /** The mentions of a clause come from those that begin in it: they stand in the order of their beginnings. */
    private static Clause clause(
            String source,
            List<Token> tokens,
            Map<Integer, List<Mention>> byStart,
            int from,
            int to,
            int sentence,
            boolean told) {
        List<Mention> own = IntStream.range(from, to)
                .mapToObj(i -> byStart.getOrDefault(i, List.of()))
                .flatMap(List::stream)
                .filter(m -> m.to() <= to)
                .map(m -> m.countedFrom(from))
                .toList();
        return new Clause(source, tokens.subList(from, to), own, sentence, told);
    }

    private static List<Mention> within(List<Mention> aside, int from, int to) {
        return aside.stream()
                .filter(m -> m.from() >= from && m.from() < to)
                .map(m -> m.countedFrom(from))
                .toList();
    }
}
