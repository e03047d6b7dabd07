package quarterlight.words.text;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import quarterlight.words.lexicon.Mention;
import quarterlight.words.lexicon.Phrase;
import quarterlight.words.lexicon.TermKind;

/**
 * Cuts speech into clauses, with and without punctuation. Without it a clause ends before a word that opens a new thought ("okay",
 * "but"), and before the name of a part or a subject ("it's", "somebody") once the clause has said something. Pure.
 */
public final class Clauses {
    private static final Set<String> OPENERS =
            WordSet.of(
            "alright anyhow anyway moving next now ok okay right-o so then uh um well ");
    private static final Set<String> JOINERS =
            WordSet.of(
            "although because but cause except otherwise plus though whereas which while ");
    private static final Set<String> SUBJECTS = WordSet.of(
            "everything he he's here's i i'd i'll i'm i've it it's looks nobody nothing she she's somebody someone "
            + "that that's there there's these they they're they've this those we we've what's whoever you you're you've ");
    private static final Set<String> PREPOSITIONS = WordSet.of(
            "about above across against ahead along around as at back behind below beneath beside between by down for "
            + "from in inside into like near of off on onto out outside over past round than through till to toward "
            + "towards under underneath until up with without ");
    private static final Set<String> BEFORE_PART = WordSet.of(
            "'s a all an any back both driver driver's drivers each every factory far front hand his inner its left "
            + "little lower main my near nearside no offside old one original other outer passenger passengers rear "
            + "right same side that the these this those upper whole your ");
    private static final Set<TermKind> SAYING = Set.of(
            TermKind.CONDITION, TermKind.ORIGIN, TermKind.SIGN, TermKind.SIGNNO, TermKind.GOOD, TermKind.BAD, TermKind.PARTIAL,
            TermKind.NOTTRIED, TermKind.NOTFITTED, TermKind.BYPASSED, TermKind.NOTLOOKED, TermKind.UNIT, TermKind.OVERRANGE);
    private static final Set<TermKind> NAMING = Set.of(TermKind.PART, TermKind.ITEM, TermKind.ODOMETER, TermKind.MARK, TermKind.CLAIM, TermKind.SUBJECT);
    private static final double PAUSE_S = 2.5;

    private Clauses() {}

    public static List<Clause> of(String source, List<Token> tokens, List<Mention> mentions) {
        boolean punctuated = Tokens.punctuated(tokens);
        Map<Integer, List<Mention>> byStart = new HashMap<>();
        boolean[] inside = new boolean[tokens.size() + 1];
        for (Mention m : mentions) {
            byStart.computeIfAbsent(m.from(), k -> new ArrayList<>()).add(m);
            for (int i = m.from() + 1; i < m.to(); i++) {
                inside[i] = true;
            }
        }
        Cutter cutter = new Cutter(tokens, byStart, inside, punctuated);
        List<Clause> clauses = new ArrayList<>();
        int start = 0;
        int sentence = 0;
        boolean told = false;
        for (int i = 1; i <= tokens.size(); i++) {
            boolean end = i == tokens.size();
            boolean stop = !end && cutter.sentenceEnds(i);
            if (end || stop || cutter.cuts(start, i)) {
                if (tokens.get(start).speaker()) {
                    told = !told;
                } else if (told && !punctuated && OPENERS.contains(tokens.get(start).word())) {
                    told = false;
                }
                clauses.add(clause(source, tokens, mentions, start, i, sentence, told));
                if (told && !punctuated && tokens.get(i - 1).at() - tokens.get(start).at() > 8) {
                    told = false;
                }
                sentence += stop || end ? 1 : 0;
                start = i;
            }
        }
        return List.copyOf(clauses);
    }

    private static Clause clause(
            String source, List<Token> tokens, List<Mention> mentions, int from, int to, int sentence, boolean told) {
        List<Mention> own = mentions.stream()
                .filter(m -> m.from() >= from && m.to() <= to)
                .map(m -> new Mention(m.phrase(), m.from() - from, m.to() - from))
                .toList();
        return new Clause(source, tokens.subList(from, to), own, sentence, told);
    }

    private record Cutter(List<Token> tokens, Map<Integer, List<Mention>> byStart, boolean[] inside, boolean punctuated) {
        boolean sentenceEnds(int i) {
            Token before = tokens.get(i - 1);
            Token next = tokens.get(i);
            if (next.speaker() || before.stop() == Stop.SENTENCE || next.at() - before.until() > PAUSE_S) {
                return true;
            }
            return !punctuated && OPENERS.contains(next.word()) && !inside[i] && opens(i);
        }

