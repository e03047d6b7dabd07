package quarterlight.store;

import java.util.List;
import java.util.Optional;

/**
 * How a database came to be open.
 *
 * @param leftOut what the takeover left out or set right
 * @param headFault what is wrong with the head of the log that is kept beside it
 */
record OpenedDatabase(List<String> leftOut, Optional<String> headFault) {
    /** Nothing to say. */
    static final OpenedDatabase PLAIN = new OpenedDatabase(List.of(), Optional.empty());

    OpenedDatabase {
        leftOut = List.copyOf(leftOut);
    }
}
