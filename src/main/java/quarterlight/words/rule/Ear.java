package quarterlight.words.rule;

import java.util.List;
import java.util.Objects;
import quarterlight.words.Cue;
import quarterlight.words.TimedWords;
import quarterlight.words.clause.Heard;
import quarterlight.words.lexicon.Lexicon;
import quarterlight.words.place.CarZones;
import quarterlight.words.weigh.Weights;

/** One who knows the car, the language and what drafts are worth. Immutable. */
public record Ear(CarZones car, Lexicon lexicon, Weights weights) {
    private static final double SECONDS = 9;

    public Ear {
        Objects.requireNonNull(car, "car");
        Objects.requireNonNull(lexicon, "lexicon");
        Objects.requireNonNull(weights, "weights");
    }

    /** @param parts the parts of one walk in order */
    public Heard hear(List<TimedWords> parts) {
        return Listening.hear(parts, car, lexicon, weights);
    }

    /** Reads a sentence that was written, as if it had been said. */
    public Heard hear(String sentence) {
        return sentence.isBlank()
                ? new Heard(List.of(), List.of(), java.util.Map.of())
                : hear(List.of(new TimedWords("", List.of(new Cue(0, SECONDS, sentence.strip())))));
    }
}