        private boolean opens(int i) {
            String word = tokens.get(i).word();
            String before = tokens.get(i - 1).word();
            if (word.equals("now")) {
                return !before.equals("right") && !before.equals("for") && !before.equals("by");
            }
            if (word.equals("so")) {
                return !WordSet.of(
            "are ever is just not or say think was ").contains(before);
            }
            if (word.equals("well")) {
                return !WordSet.of(
            "as pretty real spare tire very wheel works ").contains(before);
            }
            if (word.equals("next")) {
                return !Set.of("the", "right").contains(before);
            }
            return true;
        }

        boolean cuts(int start, int i) {
            if (inside[i]) {
                return false;
            }
            Token before = tokens.get(i - 1);
            String word = tokens.get(i).word();
            if (before.stop() == Stop.COMMA) {
                return !(joinsNumbers(i));
            }
            if (JOINERS.contains(word)) {
                return true;
            }
            boolean said = said(start, i);
            if (word.equals("and") || word.equals("or")) {
                return said && !numberAt(i + 1) && !fractionAt(i + 1);
            }
            if (claimed(start, i)) {
                return false;
            }
            if (!said && !(named(start, i) && startsPart(i))) {
                return false;
            }
            if (SUBJECTS.contains(word) && !PREPOSITIONS.contains(before.word()) && !BEFORE_PART.contains(before.word())
                    && !JOINERS.contains(before.word()) && !before.is("and", "so", "if", "when", "where", "what", "how", "because", "see", "say", "think", "till")) {
                return !word.equals("that") && !word.equals("this") && !word.equals("it") && !word.equals("you") && !word.equals("there")
                        || said;
            }
            return startsPart(i) || startsSide(i);
        }

        /** A part or a function is named here, as the subject of what follows. */
        private boolean startsPart(int i) {
            if (PREPOSITIONS.contains(tokens.get(i - 1).word()) || BEFORE_PART.contains(tokens.get(i - 1).word())
                    || tokens.get(i - 1).is("and", "or")) {
                return false;
            }
            for (int k = i; k < Math.min(i + 5, tokens.size()); k++) {
                if (byStart.getOrDefault(k, List.of()).stream().anyMatch(m -> NAMING.contains(m.kind()))) {
                    return true;
                }
                if (!BEFORE_PART.contains(tokens.get(k).word())) {
                    return false;
                }
            }
            return false;
        }

        /** "left one", "the other side", "right rear": a subject without its part. */
        private boolean startsSide(int i) {
            String before = tokens.get(i - 1).word();
            if (PREPOSITIONS.contains(before) || BEFORE_PART.contains(before) || before.equals("and")) {
                return false;
            }
            int k = tokens.get(i).is("the") ? i + 1 : i;
            if (k + 1 >= tokens.size()) {
                return false;
            }
            Token side = tokens.get(k);
            Token after = tokens.get(k + 1);
            if (k == i + 1 && side.is("one", "other", "inner", "outer", "left", "right", "whole")) {
                return true;
            }
            return side.is("left", "right", "other", "far", "front", "rear", "driver", "passenger", "same", "both")
                    && after.is("one", "side", "ones", "'s", "left", "right", "is", "front", "rear", "of", "corner", "gone", "isn't", "has", "looks", "was", "i", "can't", "good");
        }

        private boolean fractionAt(int i) {
            String word = i < tokens.size() ? tokens.get(i).word() : "";
            String next = i + 1 < tokens.size() ? tokens.get(i + 1).word() : "";
            return word.equals("half") || word.equals("a") && (next.equals("half") || next.equals("quarter"));
        }

        private boolean claimed(int start, int i) {
            for (int k = Math.max(start, i - 14); k < i; k++) {
                if (byStart.getOrDefault(k, List.of()).stream().anyMatch(m -> m.kind() == TermKind.CLAIM)) {
                    return true;
                }
            }
            return false;
        }

        private boolean said(int start, int i) {
            for (int k = start; k < i; k++) {
                if (byStart.getOrDefault(k, List.of()).stream().anyMatch(m -> SAYING.contains(m.kind()))) {
                    return true;
                }
                if (numberAt(k)) {
                    return true;
                }
            }
            return false;
        }

        private boolean named(int start, int i) {
            for (int k = start; k < i; k++) {
                if (byStart.getOrDefault(k, List.of()).stream().anyMatch(m -> NAMING.contains(m.kind()))) {
                    return true;
                }
            }
            return false;
        }

        private boolean joinsNumbers(int i) {
            return codeLike(i - 1) && (codeLike(i) || codeLike(i + 1) && tokens.get(i).is("about", "maybe", "then", "and", "dash", "to"));
        }

        private boolean codeLike(int i) {
            return numberAt(i) || i >= 0 && i < tokens.size()
                    && (tokens.get(i).word().length() == 1 && !tokens.get(i).is("a", "i") || tokens.get(i).is("dash", "half", "quarter", "quarters", "hyphen"));
        }

        private boolean numberAt(int i) {
            return i >= 0 && i < tokens.size() && SpokenNumber.isNumberWord(tokens.get(i).word());
        }
    }

}
