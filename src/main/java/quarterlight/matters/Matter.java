package quarterlight.matters;

import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.matters.rule.EvidenceRow;
import quarterlight.matters.rule.Finding;
import quarterlight.matters.rule.FindingKind;
import quarterlight.matters.rule.MatterRule;
import quarterlight.matters.rule.Safety;
import quarterlight.visit.MatterDecision;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.statement.Severity;

/**
 * One thing that matters about a car: the findings that are about the same, the one that decides first.
 *
 * @param id stays the same while rows come and go; {@code metal:torque-box-front-left}
 * @param letter A, B, ... if it stands on the first page
 * @param place names of its zones, {@code The whole car}, or the part where no zone is known
 * @param zones in the order of the zone table; none for the car as a whole
 * @param ruled severity by the rule
 * @param decision what the inspector decided instead; empty if nothing
 * @param findings at least one; the one that decides first
 * @param photos that show it, the best first; those pinned to its zone if the evidence names none
 */
public record Matter(
        String id,
        Optional<Character> letter,
        String place,
        List<ZoneId> zones,
        Severity ruled,
        Optional<MatterDecision> decision,
        List<Finding> findings,
        List<PhotoId> photos) {
    private static final int MAX_ZONES_WITH_LETTER = 6;

    public Matter {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(letter, "letter");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(ruled, "ruled");
        Objects.requireNonNull(decision, "decision");
        zones = List.copyOf(zones);
        findings = List.copyOf(findings);
        photos = List.copyOf(photos);
        if (findings.isEmpty()) {
            throw new IllegalArgumentException("a matter rests on findings: " + id);
        }
    }

    /** The severity that holds: the inspector's, unless what was found since is graver than what was decided on; else the rule's. */
    public Severity severity() {
        return decision.filter(this::holds).map(MatterDecision::severity).orElse(ruled);
    }

    private boolean holds(MatterDecision decided) {
        return ruled.compareTo(decided.ruled()) <= 0 || decided.severity().compareTo(ruled) >= 0;
    }

    /** Whether it concerns so many zones that a letter at each of them would bury what the drawing shows. */
    public boolean isWidespread() {
        return zones.size() > MAX_ZONES_WITH_LETTER;
    }

    /** Whether the inspector's severity holds. */
    public boolean isOverridden() {
        return decision.filter(this::holds).isPresent();
    }

    /** Whether the inspector decided, but of something less grave than what is found now. */
    public boolean isDecisionLapsed() {
        return decision.isPresent() && !isOverridden();
    }

    /** What it rests on first. */
    public FindingKind kind() {
        return findings.get(0).kind();
    }

    /** The row of the rule that decides. */
    public MatterRule rule() {
        return findings.get(0).rule();
    }

    /** What it is, in one plain sentence: the inspector's own if it is as grave as any. */
    public String sentence() {
        return findings.get(0).sentence();
    }

    /** In what it can hurt someone, the most urgent; empty if it cannot. A severity set by the inspector does not take it away. */
    public Optional<Safety> safety() {
        return findings.stream().flatMap(finding -> finding.safety().stream()).min(java.util.Comparator.naturalOrder());
    }

    /** Everything it rests on, the heaviest first. */
    public List<EvidenceRow> evidence() {
        return findings.stream()
                .flatMap(finding -> finding.evidence().stream())
                .distinct()
                .toList();
    }

    /** Evidence that says more than the sentence does. */
    public List<String> further() {
        return evidence().stream()
                .map(EvidenceRow::text)
                .filter(text -> !text.endsWith(sentence()))
                .distinct()
                .toList();
    }

    /** Why it is as severe as it is: the rule's reason, and the inspector's where one holds or lapsed. */
    public String why() {
        String rule = say("matters.by-rule", ruled.said(), rule().why());
        if (decision.isEmpty()) {
            return rule;
        }
        return say(
                isOverridden() ? "matters.set" : "matters.lapsed",
                decision.get().severity().said(),
                decision.get().reason(),
                rule);
    }

    Matter lettered(char name) {
        return new Matter(id, Optional.of(name), place, zones, ruled, decision, findings, photos);
    }
}
