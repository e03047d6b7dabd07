package quarterlight.compare.hour;

import java.util.Objects;
import java.util.Optional;

/**
 * One look, trial or reading.
 *
 * @param what to do, in one sentence
 * @param why what it would settle
 * @param caution for doing it, if there is one
 */
public record HourLook(String what, String why, Optional<String> caution) {
    public HourLook {
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(why, "why");
        Objects.requireNonNull(caution, "caution");
    }
}
