package quarterlight.matters.evidence;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import quarterlight.car.ZoneId;
import quarterlight.findings.Findings;
import quarterlight.findings.StatementConflict;
import quarterlight.matters.rule.EvidenceRow;
import quarterlight.matters.rule.Finding;
import quarterlight.matters.rule.MatterRule;
import quarterlight.rust.need.Load;
import quarterlight.units.Worded;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.statement.Basis;
import quarterlight.visit.statement.Certainty;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Origin;
import quarterlight.visit.statement.SaidBy;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.statement.Statement;

/** Statements that tell of something the matter, and pairs of them that contradict each other. */
final class StatementFindings {
    private static final String TABLE = "statements";
    /** What says that all is well. */
    private static final Set<Condition> WELL = EnumSet.of(Condition.SOUND, Condition.PRESENT, Condition.NO_RUST);

    private static final Set<Condition> RUST =
            EnumSet.of(Condition.SURFACE_RUST, Condition.SCALE, Condition.PITTED, Condition.RUSTED_THROUGH);
    private static final Set<Condition> COAT =
            EnumSet.of(Condition.REPAIRED, Condition.REFINISHED, Condition.FILLER, Condition.ADDED_COATING);
    private static final Set<Condition> DAMAGE = EnumSet.of(
            Condition.DAMAGED,
            Condition.LEAKING,
            Condition.MISSING,
            Condition.BLOCKED,
            Condition.RUSTED_THROUGH,
            Condition.REPAIRED,
            Condition.FILLER);

    private final Findings car;
    private final ZoneLookup places;

    StatementFindings(Findings car) {
        this.car = car;
        this.places = new ZoneLookup(car);
    }

    List<Finding> all() {
        List<Finding> found = new ArrayList<>();
        for (Recorded<Statement> row : car.visit().statements()) {
            if (!car.visit().isWithdrawn(row.id()) && tellsOfSomething(row.value())) {
                found.add(finding(row));
            }
        }
        car.visit().statements().stream()
                .map(row -> row.value().zone())
                .distinct()
                .forEach(zone -> conflicts(zone, found));
        return found;
    }

    private static boolean tellsOfSomething(Statement statement) {
        boolean foreign = statement.is(Origin.REPLACED) || statement.is(Origin.DOES_NOT_BELONG);
        return !statement.is(Condition.NOT_LOOKED_AT) && (foreign || isTrouble(statement));
    }

    private static boolean isTrouble(Statement statement) {
        return statement
                .what()
                .condition()
                .filter(condition -> !WELL.contains(condition) && condition != Condition.NOT_LOOKED_AT)
                .isPresent();
    }

    private Finding finding(Recorded<Statement> row) {
        Statement statement = row.value();
        MatterRule rule = rule(statement);
        Severity severity = statement
                .severity()
                .map(given -> rule == MatterRule.STATED_UNCERTAIN ? below(given) : given)
                .or(rule::severity)
                .orElse(Severity.NOTE);
        Load load = places.load(statement.zone());
        return new Finding(
                matter(statement),
                rule,
                List.of(statement.zone()),
                places.label(statement.zone()),
                severity,
                StatementSafety.of(statement, load, severity),
                StatementWords.of(statement),
                true,
                List.of(EvidenceRow.of(TABLE, row.id(), text(statement), places.shown(statement.photos().stream()))));
    }

    private static MatterRule rule(Statement statement) {
        if (statement.severity().isPresent()) {
            return isUncertain(statement) ? MatterRule.STATED_UNCERTAIN : MatterRule.STATED;
        }
        if (StatementSafety.fuelEscapes(statement)) {
            return MatterRule.FUEL_ESCAPES;
        }
        boolean damage = statement.what().condition().filter(DAMAGE::contains).isPresent();
        return damage || statement.is(Origin.DOES_NOT_BELONG) ? MatterRule.UNSAID_DAMAGE : MatterRule.UNSAID_WEAR;
    }

    private static boolean isUncertain(Statement statement) {
        return statement
                        .basis()
                        .filter(basis -> basis == Basis.TOLD || basis == Basis.NOT_ESTABLISHED)
                        .isPresent()
                || statement.details().saidBy() != SaidBy.INSPECTOR
                || statement.details().certainty().equals(Optional.of(Certainty.GUESS));
    }

    private static Severity below(Severity given) {
        return Severity.values()[Math.max(0, given.ordinal() - 1)];
    }

    private String matter(Statement statement) {
        String zone = statement.zone().value();
        Optional<Condition> condition = statement.what().condition();
        Optional<String> part = statement.details().part().map(ZoneLookup::slug);
        boolean dent =
                statement.is(Condition.DAMAGED) && part.isEmpty() && places.load(statement.zone()) != Load.FITTING;
        if (condition.filter(RUST::contains).isPresent() || dent) {
            return "metal:" + zone;
        }
        if (condition.filter(COAT::contains).isPresent()) {
            return "finish:" + zone;
        }
        return isTrouble(statement)
                ? "condition:" + zone + part.map(name -> ":" + name).orElse("") + ":"
                        + condition.map(word -> ZoneLookup.slug(word.word())).orElse("")
                : "origin:" + zone;
    }

    private static String text(Statement statement) {
        SaidBy by = statement.details().saidBy();
        String basis = statement.basis().map(Worded::said).orElseGet(() -> say("matters.stated.no-basis"));
        return ZoneLookup.sentence(basis
                + (by == SaidBy.INSPECTOR ? "" : ", " + say("matters.stated.said-by", by.said()))
                + statement.severity().map(given -> ", " + given.said()).orElse("") + ": "
                + StatementWords.of(statement));
    }

    private void conflicts(ZoneId zone, List<Finding> found) {
        for (StatementConflict conflict : StatementConflict.of(car.visit().standing(), zone)) {
            String part = conflict.first()
                    .details()
                    .part()
                    .map(name -> ":" + ZoneLookup.slug(name))
                    .orElse("");
            found.add(new Finding(
                    "conflict:" + zone.value().toLowerCase(Locale.ROOT) + part,
                    MatterRule.STATEMENTS_CONFLICT,
                    List.of(zone),
                    places.label(zone),
                    Severity.MINOR,
                    Optional.empty(),
                    conflict.sentence(),
                    false,
                    List.of(EvidenceRow.workedOut(TABLE, conflict.sentence()))));
        }
    }
}
