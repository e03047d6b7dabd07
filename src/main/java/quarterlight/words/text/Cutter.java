package quarterlight.words.text;

import static quarterlight.words.text.CutWords.ADJECTIVES;
import static quarterlight.words.text.CutWords.BEFORE_PART;
import static quarterlight.words.text.CutWords.DETERMINERS;
import static quarterlight.words.text.CutWords.JOINERS;
import static quarterlight.words.text.CutWords.NAMING;
import static quarterlight.words.text.CutWords.OF_KIND;
import static quarterlight.words.text.CutWords.OPENERS;
import static quarterlight.words.text.CutWords.PARTICLES;
import static quarterlight.words.text.CutWords.PLACING;
import static quarterlight.words.text.CutWords.PREDICATES;
import static quarterlight.words.text.CutWords.PREPOSITIONS;
import static quarterlight.words.text.CutWords.SAYING;
import static quarterlight.words.text.CutWords.SIDES;
import static quarterlight.words.text.CutWords.SIDE_HEADS;
import static quarterlight.words.text.CutWords.SUBJECTS;
import static quarterlight.words.text.CutWords.VERBS;

import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import quarterlight.words.lexicon.Mention;
import quarterlight.words.lexicon.TermKind;

/**
 * Where a clause and a sentence end among the tokens of one source.
 *
 * @param byStart what the lexicon knows, by the token with which it begins
 * @param byEnd the tokens that follow the name of a part or a function
 * @param inside true for a token within a phrase: no cut goes before it
 */
