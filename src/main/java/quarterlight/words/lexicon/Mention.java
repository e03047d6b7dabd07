package quarterlight.words.lexicon;

/** A phrase of the lexicon found among the tokens from {@code from} (inclusive) to {@code to} (exclusive). */
public record Mention(Phrase phrase, int from, int to) {
    public TermKind kind() {
        return phrase.kind();
    }

    public String value() {
        return phrase.value();
    }

    public int length() {
        return to - from;
    }

    public boolean covers(int token) {
        return from <= token && token < to;
    }

    public boolean overlaps(Mention other) {
        return from < other.to && other.from < to;
    }

    /** The same mention, counted from a later token. */
    public Mention countedFrom(int token) {
        return new Mention(phrase, from - token, to - token);
    }
}
