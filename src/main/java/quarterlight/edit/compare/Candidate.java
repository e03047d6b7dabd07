package quarterlight.edit.compare;

import java.nio.file.Path;
import java.util.Objects;
import quarterlight.findings.Findings;

/** A visit that is laid beside others: where it lies, and what was worked out of it. */
public record Candidate(Path folder, Findings findings) {
    public Candidate {
        Objects.requireNonNull(folder, "folder");
        Objects.requireNonNull(findings, "findings");
    }
}
