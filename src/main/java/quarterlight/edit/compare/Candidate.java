package quarterlight.edit.compare;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import quarterlight.findings.Findings;

/**
 * A visit that is laid beside others.
 *
 * @param folder where it lies
 * @param findings what was worked out of it
 * @param logHead number and hash of the last entry of its edit log, by which a report of its present state is known
 */
public record Candidate(Path folder, Findings findings, Optional<String> logHead) {
    public Candidate {
        Objects.requireNonNull(folder, "folder");
        Objects.requireNonNull(findings, "findings");
        Objects.requireNonNull(logHead, "logHead");
    }
}
