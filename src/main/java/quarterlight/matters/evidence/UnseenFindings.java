package quarterlight.matters.evidence;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.findings.Findings;
import quarterlight.findings.NotLookedAt;
import quarterlight.matters.rule.EvidenceRow;
import quarterlight.matters.rule.Finding;
import quarterlight.matters.rule.MatterRule;
import quarterlight.rust.need.Load;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.statement.Statement;

/** What was not looked at: what carries load first, for nothing is known of it. */
final class UnseenFindings {
    private static final Set<Load> CARRIES = EnumSet.of(Load.MAIN, Load.SHELL);
    private static final int NAMED = 4;

    private final Findings car;
    private final ZoneLookup places;

    UnseenFindings(Findings car) {
        this.car = car;
        this.places = new ZoneLookup(car);
    }

    List<Finding> all() {
        List<Finding> found = new ArrayList<>();
        NotLookedAt notLookedAt = NotLookedAt.of(car);
        structure(notLookedAt, found);
        for (Recorded<Statement> row : car.visit().statements()) {
            if (row.value().is(Condition.NOT_LOOKED_AT) && !car.visit().isWithdrawn(row.id())) {
                stated(row).ifPresent(found::add);
            }
        }
        if (notLookedAt.nothingMeasured()) {
            found.add(finding(
                    "unseen:paint",
                    MatterRule.NOTHING_MEASURED,
                    List.of(),
                    say("matters.unseen.panels"),
                    Optional.empty(),
                    say("matters.unseen.paint"),
                    List.of(EvidenceRow.workedOut("readings", say("matters.unseen.no-reading")))));
        }
        return found;
    }

    /** All of them are one matter; what the inspector says of single ones is its evidence. */
    private void structure(NotLookedAt notLookedAt, List<Finding> found) {
        List<Zone> unseen = notLookedAt.structural();
        if (unseen.isEmpty()) {
            return;
        }
        long main = unseen.stream()
                .filter(zone -> places.load(zone.id()) == Load.MAIN)
                .count();
        MatterRule rule = main > 0 ? MatterRule.STRUCTURE_NOT_SEEN : MatterRule.SHELL_NOT_SEEN;
        List<ZoneId> zones = unseen.stream().map(Zone::id).toList();
        String sentence = main > 0 && main < unseen.size()
                ? say("matters.unseen.load-main", unseen.size(), main)
                : say("matters.unseen.load", unseen.size());
        List<EvidenceRow> evidence = new ArrayList<>();
        evidence.add(EvidenceRow.workedOut("rust", say("matters.unseen.rust", names(unseen))));
        for (Recorded<Statement> row : car.visit().statements()) {
            boolean here = zones.contains(row.value().zone())
                    && row.value().is(Condition.NOT_LOOKED_AT)
                    && !car.visit().isWithdrawn(row.id());
            if (here) {
                evidence.add(evidence(row));
            }
        }
        String place = unseen.size() <= NAMED ? names(unseen) : say("matters.unseen.load-place", unseen.size());
        found.add(finding("unseen:structure", rule, zones, place, rule.severity(), sentence, evidence));
    }

    private static String names(List<Zone> zones) {
        return zones.stream().map(Zone::label).collect(Collectors.joining("; "));
    }

    /** What the inspector says was not seen; zones that carry load stand together unless a severity above a note was given. */
    private Optional<Finding> stated(Recorded<Statement> row) {
        Statement statement = row.value();
        ZoneId zone = statement.zone();
        boolean heavy =
                statement.severity().filter(given -> given != Severity.NOTE).isPresent();
        if (CARRIES.contains(places.load(zone)) && !heavy) {
            return Optional.empty();
        }
        MatterRule rule = StatementSafety.isFuelZone(zone) ? MatterRule.FUEL_NOT_SEEN : MatterRule.STATED_NOT_SEEN;
        return Optional.of(finding(
                "unseen:" + zone.value(),
                rule,
                List.of(zone),
                places.label(zone),
                statement.severity().or(rule::severity),
                say("matters.unseen.stated", ZoneLookup.sentence(statement.text())),
                List.of(evidence(row))));
    }

    private EvidenceRow evidence(Recorded<Statement> row) {
        Statement statement = row.value();
        return EvidenceRow.of(
                "statements",
                row.id(),
                say("matters.unseen.row", places.label(statement.zone()), ZoneLookup.sentence(statement.text())),
                places.shown(statement.photos().stream()));
    }

    private static Finding finding(
            String id,
            MatterRule rule,
            List<ZoneId> zones,
            String place,
            Optional<Severity> severity,
            String sentence,
            List<EvidenceRow> evidence) {
        return new Finding(
                id,
                rule,
                zones,
                place,
                severity.or(rule::severity).orElseThrow(),
                rule.safety(),
                sentence,
                false,
                evidence);
    }
}
