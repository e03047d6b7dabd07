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
    STRUCTURE_IN_QUESTION(
            FindingKind.RUST_NEED,
            "matters.matter-rule.repair-need-structural-measured-or",
            Severity.GRAVE,
            Safety.STRUCTURE,
            "matters.matter-rule.metal-that-carries-load-in"),
    FLUID_PART_TO_EXCHANGE(
            FindingKind.RUST_NEED,
            "matters.matter-rule.repair-need-replace-of-a",
            Severity.GRAVE,
            Safety.FUEL_OR_BRAKE_PARTS,
            "matters.matter-rule.a-thinned-wall-lets-go"),
    BRAKES_FAIL(
            FindingKind.TRIAL,
            "matters.matter-rule.a-brake-other-than-the",
            Severity.GRAVE,
            Safety.BRAKES,
            "matters.matter-rule.the-car-cannot-be-stopped"),
    STEERING_FAILS(
            FindingKind.TRIAL,
            "matters.matter-rule.steering-does-not-work-or",
            Severity.GRAVE,
            Safety.STEERING,
            "matters.matter-rule.the-car-cannot-be-kept"),
    FUEL_ESCAPES(
            FindingKind.STATEMENT,
            "matters.matter-rule.leak-smell-or-damage-stated",
            Severity.GRAVE,
            Safety.FUEL,
            "matters.matter-rule.fuel-that-gets-out-can"),
    IDENTITY_CONTRADICTS(
            FindingKind.NUMBER,
            "matters.matter-rule.a-vehicle-number-plate-or",
            Severity.GRAVE,
            null,
            "matters.matter-rule.if-it-is-not-this"),
    STATED(
            FindingKind.STATEMENT,
            "matters.matter-rule.a-severity-given-by-the",
            null,
            null,
            "matters.matter-rule.who-stood-before-it-judges"),
    STATED_UNCERTAIN(
            FindingKind.STATEMENT,
            "matters.matter-rule.a-severity-given-but-only",
            null,
            null,
            "matters.matter-rule.one-step-below-the-one"),
    METAL_TO_LET_IN(
            FindingKind.RUST_NEED,
            "matters.matter-rule.repair-need-replace-or-patch",
            Severity.MAJOR,
            null,
            "matters.matter-rule.metal-is-gone-welding-exchange"),
    FLUID_PART_RUSTS(
            FindingKind.RUST_NEED,
            "matters.matter-rule.repair-need-refinish-or-patch",
            Severity.MAJOR,
            Safety.FUEL_OR_BRAKE_PARTS,
            "matters.matter-rule.it-may-be-thinner-than"),
    BRAKES_WITH_FAULT(
            FindingKind.TRIAL,
            "matters.matter-rule.brakes-work-with-a-fault",
            Severity.MAJOR,
            Safety.BRAKES,
            "matters.matter-rule.half-a-brake-is-found"),
    STEERING_WITH_FAULT(
            FindingKind.TRIAL,
            "matters.matter-rule.steering-works-with-a-fault",
            Severity.MAJOR,
            Safety.STEERING,
            "matters.matter-rule.it-gets-worse-on-the"),
    INTERLOCK_BYPASSED(
            FindingKind.TRIAL,
            "matters.matter-rule.a-starter-interlock-bypassed-or",
            Severity.MAJOR,
            Safety.INTERLOCK,
            "matters.matter-rule.it-can-start-in-gear"),
    TIRES_BELOW_LIMIT(
            FindingKind.TRIAL,
            "matters.matter-rule.tread-below-its-limit-or",
            Severity.MAJOR,
            Safety.TIRES,
            "matters.matter-rule.not-for-the-road-49"),
    BELT_FAILS(
            FindingKind.TRIAL,
            "matters.matter-rule.a-seat-belt-that-does",
            Severity.MAJOR,
            Safety.RESTRAINT,
            "matters.matter-rule.it-does-not-hold-when"),
    ENGINE_FAILS(
            FindingKind.TRIAL,
            "matters.matter-rule.engine-clutch-or-gears-do",
            Severity.MAJOR,
            null,
            "matters.matter-rule.the-dearest-parts-to-put"),
    CLAIM_CONTRADICTED(
            FindingKind.CLAIM,
            "matters.matter-rule.a-claim-contradicted-by-the",
            Severity.MAJOR,
            null,
            "matters.matter-rule.the-price-rests-on-it"),
    NUMBER_CONTRADICTS(
            FindingKind.NUMBER,
            "matters.matter-rule.any-other-number-that-differs",
            Severity.MAJOR,
            null,
            "matters.matter-rule.a-main-part-is-not"),
    DATE_ORDER(
            FindingKind.DATE,
            "matters.matter-rule.dates-in-an-order-that",
            Severity.MAJOR,
            null,
            "matters.matter-rule.a-part-or-a-paper"),
    MAIN_PART_DATE(
            FindingKind.DATE,
            "matters.matter-rule.a-date-that-does-not",
            Severity.MAJOR,
            null,
            "matters.matter-rule.a-main-part-or-a"),
    GAUGE_FAILED(
            FindingKind.GAUGE_CHECK,
            "matters.matter-rule.a-gauge-check-failed-or",
            Severity.MAJOR,
            null,
            "matters.matter-rule.no-reading-of-the-day"),
    FILLER_LIKELY(
            FindingKind.FINISH,
            "matters.matter-rule.repair-likelihood-of-60-or",
            Severity.MAJOR,
            null,
            "matters.matter-rule.filler-covers-damage-that-cannot"),
    STRUCTURE_NOT_SEEN(
            FindingKind.NOT_LOOKED_AT,
            "matters.matter-rule.zones-that-carry-engine-axles",
            Severity.MAJOR,
            null,
            "matters.matter-rule.the-gravest-finding-of-a"),
    FUEL_NOT_SEEN(
            FindingKind.NOT_LOOKED_AT,
            "matters.matter-rule.fuel-tank-or-lines-stated",
            Severity.MAJOR,
            Safety.FUEL,
            "matters.matter-rule.old-fuel-is-a-danger"),
    PART_DATE(
            FindingKind.DATE,
            "matters.matter-rule.any-other-date-that-does",
            Severity.MINOR,
            null,
            "matters.matter-rule.parts-are-renewed-in-service"),
    FEATURE(
            FindingKind.DATE,
            "matters.matter-rule.a-feature-that-cars-of",
            Severity.MINOR,
            null,
            "matters.matter-rule.something-was-exchanged-or-added"),
    STATEMENTS_CONFLICT(
            FindingKind.STATEMENT,
            "matters.matter-rule.two-statements-of-the-same",
            Severity.MINOR,
            null,
            "matters.matter-rule.one-of-them-is-wrong"),
    UNSAID_DAMAGE(
            FindingKind.STATEMENT,
            "matters.matter-rule.damaged-leaking-missing-blocked",
            Severity.MINOR,
            null,
            "matters.matter-rule.something-is-the-matter-and"),
    RUST_TO_CLEAN(
            FindingKind.RUST_NEED,
            "matters.matter-rule.repair-need-refinish",
            Severity.MINOR,
            null,
            "matters.matter-rule.the-metal-is-sound-cleaning"),
    REFINISHED(
            FindingKind.FINISH,
            "matters.matter-rule.refinish-likelihood-of-60-or",
            Severity.MINOR,
            null,
            "matters.matter-rule.paint-of-another-day-what"),
    FUNCTION_FAILS(
            FindingKind.TRIAL,
            "matters.matter-rule.any-other-function-that-does",
            Severity.MINOR,
            null,
            "matters.matter-rule.a-repair-of-ordinary-size"),
    LAMP_WITH_FAULT(
            FindingKind.TRIAL,
            "matters.matter-rule.lamps-or-signals-with-a",
            Severity.MINOR,
            null,
            "matters.matter-rule.others-on-the-road-rely"),
    SAFETY_NOT_TRIED(
            FindingKind.NOT_LOOKED_AT,
            "matters.matter-rule.brakes-or-steering-not-tried",
            Severity.MINOR,
            null,
            "matters.matter-rule.nothing-is-known-of-them"),
    READINGS_NOT_CHECKED(
            FindingKind.GAUGE_CHECK,
            "matters.matter-rule.readings-without-a-gauge-check",
            Severity.MINOR,
            null,
            "matters.matter-rule.nothing-shows-that-the-gauge"),
    NOTHING_MEASURED(
            FindingKind.NOT_LOOKED_AT,
            "matters.matter-rule.no-outer-panel-measured-of",
            Severity.MINOR,
            null,
            "matters.matter-rule.repaint-and-filler-cannot-be"),
    SHELL_NOT_SEEN(
            FindingKind.NOT_LOOKED_AT,
            "matters.matter-rule.zones-that-share-in-the",
            Severity.MINOR,
            null,
            "matters.matter-rule.holes-there-weaken-the-body"),
    FUNCTION_WITH_FAULT(
            FindingKind.TRIAL,
            "matters.matter-rule.any-other-function-with-a",
            Severity.NOTE,
            null,
            "matters.matter-rule.it-works-and-wants-attention"),
    UNSAID_WEAR(
            FindingKind.STATEMENT,
            "matters.matter-rule.any-other-condition-or-origin",
            Severity.NOTE,
            null,
            "matters.matter-rule.wear-of-an-old-car"),
    NOT_TRIED(
            FindingKind.NOT_LOOKED_AT,
            "matters.matter-rule.any-other-function-not-tried",
            Severity.NOTE,
            null,
            "matters.matter-rule.nothing-is-known-of-it"),
    STATED_NOT_SEEN(
            FindingKind.NOT_LOOKED_AT,
            "matters.matter-rule.any-other-zone-stated-as",
            Severity.NOTE,
            null,
            "matters.matter-rule.nothing-is-known-of-it-2"),
    CLAIM_OPEN(
            FindingKind.CLAIM,
            "matters.matter-rule.a-claim-that-nothing-found",
            Severity.NOTE,
            null,
            "matters.matter-rule.it-is-still-the-seller");

    /** Version of the table: a changed row is a new one. */
    public static final String VERSION = "2";

    private final FindingKind kind;
    private final String when;
    private final Optional<Severity> severity;
    private final Optional<Safety> safety;
    private final String why;

    MatterRule(FindingKind kind, String when, Severity severity, Safety safety, String why) {
        this.kind = kind;
        this.when = when;
        this.severity = Optional.ofNullable(severity);
        this.safety = Optional.ofNullable(safety);
        this.why = why;
    }

    public FindingKind kind() {
        return kind;
    }

    /** What it reaches, without a full stop. */
    public String when() {
        return say(when);
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
        return say(why);
    }
}
