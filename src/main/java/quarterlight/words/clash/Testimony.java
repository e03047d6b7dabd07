package quarterlight.words.clash;

import java.util.Objects;
import java.util.Optional;
import quarterlight.words.Utterance;

/**
 * Who says something, in which words, and where that can be heard or read again.
 *
 * @param by inspector, seller, owner, papers, other, or gauge and car for what was measured and read off the car
 * @param text its words, or what the row says
 * @param heard the seconds to play, if it was said
 * @param row the row of the visit, if it is one
 */
public record Testimony(String by, String text, Optional<Utterance> heard, Optional<Row> row) {
    /**
     * A row of the visit.
     *
     * @param kind the name of its kind: statements, claims, marks
     * @param id its number
     */
    public record Row(String kind, long id) {}

    /** What one says within this time is one thought that may be refined. */
    private static final double BREATH_S = 8;

    public Testimony {
        Objects.requireNonNull(by, "by");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(heard, "heard");
        Objects.requireNonNull(row, "row");
    }

    static Testimony said(String by, Utterance words) {
        return new Testimony(by, words.words().strip(), Optional.of(words), Optional.empty());
    }

    static Testimony row(String by, String text, String kind, long id) {
        return new Testimony(by, text, Optional.empty(), Optional.of(new Row(kind, id)));
    }

    /** Whether both are one voice in one breath, or one row. */
    boolean isOneWith(Testimony other) {
        if (row.isPresent() || other.row.isPresent()) {
            return row.equals(other.row);
        }
        Utterance one = heard.orElseThrow();
        Utterance two = other.heard.orElseThrow();
        double gap = Math.max(one.atSeconds(), two.atSeconds()) - Math.min(one.untilSeconds(), two.untilSeconds());
        boolean sameWords = one.source().equals(two.source()) && one.atSeconds() == two.atSeconds();
        return sameWords || by.equals(other.by) && one.source().equals(two.source()) && gap < BREATH_S;
    }
}
