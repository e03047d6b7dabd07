package quarterlight.visit;

import java.util.Objects;
import quarterlight.visit.statement.Severity;

/**
 * The inspector's own severity for something that matters, in place of the rule's.
 *
 * @param matter id of the matter, as {@code findings} lists it
 * @param ruled severity by the rule when it was decided; what is found to be graver later is not held down by it
 */
public record MatterDecision(String matter, Severity severity, String reason, Severity ruled) {
    public MatterDecision {
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(ruled, "ruled");
        if (matter.isBlank() || reason.isBlank()) {
            throw new IllegalArgumentException("a decision names its matter and its reason");
        }
    }
}
