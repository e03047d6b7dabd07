package quarterlight.compare.said;

import static quarterlight.language.Sentences.figure;
import static quarterlight.language.Sentences.say;

import java.util.Objects;
import quarterlight.compare.CountComparison;
import quarterlight.compare.CountSummary;
import quarterlight.compare.Letters;
import quarterlight.units.Numerals;

/**
 * How many panels of two cars were refinished, or repaired, in words.
 *
 * @param what refinished, or repaired over filler
 * @param sentence all of it in one sentence
 */
public record CountText(
        CountComparison counts,
        String what,
        String a,
        String b,
        String aFewer,
        String equal,
        String bFewer,
        String sentence) {
    public CountText {
        Objects.requireNonNull(counts, "counts");
        Objects.requireNonNull(sentence, "sentence");
    }

    static CountText of(String what, CountComparison counts, Letters letters) {
        String a = range(counts.a());
        String b = range(counts.b());
        String aFewer = percent(counts.chanceAFewer());
        String equal = percent(counts.chanceEqual());
        String bFewer = percent(counts.chanceBFewer());
        String sentence = say(
                "compare.count-text.panels-probability-that-has-fewer",
                what,
                letters.a(),
                a,
                letters.b(),
                b,
                aFewer,
                equal,
                bFewer);
        return new CountText(counts, what, a, b, aFewer, equal, bFewer, sentence);
    }

    private static String range(CountSummary count) {
        return say("compare.count-text.to", Numerals.fixed(count.mean(), 1), count.low(), count.high());
    }

    /** Never 0 or 100: the model is not that sure of anything. */
    static String percent(double chance) {
        if (chance < 0.005) {
            return say("compare.count-text.under-1");
        }
        return chance > 0.995 ? say("compare.count-text.over-99") : figure("%.0f\u202f%%", 100 * chance);
    }
}
