package quarterlight.matters.rule;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.visit.statement.Severity;

/**
 * One finding with the rule that ranks it.
 *
 * @param matter id of the matter that it belongs to: findings of one matter have the same; it follows from what the finding is about,
 *     never from the number of a row, so that it stays when rows come and go
 * @param zones that it is about, none for the car as a whole
 * @param place their names, or the part where no zone is known
 * @param severity by the rule
 * @param safety in what it can hurt someone; empty if it cannot
 * @param sentence what it is, in one plain sentence
 * @param typed true for a sentence of the inspector
 */
public record Finding(
        String matter,
        MatterRule rule,
        List<ZoneId> zones,
        String place,
        Severity severity,
        Optional<Safety> safety,
        String sentence,
        boolean typed,
        List<EvidenceRow> evidence) {
    public Finding {
        Objects.requireNonNull(matter, "matter");
        Objects.requireNonNull(rule, "rule");
        zones = List.copyOf(zones);
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(safety, "safety");
        Objects.requireNonNull(sentence, "sentence");
        evidence = List.copyOf(evidence);
        if (evidence.isEmpty()) {
            throw new IllegalArgumentException("a finding rests on evidence: " + matter);
        }
    }

    public FindingKind kind() {
        return rule.kind();
    }
}
