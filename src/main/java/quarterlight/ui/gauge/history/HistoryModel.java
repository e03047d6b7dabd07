package quarterlight.ui.gauge.history;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.findings.Findings;
import quarterlight.finish.FinishEngine;
import quarterlight.finish.FinishEvidence;
import quarterlight.finish.FinishHistory;
import quarterlight.finish.JointHistory;
import quarterlight.finish.NextMeasurement;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.finish.model.HeldNumbers;
import quarterlight.ui.kit.Listeners;

/** What the finish history shows: the zone in hand, what is supposed of it, and the answers that came. Event thread only. */
final class HistoryModel {
    /** An answer with its question. */
    record Supposed(FinishEvidence evidence, FinishHistory history) {}

    /** Where to measure next and what each finding hangs on, and for which evidence that holds. */
    record Next(FinishEvidence evidence, List<NextMeasurement> zones, Map<ZoneId, HeldNumbers.Sway> hangsOn) {
        Next {
            zones = List.copyOf(zones);
            hangsOn = Map.copyOf(hangsOn);
        }

        static Next of(FinishEvidence evidence) {
            JointHistory joint = new FinishEngine(evidence.profile()).joint(evidence);
            return new Next(evidence, joint.next(), joint.hangsOn());
        }
    }

    private final Listeners listeners = new Listeners();
    private Optional<Findings> kept = Optional.empty();
    private Optional<WhatIf> whatIf = Optional.empty();
    private Optional<Supposed> answer = Optional.empty();
    private Optional<Next> next = Optional.empty();

    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    Optional<Findings> kept() {
        return kept;
    }

    void kept(Findings findings) {
        kept = Optional.of(findings);
        listeners.tell();
    }

    /** The zone in hand with nothing supposed of it yet; what was supposed of another is dropped. */
    void zone(Optional<ZoneId> zone) {
        if (!zone.equals(whatIf.map(WhatIf::zone))) {
            whatIf = zone.map(WhatIf::nothing);
            listeners.tell();
        }
    }

    Optional<WhatIf> whatIf() {
        return whatIf;
    }

    void suppose(WhatIf fresh) {
        whatIf = Optional.of(Objects.requireNonNull(fresh, "fresh"));
        listeners.tell();
    }

    /** The evidence as it would stand; empty while nothing is supposed. */
    Optional<FinishEvidence> question() {
        return whatIf.filter(some -> !some.isNothing())
                .flatMap(some -> kept.map(
                        found -> some.evidence(found.thickness().correction()).with(found.evidence())));
    }

    void answered(Supposed fresh) {
        answer = Optional.of(fresh);
        listeners.tell();
    }

    /** True if the zone at hand is an outer panel, with or without evidence of its own. */
    boolean takesPart() {
        return kept.flatMap(found -> whatIf.flatMap(some -> found.evidence().zone(some.zone())))
                .isPresent();
    }

    /** The zone's history from what is kept; empty for a panel of which nothing is kept. */
    Optional<ZoneHistory> asKept() {
        return kept.flatMap(found -> whatIf.flatMap(some -> found.history().zone(some.zone())));
    }

    /** The zone's history with what is supposed; empty while nothing is, or the answer is not there yet. */
    Optional<ZoneHistory> ifSo() {
        Optional<FinishEvidence> asked = question();
        return answer.filter(found -> asked.filter(found.evidence()::equals).isPresent())
                .flatMap(found -> whatIf.flatMap(some -> found.history().zone(some.zone())));
    }

    void next(Next fresh) {
        next = Optional.of(fresh);
        listeners.tell();
    }

    /** Where to measure next, best first; empty while it is being worked out. */
    Optional<List<NextMeasurement>> next() {
        return current().map(Next::zones);
    }

    /** The assumption that moves the finding of the zone in hand most; empty while it is being worked out. */
    Optional<HeldNumbers.Sway> hangsOn() {
        return current().flatMap(found -> whatIf.map(some -> found.hangsOn().get(some.zone())));
    }

    private Optional<Next> current() {
        return next.filter(found ->
                kept.filter(now -> now.evidence().equals(found.evidence())).isPresent());
    }
}
