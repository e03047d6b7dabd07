package quarterlight.words.lexicon;

import java.util.List;
import java.util.Objects;
import quarterlight.words.text.Stem;
import quarterlight.words.text.Token;

/**
 * One phrase of the lexicon.
 *
 * @param words the words in order: a plain word stands for its singular and plural, {@code crack*} for every form of the verb,
 *     {@code =lead} for itself alone, {@code ..} for up to four words between
 * @param value what it stands for, in the words of the data: a condition, a sign, a function, the name of a part
 * @param weight how surely it means that, 0 to 1
 * @param part the part, for a phrase that names one, else null-free empty zones
 */
public record Phrase(TermKind kind, String value, double weight, List<String> words, PartName part) {
    static final String GAP = "..";
    private static final int WIDEST_GAP = 4;

    public Phrase {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(part, "part");
        words = List.copyOf(words);
        if (words.isEmpty() || words.get(0).equals(GAP)) {
            throw new IllegalArgumentException("a phrase begins with a word");
        }
    }

    /** Where the phrase ends if it begins at {@code from}, else -1. */
    int end(List<Forms> tokens, int from) {
        return end(tokens, from, 0);
    }

    private int end(List<Forms> tokens, int at, int word) {
        if (word == words.size()) {
            return at;
        }
        if (words.get(word).equals(GAP)) {
            for (int skip = 0; skip <= WIDEST_GAP && at + skip <= tokens.size(); skip++) {
                int end = end(tokens, at + skip, word + 1);
                if (end >= 0) {
                    return end;
                }
                if (at + skip >= tokens.size() || tokens.get(at + skip).ends()) {
                    return -1;
                }
            }
            return -1;
        }
        boolean suits = at < tokens.size() && tokens.get(at).suits(words.get(word));
        boolean within = word == words.size() - 1 || suits && !tokens.get(at).ends();
        return suits && within ? end(tokens, at + 1, word + 1) : -1;
    }

    /** The forms of a token in which phrases may name it. */
    record Forms(String exact, String noun, String verb, boolean ends) {
        static Forms of(Token token) {
            return new Forms(
                    token.word(),
                    Stem.noun(token.word()),
                    Stem.verb(token.word()) + "*",
                    token.stop() == quarterlight.words.text.Punctuation.SENTENCE);
        }

        boolean suits(String word) {
            return word.equals(noun)
                    || word.equals("it") && exact.equals("it's")
                    || word.equals(verb)
                    || word.charAt(0) == '='
                            && word.regionMatches(1, exact, 0, Math.max(exact.length(), word.length() - 1));
        }
    }

    /** A word of a phrase in the form in which it is compared. */
    static String form(String word) {
        if (word.equals(GAP) || word.startsWith("=")) {
            return word;
        }
        return word.endsWith("*") ? Stem.verb(word.substring(0, word.length() - 1)) + "*" : Stem.noun(word);
    }
}
