package quarterlight.store;

import java.util.List;
import java.util.Optional;

/**
 * How a database came to be open.
 *
 * @param leftOut what the customs left out or set right
 * @param headFault what is wrong with the head of the log that is kept beside it
 */
record Arrival(List<String> leftOut, Optional<String> headFault) {
    /** Nothing to say. */
    static final Arrival PLAIN = new Arrival(List.of(), Optional.empty());

    Arrival {
        leftOut = List.copyOf(leftOut);
    }
}
