package quarterlight.words.lexicon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import quarterlight.words.text.SpokenNumber;
import quarterlight.words.text.Token;

/** The phrases that the reading of words knows. Immutable. */
public final class Lexicon {
    private static final Pattern MICRONS = Pattern.compile("[2-9]\\d|\\d{3,4}(?:\\.\\d)?");

    private final Map<String, List<Phrase>> byFirst = new HashMap<>();
    private final MisheardTerms heard;

    /**
     * @param rows phrases and what they stand for; of two equal phrases of one kind the later stands
     * @param heard what captions write for words of the trade
     */
    public Lexicon(List<LexiconRow> rows, MisheardTerms heard) {
        this.heard = heard;
        for (LexiconRow row : rows) {
            for (String text : row.phrases().split("\\|")) {
                for (String one : variants(text.strip())) {
                    List<String> words = Arrays.stream(one.strip().split("\\s+"))
                            .filter(word -> !word.isEmpty())
                            .map(word -> row.part().grouped() && word.endsWith("s") ? "=" + word : Phrase.form(word))
                            .toList();
                    if (!words.isEmpty()) {
                        Phrase phrase = new Phrase(row.kind(), row.value(), row.weight(), words, row.part());
                        byFirst.computeIfAbsent(words.get(0), k -> new ArrayList<>())
                                .add(phrase);
                    }
                }
            }
        }
    }

    /** What captions write wrongly, put right. */
    public List<Token> meant(List<Token> tokens) {
        return heard.meant(tokens);
    }

    /** Every phrase found, by kind and place; of one kind the longer goes before the shorter where they overlap. */
    public List<Mention> mentions(List<Token> tokens) {
        List<Phrase.Forms> forms = tokens.stream().map(Phrase.Forms::of).toList();
        Map<TermKind, List<Mention>> found = new EnumMap<>(TermKind.class);
        for (int i = 0; i < forms.size(); i++) {
            if (hyphen(tokens, i) || hesitation(tokens, i)) {
                continue;
            }
            Phrase.Forms form = forms.get(i);
            int at = i;
            Stream.of(form.noun(), form.verb(), "=" + form.exact()).distinct().forEach(first -> {
                for (Phrase phrase : byFirst.getOrDefault(first, List.of())) {
                    int end = phrase.end(forms, at);
                    if (end > at) {
                        found.computeIfAbsent(phrase.kind(), k -> new ArrayList<>())
                                .add(new Mention(phrase, at, end));
                    }
                }
            });
        }
        List<Mention> kept = new ArrayList<>();
        found.forEach((kind, list) -> kept.addAll(apart(list, kind == TermKind.PART)));
        kept.sort(Comparator.comparingInt(Mention::from).thenComparing(m -> -m.length()));
        return kept;
    }

    /** "um" is a unit behind the figures of a reading in micrometers, and a hesitation elsewhere. */
    private static boolean hesitation(List<Token> tokens, int i) {
        return tokens.get(i).is("um")
                && (i == 0 || !MICRONS.matcher(tokens.get(i - 1).word()).matches());
    }

    /** "three dash six five": the dash of a code. */
    private static boolean hyphen(List<Token> tokens, int i) {
        return tokens.get(i).is("dash") && (coded(tokens, i - 1) || coded(tokens, i + 1));
    }

    private static boolean coded(List<Token> tokens, int i) {
        return i >= 0
                && i < tokens.size()
                && (SpokenNumber.isNumberWord(tokens.get(i).word())
                        || tokens.get(i).word().length() == 1 && !tokens.get(i).is("a", "i"));
    }

    /** The longest first, without what overlaps a longer one; equal stretches stay for parts, as the place decides between them. */
    private static List<Mention> apart(List<Mention> list, boolean ties) {
        List<Mention> sorted = new ArrayList<>(list);
        sorted.sort(Comparator.comparingInt((Mention m) -> -m.length()).thenComparingInt(Mention::from));
        Map<Integer, Mention> taken = new HashMap<>();
        List<Mention> kept = new ArrayList<>();
        for (Mention mention : sorted) {
            boolean free = true;
            for (int i = mention.from(); i < mention.to(); i++) {
                Mention other = taken.get(i);
                boolean tie = ties && other != null && other.from() == mention.from() && other.to() == mention.to();
                free &= other == null || tie;
            }
            if (free) {
                for (int i = mention.from(); i < mention.to(); i++) {
                    taken.put(i, mention);
                }
                kept.add(mention);
            }
        }
        return kept;
    }

    /** {@code (fall*}{@code /drop*) off} is two phrases. */
    private static List<String> variants(String text) {
        int open = text.indexOf('(');
        int close = text.indexOf(')', open);
        if (open < 0 || close < 0) {
            return List.of(text);
        }
        List<String> all = new ArrayList<>();
        for (String choice : text.substring(open + 1, close).split("/", -1)) {
            all.addAll(variants(text.substring(0, open) + choice + text.substring(close + 1)));
        }
        return all;
    }
}
