package quarterlight.words.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterlight.words.Cue;
import quarterlight.words.TimedWords;

/** Cuts timed words into tokens: the words of a cue are spread evenly over its time. Pure. */
public final class Tokens {
    /** What stands in brackets is a sound, not a word: {@code [Music]}. */
    private static final Pattern SOUND = Pattern.compile("[\\[(][^\\])]*[\\])]");

    private static final Pattern EDGE = Pattern.compile("^[\"'\u201c\u201d\u2018(]+|[\"\u201c\u201d)]+$");
    private static final Pattern SENTENCE_END = Pattern.compile("[.?!\u2026][\"']?$");
    private static final Pattern COMMA_END = Pattern.compile("([,;:\u2014]|--|\\.\\.)$");
    private static final Pattern LAST_MARKS = Pattern.compile("[.,;:?!\u2026\u2014]+$|--$|\"$");
    private static final Pattern RANGE = Pattern.compile("(\\d{1,3}(?:\\.\\d)?)[-\u2013](\\d{1,3}(?:\\.\\d)?)");
    private static final Pattern GROUPED = Pattern.compile("\\d{1,3}(,\\d{3})+");
    /** Words whose ending is not the mark of an owner, so that they stay whole. */
    private static final Set<String> WHOLE =
            WordSet.of("he's here's how's it's let's o'clock she's that's there's what's where's who's ");

    private Tokens() {}

    public static List<Token> of(TimedWords words) {
        List<Token> tokens = new ArrayList<>();
        boolean speaker = false;
        for (Cue cue : words.cues()) {
            String[] chunks = SOUND.matcher(cue.text()).replaceAll(" ").strip().split("\\s+");
            double step = (cue.untilSeconds() - cue.fromSeconds()) / Math.max(1, chunks.length);
            for (int i = 0; i < chunks.length; i++) {
                String chunk = chunks[i];
                if (chunk.startsWith(">>")) {
                    speaker = true;
                    chunk = chunk.substring(2);
                }
                double at = cue.fromSeconds() + i * step;
                if (add(tokens, chunk, at, at + step, speaker)) {
                    speaker = false;
                }
            }
        }
        return List.copyOf(tokens);
    }

    /** True if the captions carry full stops, so that sentences need not be guessed. */
    public static boolean punctuated(List<Token> tokens) {
        long stops = tokens.stream().filter(t -> t.stop() != Punctuation.NONE).count();
        return stops * 25 > tokens.size();
    }

    private static boolean add(List<Token> tokens, String chunk, double at, double until, boolean speaker) {
        String bare = EDGE.matcher(chunk.replace('\u2019', '\'')).replaceAll("");
        Punctuation stop = Punctuation.NONE;
        if (SENTENCE_END.matcher(bare).find() && !bare.endsWith("..")) {
            stop = Punctuation.SENTENCE;
        } else if (COMMA_END.matcher(bare).find() || bare.equals("-") || bare.equals("\u2013")) {
            stop = Punctuation.COMMA;
        }
        String word = LAST_MARKS.matcher(bare.toLowerCase(Locale.ROOT)).replaceAll("");
        if (word.isEmpty() || word.equals("-") || word.equals("\u2013")) {
            if (stop != Punctuation.NONE && !tokens.isEmpty()) {
                Token last = tokens.remove(tokens.size() - 1);
                tokens.add(new Token(last.word(), last.shown(), last.at(), last.until(), stop, last.speaker()));
            }
            return false;
        }
        List<String> parts = parts(word);
        for (int i = 0; i < parts.size(); i++) {
            tokens.add(new Token(
                    parts.get(i),
                    i == 0 ? chunk : "",
                    at,
                    until,
                    i == parts.size() - 1 ? stop : Punctuation.NONE,
                    speaker && i == 0));
        }
        return true;
    }

    private static List<String> parts(String word) {
        Matcher range = RANGE.matcher(word);
        if (range.matches()) {
            return List.of(range.group(1), "to", range.group(2));
        }
        if (GROUPED.matcher(word).matches()) {
            return List.of(word.replace(",", ""));
        }
        List<String> parts = new ArrayList<>();
        for (String piece : word.split("[-\u2013/]")) {
            if (piece.isEmpty()) {
                continue;
            }
            if (piece.endsWith("'s") && !WHOLE.contains(piece) && piece.length() > 2) {
                parts.add(piece.substring(0, piece.length() - 2));
                parts.add("'s");
            } else {
                parts.add(piece.endsWith("s'") ? piece.substring(0, piece.length() - 1) : piece);
            }
        }
        return parts.isEmpty() ? List.of(word) : parts;
    }
}
