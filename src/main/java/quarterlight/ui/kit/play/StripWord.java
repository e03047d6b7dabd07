package quarterlight.ui.kit.play;

import java.util.ArrayList;
import java.util.List;

/** One word with the seconds between which it is said. */
public record StripWord(double from, double until, String text) {
    /** The words of a cue, spread over it by their length. */
    public static List<StripWord> of(double from, double until, String cue) {
        List<StripWord> words = new ArrayList<>();
        String[] parts = cue.strip().split("\\s+");
        double letters = Math.max(1, String.join(" ", parts).length() + 1);
        double said = 0;
        for (String part : parts) {
            if (!part.isEmpty()) {
                double at = from + (until - from) * said / letters;
                said += part.length() + 1;
                words.add(new StripWord(at, from + (until - from) * said / letters, part));
            }
        }
        return words;
    }
}
