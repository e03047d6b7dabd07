package quarterlight.words;

import java.util.Objects;

/** Words with the seconds between which they are said, counted from the start of the film or memo. */
public record Cue(double fromSeconds, double untilSeconds, String text) {
    public Cue {
        Objects.requireNonNull(text, "text");
        if (!(fromSeconds >= 0) || !(untilSeconds >= fromSeconds) || Double.isInfinite(untilSeconds)) {
            throw new IllegalArgumentException("a cue begins at zero or later and ends no earlier than it begins");
        }
    }
}
