package quarterlight.words.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A code as it is read aloud, letter by letter and figure by figure: "C seven one two", "four K twelve", "nineteen oh four". Pure.
 *
 * @param text letters and figures; a question mark for what cannot be read
 * @param letters how many of them are letters
 */
public record SpokenCode(String text, int from, int to, int letters) {
    private static final Pattern FIGURES = Pattern.compile("\\d{1,17}");
    private static final Pattern MIXED = Pattern.compile("(?=.*\\d)[a-z0-9]{2,17}");
    private static final Pattern ORDINAL = Pattern.compile("\\d+(st|nd|rd|th|s)");
    private static final Map<String, String> LETTERS = Map.ofEntries(
            Map.entry("see", "C"),
            Map.entry("sea", "C"),
            Map.entry("bee", "B"),
            Map.entry("be", "B"),
            Map.entry("gee", "G"),
            Map.entry("jay", "J"),
            Map.entry("kay", "K"),
            Map.entry("ell", "L"),
            Map.entry("em", "M"),
            Map.entry("en", "N"),
            Map.entry("pee", "P"),
            Map.entry("cue", "Q"),
            Map.entry("queue", "Q"),
            Map.entry("ess", "S"),
            Map.entry("tea", "T"),
            Map.entry("tee", "T"),
            Map.entry("vee", "V"),
            Map.entry("ex", "X"),
            Map.entry("zee", "Z"),
            Map.entry("zed", "Z"),
            Map.entry("dee", "D"),
            Map.entry("eff", "F"),
            Map.entry("aitch", "H"),
            Map.entry("alpha", "A"),
            Map.entry("bravo", "B"),
            Map.entry("charlie", "C"),
            Map.entry("delta", "D"),
            Map.entry("echo", "E"),
            Map.entry("foxtrot", "F"),
            Map.entry("golf", "G"),
            Map.entry("hotel", "H"),
            Map.entry("india", "I"),
            Map.entry("juliet", "J"),
            Map.entry("kilo", "K"),
            Map.entry("lima", "L"),
            Map.entry("mike", "M"),
            Map.entry("oscar", "O"),
            Map.entry("papa", "P"),
            Map.entry("quebec", "Q"),
            Map.entry("romeo", "R"),
            Map.entry("sierra", "S"),
            Map.entry("tango", "T"),
            Map.entry("uniform", "U"),
            Map.entry("victor", "V"),
            Map.entry("whiskey", "W"),
            Map.entry("x-ray", "X"),
            Map.entry("yankee", "Y"),
            Map.entry("zulu", "Z"));
    /** Letters that are mostly other words: they count only beside a sure sign of a code. */
    private static final Set<String> DOUBTFUL =
            WordSet.of("a are be bee em en gee golf hotel i india mike november s sea see t tea uniform why you ");

    private static final Set<String> DASHES = Set.of("dash", "hyphen", "slash", "space", "stroke");
    private static final Set<String> ZERO = Set.of("oh", "o", "zero", "nought", "naught");

    /** Every code among the tokens that has at least {@code shortest} letters and figures. */
    public static List<SpokenCode> in(List<Token> tokens, int shortest) {
        List<SpokenCode> codes = new ArrayList<>();
        int i = 0;
        while (i < tokens.size()) {
            Optional<SpokenCode> code = at(tokens, i);
            if (code.isPresent() && code.get().text().length() >= shortest) {
                codes.add(code.get());
                i = code.get().to();
            } else {
                i++;
            }
        }
        return codes;
    }

    private static Optional<SpokenCode> at(List<Token> tokens, int from) {
        StringBuilder text = new StringBuilder();
        int letters = 0;
        int i = from;
        int end = from;
        while (i < tokens.size()) {
            String word = tokens.get(i).word();
            String piece = piece(tokens, i);
            if (end > from
                    && word.equals("as")
                    && i + 2 < tokens.size()
                    && tokens.get(i + 1).is("in")) {
                i += 3;
                continue;
            }
            if (piece.isEmpty() && end > from && word.equals("double") && i + 1 < tokens.size()) {
                piece = piece(tokens, i + 1);
                piece = piece.length() == 1 ? piece + piece : "";
                i++;
            }
            if (!piece.isEmpty() && !(DOUBTFUL.contains(word) && !surrounded(tokens, i, from, end))) {
                text.append(piece);
                letters += piece.chars().allMatch(Character::isLetter) ? piece.length() : 0;
                i++;
                end = i;
            } else if (end > from && DASHES.contains(word)) {
                i++;
            } else if (end > from
                    && word.equals("something")
                    && i + 1 < tokens.size()
                    && !piece(tokens, i + 1).isEmpty()) {
                text.append('?');
                i++;
                end = i;
            } else {
                break;
            }
            if (tokens.get(i - 1).stop() == Punctuation.SENTENCE) {
                break;
            }
        }
        return end == from ? Optional.empty() : Optional.of(new SpokenCode(text.toString(), from, end, letters));
    }

    /** A doubtful letter counts between sure ones, or after one at the end. */
    private static boolean surrounded(List<Token> tokens, int i, int from, int end) {
        boolean before = i > from && end == i;
        boolean after = i + 1 < tokens.size()
                && !piece(tokens, i + 1).isEmpty()
                && !DOUBTFUL.contains(tokens.get(i + 1).word())
                && tokens.get(i).stop() != Punctuation.SENTENCE;
        boolean single = tokens.get(i).word().length() == 1;
        boolean last = i + 1 >= tokens.size() || tokens.get(i).stop() != Punctuation.NONE;
        return before && (after || last && single)
                || after && !before && !tokens.get(i).is("a", "i", "you", "why", "are", "be");
    }

    private static String piece(List<Token> tokens, int i) {
        String word = tokens.get(i).word();
        if (word.length() == 1 && word.charAt(0) >= 'a' && word.charAt(0) <= 'z') {
            return word.toUpperCase(java.util.Locale.ROOT);
        }
        if (FIGURES.matcher(word).matches()
                || MIXED.matcher(word).matches() && !ORDINAL.matcher(word).matches()) {
            return word.toUpperCase(java.util.Locale.ROOT);
        }
        if (ZERO.contains(word)) {
            return "0";
        }
        Optional<Integer> number = SpokenNumber.small(word);
        if (number.isPresent()) {
            int value = number.get();
            boolean more = value >= 20 && i + 1 < tokens.size() && tokens.get(i).stop() == Punctuation.NONE;
            Optional<Integer> unit = more ? SpokenNumber.small(tokens.get(i + 1).word()) : Optional.empty();
            if (unit.isPresent() && unit.get() > 0 && unit.get() < 10) {
                return String.valueOf(value / 10);
            }
            return String.valueOf(value);
        }
        return LETTERS.getOrDefault(word, "");
    }
}
