package quarterlight.words.text;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.words.lexicon.Mention;
import quarterlight.words.lexicon.TermKind;

/**
 * A stretch of speech that says one thing.
 *
 * @param tokens its words
 * @param mentions what the lexicon knows of them; places count from the first token of the clause
 * @param sentence the number of the sentence it belongs to, within its source
 * @param aside what the lexicon knows of them from which no draft follows
 * @param told true if someone else is speaking: the seller who answers
 */
public record Clause(
        String source, List<Token> tokens, List<Mention> mentions, List<Mention> aside, int sentence, boolean told) {
    private static final Pattern END = Pattern.compile("[\\s,;:]+$");
    private static final Pattern START = Pattern.compile("^>>\\s*");

    public Clause {
        tokens = List.copyOf(tokens);
        mentions = List.copyOf(mentions);
        aside = List.copyOf(aside);
    }

    Clause(String source, List<Token> tokens, List<Mention> mentions, int sentence, boolean told) {
        this(source, tokens, mentions, List.of(), sentence, told);
    }

    Clause aside(List<Mention> others) {
        return new Clause(source, tokens, mentions, others, sentence, told);
    }

    public double at() {
        return tokens.get(0).at();
    }

    public double until() {
        return tokens.get(tokens.size() - 1).until();
    }

    public int size() {
        return tokens.size();
    }

    public String word(int at) {
        return at < 0 || at >= tokens.size() ? "" : tokens.get(at).word();
    }

    public Stream<Mention> all(TermKind kind) {
        return (kind.givesDrafts() ? mentions : aside).stream().filter(m -> m.kind() == kind);
    }

    public boolean has(TermKind kind) {
        return all(kind).findAny().isPresent();
    }

    public Optional<Mention> first(TermKind kind) {
        return all(kind).findFirst();
    }

    /** As it was written. */
    public String shown() {
        return shown(0, tokens.size());
    }

    public String shown(int from, int to) {
        String text = tokens.subList(from, to).stream()
                .map(Token::shown)
                .filter(shown -> !shown.isEmpty())
                .collect(Collectors.joining(" "));
        return START.matcher(END.matcher(text).replaceAll("")).replaceAll("");
    }
}