record Cutter(
        List<Token> tokens,
        Map<Integer, List<Mention>> byStart,
        Set<Integer> byEnd,
        BitSet inside,
        boolean punctuated) {

    private static final double PAUSE_S = 2.5;

    boolean sentenceEnds(int i) {
        Token before = tokens.get(i - 1);
        Token next = tokens.get(i);
        if (next.speaker() || before.stop() == Punctuation.SENTENCE || next.at() - before.until() > PAUSE_S) {
            return true;
        }
        return !punctuated
                && OPENERS.contains(next.word())
                && !inside.get(i)
                && CutWords.opens(next.word(), before.word());
    }

    boolean cuts(int start, int i) {
        String word = tokens.get(i).word();
        if (inside.get(i) || word.equals("'s")) {
            return false;
        }
        Token before = tokens.get(i - 1);
        if (before.stop() == Punctuation.COMMA) {
            return !Figures.joined(tokens, i) && !SpokenDate.goesOn(tokens, i);
        }
        if (numberAt(i - 1) && PREPOSITIONS.contains(word) && begins(i, TermKind.ITEM)) {
            return false;
        }
        if (JOINERS.contains(word)) {
            return true;
        }
        if (word.equals("no") && named(start, i) && !attached(i) && partAt(i + 1)) {
            return true;
        }
        boolean said = said(start, i) || predicated(start, i);
        if (word.equals("and") || word.equals("or")) {
            return (said || turns(start, i + 1)) && !numberAt(i + 1) && !Figures.fraction(tokens, i + 1);
        }
        if (claimed(start, i)) {
            return false;
        }
        if (!attached(i) && turns(start, i)) {
            return true;
        }
        if (!said && !(named(start, i) && (!endsName(i) && startsPart(i) && subjectAt(i) || headsSide(i)))) {
            return false;
        }
        if (begins(i, TermKind.WITHDRAW)) {
            return true;
        }
        if (numberAt(i)
                && (numberAt(i + 1)
                        || i + 1 < tokens.size() && tokens.get(i + 1).is("point"))
                && !Figures.coded(tokens, i - 1)
                && !attached(i)
                && named(start, i)
                && !marked(start, i)) {
            return !before.is(
                    "to", "about", "reads", "read", "is", "at", "maybe", "getting", "get", "goes", "it's", "'s", "say",
                    "says", "hundred", "point");
        }
        if (!punctuated && headsRegion(i)) {
            return true;
        }
        if (SUBJECTS.contains(word) && !tied(i)) {
            return true;
        }
        if (!named(start, i)
                && !sided(start)
                && CutWords.verbLike(tokens.get(i - 1).word())) {
            return false;
        }
        return startsPart(i) || startsSide(i) || headsSide(i);
    }

    /** Another part is the subject here, and more than an opening word stands before it. */
    private boolean turns(int start, int i) {
        return !punctuated
                && (i - start > 1 || !OPENERS.contains(tokens.get(start).word()))
                && (new Subjects(tokens, byStart).begins(i) || new Subjects(tokens, byStart).follows(start, i));
    }

    /** A pronoun that is the object of what stands before it, or the subject of a clause that a conjunction has opened. */
    private boolean tied(int i) {
        Token before = tokens.get(i - 1);
        boolean object = PREPOSITIONS.contains(before.word()) && !PARTICLES.contains(before.word())
                || DETERMINERS.contains(before.word());
        if (tokens.get(i).is("there")
                && before.is(
                        "right", "in", "up", "down", "over", "back", "out", "still", "is", "are", "was", "from",
                        "under")) {
            return true;
        }
        if (tokens.get(i).is("it", "them", "those", "these", "this") && objectAt(i)) {
            return true;
        }
        boolean weak =
                tokens.get(i).is("that", "this", "it", "you", "there", "these", "those", "nothing", "everything");
        return object
                || JOINERS.contains(before.word())
                || before.is(
                        "and", "so", "if", "when", "where", "what", "how", "see", "say", "think", "till", "than",
                        "like")
                || weak && !numberAt(i - 1) && (PARTICLES.contains(before.word()) || CutWords.verbLike(before.word()));
    }

    /** "a brush would fix it, corner of the cab ...": a pronoun behind which no verb can follow is no subject. */
    private boolean objectAt(int i) {
        if (i + 1 >= tokens.size() || tokens.get(i).stop() != Punctuation.NONE) {
            return true;
        }
        String next = tokens.get(i + 1).word();
        return PREPOSITIONS.contains(next) && !next.equals("like")
                || DETERMINERS.contains(next) && !next.equals("'s") && !next.equals("all") && !next.equals("both")
                || WordSet.of("and but or so i he she they you we there now when where")
                        .contains(next)
                || byStart.getOrDefault(i + 1, List.of()).stream()
                                .anyMatch(m -> m.kind() == TermKind.PART || m.kind() == TermKind.ITEM && m.length() > 1)
                        && tokens.get(i).is("it", "them");
    }

    /** A part or a function is named here, as the subject of what follows. */
    private boolean startsPart(int i) {
        if (attached(i)) {
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

    /** What begins here is a part or a function, not a stamp or a reading of the part before. */
    private boolean subjectAt(int i) {
        int k = i;
        while (k < Math.min(i + 5, tokens.size())
                && byStart.getOrDefault(k, List.of()).stream().noneMatch(m -> NAMING.contains(m.kind()))) {
            k++;
        }
        return byStart.getOrDefault(k, List.of()).stream()
                .anyMatch(m -> m.kind() == TermKind.PART || m.kind() == TermKind.ITEM);
    }

    /** The word before ends the name of a part or a function: what follows is said of it. */
    private boolean endsName(int i) {
        return byEnd.contains(i)
                && !DETERMINERS.contains(tokens.get(i).word())
                && !SIDES.contains(tokens.get(i).word());
    }

    /** "passenger side now": the walk goes on at another side. */
    private boolean headsSide(int i) {
        boolean bare = tokens.get(i).is("nearside", "offside")
                && i + 1 < tokens.size()
                && OPENERS.contains(tokens.get(i + 1).word())
                && !attached(i);
        return bare
                || i + 2 < tokens.size()
                        && tokens.get(i)
                                .is(
                                        "driver",
                                        "driver's",
                                        "drivers",
                                        "passenger",
                                        "passengers",
                                        "left",
                                        "right",
                                        "other")
                        && tokens.get(i + 1).is("side")
                        && OPENERS.contains(tokens.get(i + 2).word())
                        && !attached(i);
    }

    /** "under the hood the block ...": another region of the walk begins. */
    private boolean headsRegion(int i) {
        return byStart.getOrDefault(i, List.of()).stream()
                .filter(m -> m.kind() == TermKind.REGION && m.to() < tokens.size())
                .anyMatch(m -> DETERMINERS.contains(tokens.get(m.to()).word())
                        || SUBJECTS.contains(tokens.get(m.to()).word())
                        || byStart.getOrDefault(m.to(), List.of()).stream().anyMatch(o -> o.kind() == TermKind.PART));
    }

    private boolean partAt(int i) {
        return begins(i, TermKind.PART);
    }

    private boolean begins(int i, TermKind kind) {
        return byStart.getOrDefault(i, List.of()).stream().anyMatch(m -> m.kind() == kind);
    }

    private boolean marked(int start, int i) {
        for (int k = start; k < i; k++) {
            if (byStart.getOrDefault(k, List.of()).stream()
                    .anyMatch(m -> m.kind() == TermKind.MARK || m.kind() == TermKind.ODOMETER)) {
                return true;
            }
        }
        return false;
    }

    /** The word before belongs to what begins here: an article, a side, a preposition, a subject with its verb. */
    private boolean attached(int i) {
        Token before = tokens.get(i - 1);
        String last = before.word();
        String ahead = i > 1 ? tokens.get(i - 2).word() : "";
        if (last.equals("and") || last.equals("or") || JOINERS.contains(last) || VERBS.contains(last)) {
            return true;
        }
        if (last.equals("'s") && byEnd.contains(i) && partAt(i)) {
            return !punctuated ? false : tokens.get(i - 1).stop() == Punctuation.NONE;
        }
        if (last.equals("side") || last.equals("sides")) {
            return !placedSide(i);
        }
        if (PARTICLES.contains(last) && CutWords.verbLike(ahead)) {
            return false;
        }
        if (PARTICLES.contains(last)) {
            return DETERMINERS.contains(tokens.get(i).word()) && !ahead.isEmpty() && !numberAt(i - 2);
        }
        if (PREPOSITIONS.contains(last) || DETERMINERS.contains(last)) {
            return !(last.equals("all") && ahead.equals("at"));
        }
        if (OF_KIND.contains(last) && !punctuated) {
            return DETERMINERS.contains(ahead) || SIDES.contains(ahead) || PREPOSITIONS.contains(ahead);
        }
        if (SIDES.contains(last)) {
            return !(DETERMINERS.contains(ahead)
                    && PLACING.contains(i > 2 ? tokens.get(i - 3).word() : "")
                    && !begins(i - 4, TermKind.SUBJECT)
                    && predicateFollows(i));
        }
        if (ADJECTIVES.contains(last)) {
            return DETERMINERS.contains(ahead) || SIDES.contains(ahead) || PREPOSITIONS.contains(ahead);
        }
        boolean object =
                WordSet.of("it he she they we them you i somebody someone").contains(last)
                                && byStart.getOrDefault(i, List.of()).stream().anyMatch(m -> m.kind() == TermKind.PART)
                        || last.equals("there")
                        || last.equals("nothing")
                        || last.equals("everything")
                        || last.equals("nobody")
                        || last.equals("it") && !JOINERS.contains(ahead) && !ahead.equals("and") && !ahead.equals("if")
                        || last.equals("you") && PREPOSITIONS.contains(ahead)
                        || (last.equals("this") || last.equals("that")) && PREPOSITIONS.contains(ahead);
        return SUBJECTS.contains(last) && !object;
    }

    /** "on the right | fender is dented" against "look at the right rocker": behind the name something is said of it. */
    private boolean predicateFollows(int i) {
        return byStart.getOrDefault(i, List.of()).stream()
                .filter(m -> NAMING.contains(m.kind()) && m.to() < tokens.size())
                .anyMatch(m -> PREDICATES.contains(tokens.get(m.to()).word())
                        || numberAt(m.to())
                        || byStart.getOrDefault(m.to(), List.of()).stream().anyMatch(o -> SAYING.contains(o.kind())));
    }

    /** "on the driver's side" is over; in "driver's side rocker" the part still follows. */
    private boolean placedSide(int i) {
        for (int k = i - 2; k >= Math.max(0, i - 5); k--) {
            if (tokens.get(k).is("on", "either", "both", "each", "to", "round", "down", "from")) {
                return true;
            }
        }
        return false;
    }

    /** "left one", "the other side", "right rear": a subject without its part. */
    private boolean startsSide(int i) {
        if (attached(i)) {
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
        return SIDE_HEADS.contains(side.word())
                && after.is(
                        "one", "side", "ones", "'s", "left", "right", "is", "front", "rear", "of", "corner", "gone",
                        "isn't", "has", "looks", "was", "i", "can't", "good");
    }

    /** The clause begins with "the right one", "left's": its subject is known without a part. */
    private boolean sided(int start) {
        return SIDES.contains(tokens.get(start).word())
                || tokens.get(start).is("the")
                        && start + 1 < tokens.size()
                        && SIDES.contains(tokens.get(start + 1).word());
    }

    private boolean claimed(int start, int i) {
        for (int k = Math.max(start, i - 10); k < i; k++) {
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

    /** A part, a verb and something behind it have been said, although no list knows what: "wheel on this corner's a fifteen". */
    private boolean predicated(int start, int i) {
        int verb = -1;
        boolean named = sided(start);
        for (int k = start; k < i; k++) {
            if (verb >= 0
                    && k > verb
                    && !DETERMINERS.contains(tokens.get(k).word())
                    && !PREPOSITIONS.contains(tokens.get(k).word())
                    && !VERBS.contains(tokens.get(k).word())
                    && !SIDES.contains(tokens.get(k).word())
                    && !byStart.getOrDefault(k, List.of()).stream().anyMatch(m -> m.kind() == TermKind.PART)
                    && !inside.get(k)) {
                return true;
            }
            if (named && PREDICATES.contains(tokens.get(k).word())) {
                verb = k;
            }
            named |= byEnd.contains(k + 1);
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

    private boolean numberAt(int i) {
        return Figures.at(tokens, i);
    }
}
