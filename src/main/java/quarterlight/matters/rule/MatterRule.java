package quarterlight.matters.rule;

import static quarterlight.language.Sentences.say;

import java.util.Optional;
import quarterlight.units.Worded;
import quarterlight.visit.statement.Severity;

/**
 * The rule that ranks findings, row by row: the one home of the table that {@code docs/methods/what-matters.md} shows, held together
 * by a test. All of it is judgment from common practice, without a published source. Of equal severity the row that stands first
 * comes first.
 */
public enum MatterRule implements Worded {
    STRUCTURE_IN_QUESTION(FindingKind.RUST_NEED, Severity.GRAVE, Safety.STRUCTURE),
    FLUID_PART_TO_EXCHANGE(FindingKind.RUST_NEED, Severity.GRAVE, Safety.FUEL_OR_BRAKE_PARTS),
    BRAKES_FAIL(FindingKind.TRIAL, Severity.GRAVE, Safety.BRAKES),
    STEERING_FAILS(FindingKind.TRIAL, Severity.GRAVE, Safety.STEERING),
    FUEL_ESCAPES(FindingKind.STATEMENT, Severity.GRAVE, Safety.FUEL),
    IDENTITY_CONTRADICTS(FindingKind.NUMBER, Severity.GRAVE, null),
    STATED(FindingKind.STATEMENT, null, null),
    STATED_UNCERTAIN(FindingKind.STATEMENT, null, null),
    METAL_TO_LET_IN(FindingKind.RUST_NEED, Severity.MAJOR, null),
    FLUID_PART_RUSTS(FindingKind.RUST_NEED, Severity.MAJOR, Safety.FUEL_OR_BRAKE_PARTS),
    BRAKES_WITH_FAULT(FindingKind.TRIAL, Severity.MAJOR, Safety.BRAKES),
    STEERING_WITH_FAULT(FindingKind.TRIAL, Severity.MAJOR, Safety.STEERING),
    INTERLOCK_BYPASSED(FindingKind.TRIAL, Severity.MAJOR, Safety.INTERLOCK),
    TIRES_BELOW_LIMIT(FindingKind.TRIAL, Severity.MAJOR, Safety.TIRES),
    BELT_FAILS(FindingKind.TRIAL, Severity.MAJOR, Safety.RESTRAINT),
    ENGINE_FAILS(FindingKind.TRIAL, Severity.MAJOR, null),
    CLAIM_CONTRADICTED(FindingKind.CLAIM, Severity.MAJOR, null),
    NUMBER_CONTRADICTS(FindingKind.NUMBER, Severity.MAJOR, null),
    DATE_ORDER(FindingKind.DATE, Severity.MAJOR, null),
    MAIN_PART_DATE(FindingKind.DATE, Severity.MAJOR, null),
    GAUGE_FAILED(FindingKind.GAUGE_CHECK, Severity.MAJOR, null),
    FILLER_LIKELY(FindingKind.FINISH, Severity.MAJOR, null),
    STRUCTURE_NOT_SEEN(FindingKind.NOT_LOOKED_AT, Severity.MAJOR, null),
    FUEL_NOT_SEEN(FindingKind.NOT_LOOKED_AT, Severity.MAJOR, Safety.FUEL),
    PART_DATE(FindingKind.DATE, Severity.MINOR, null),
    FEATURE(FindingKind.DATE, Severity.MINOR, null),
    STATEMENTS_CONFLICT(FindingKind.STATEMENT, Severity.MINOR, null),
    UNSAID_DAMAGE(FindingKind.STATEMENT, Severity.MINOR, null),
    RUST_TO_CLEAN(FindingKind.RUST_NEED, Severity.MINOR, null),
    REFINISHED(FindingKind.FINISH, Severity.MINOR, null),
    FUNCTION_FAILS(FindingKind.TRIAL, Severity.MINOR, null),
    LAMP_WITH_FAULT(FindingKind.TRIAL, Severity.MINOR, null),
    SAFETY_NOT_TRIED(FindingKind.NOT_LOOKED_AT, Severity.MINOR, null),
    READINGS_NOT_CHECKED(FindingKind.GAUGE_CHECK, Severity.MINOR, null),
    NOTHING_MEASURED(FindingKind.NOT_LOOKED_AT, Severity.MINOR, null),
    SHELL_NOT_SEEN(FindingKind.NOT_LOOKED_AT, Severity.MINOR, null),
    FUNCTION_WITH_FAULT(FindingKind.TRIAL, Severity.NOTE, null),
    UNSAID_WEAR(FindingKind.STATEMENT, Severity.NOTE, null),
    NOT_TRIED(FindingKind.NOT_LOOKED_AT, Severity.NOTE, null),
    STATED_NOT_SEEN(FindingKind.NOT_LOOKED_AT, Severity.NOTE, null),
    CLAIM_OPEN(FindingKind.CLAIM, Severity.NOTE, null);

    /** Version of the table: a changed row is a new one. */
    public static final String VERSION = "2";

    private final FindingKind kind;
    private final Optional<Severity> severity;
    private final Optional<Safety> safety;

    MatterRule(FindingKind kind, Severity severity, Safety safety) {
        this.kind = kind;
        this.severity = Optional.ofNullable(severity);
        this.safety = Optional.ofNullable(safety);
    }

    public FindingKind kind() {
        return kind;
    }

    /** What it reaches, without a full stop. */
    public String when() {
        return say("matters.when." + word());
    }

    /** Empty where the severity is the one given by the inspector. */
    public Optional<Severity> severity() {
        return severity;
    }

    public Optional<Safety> safety() {
        return safety;
    }

    /** Why, in one line without a full stop. */
    public String why() {
        return say("matters.why." + word());
    }
}
