package quarterlight.words.text;

import java.util.List;

/** Where figures stand among tokens: numbers, fractions, and what belongs to a code or a row of readings. Pure. */
final class Figures {
    private Figures() {}

    static boolean at(List<Token> tokens, int i) {
        return i >= 0
                && i < tokens.size()
                && SpokenNumber.isNumberWord(tokens.get(i).word());
    }

    /** "half", "a quarter". */
    static boolean fraction(List<Token> tokens, int i) {
        String word = i < tokens.size() ? tokens.get(i).word() : "";
        String next = i + 1 < tokens.size() ? tokens.get(i + 1).word() : "";
        return word.equals("half") || word.equals("a") && (next.equals("half") || next.equals("quarter"));
    }

    /** Behind the comma before a token a row of figures goes on. */
    static boolean joined(List<Token> tokens, int i) {
        return coded(tokens, i - 1)
                && (coded(tokens, i)
                        || coded(tokens, i + 1) && tokens.get(i).is("about", "maybe", "then", "and", "dash", "to"));
    }

    /** A number, a letter by itself, "as in", or what stands between figures. */
    static boolean coded(List<Token> tokens, int i) {
        if (i > 1
                && i < tokens.size()
                && tokens.get(i - 1).is("in")
                && tokens.get(i - 2).is("as")) {
            return true;
        }
        return at(tokens, i)
                || i >= 0
                        && i < tokens.size()
                        && (tokens.get(i).word().length() == 1 && !tokens.get(i).is("a", "i")
                                || CutWords.CODED.contains(tokens.get(i).word()));
    }
}
