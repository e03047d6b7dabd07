package quarterlight.matters.rule;

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
            "repair need structural, measured or by eye",
            Severity.GRAVE,
            Safety.STRUCTURE,
            "metal that carries load in this construction is gone or in doubt: it may fail when driven, lifted or jacked"),
    FLUID_PART_TO_EXCHANGE(
            FindingKind.RUST_NEED,
            "repair need replace, of a part that holds fuel or brake fluid",
            Severity.GRAVE,
            Safety.FUEL_OR_BRAKE_PARTS,
            "a thinned wall lets go without warning"),
    BRAKES_FAIL(
            FindingKind.TRIAL,
            "a brake other than the parking brake does not work, or is bypassed",
            Severity.GRAVE,
            Safety.BRAKES,
            "the car cannot be stopped"),
    STEERING_FAILS(
            FindingKind.TRIAL,
            "steering does not work, or is bypassed",
            Severity.GRAVE,
            Safety.STEERING,
            "the car cannot be kept on its way"),
    FUEL_ESCAPES(
            FindingKind.STATEMENT,
            "leak, smell or damage stated of fuel tank, fuel or brake lines or fuel intake, or a trial that observes fuel",
            Severity.GRAVE,
            Safety.FUEL,
            "fuel that gets out can burn the car and who is near it"),
    IDENTITY_CONTRADICTS(
            FindingKind.NUMBER,
            "a vehicle number, plate or body stamp that differs from what it must match, or breaks its rule",
            Severity.GRAVE,
            null,
            "if it is not this car, nothing else holds"),
    STATED(
            FindingKind.STATEMENT,
            "a severity given by the inspector",
            null,
            null,
            "who stood before it judges best; the severity is the one given"),
    STATED_UNCERTAIN(
            FindingKind.STATEMENT,
            "a severity given, but only told, guessed or not established, or said by someone else",
            null,
            null,
            "one step below the one given: it was not seen"),
    METAL_TO_LET_IN(
            FindingKind.RUST_NEED,
            "repair need replace or patch",
            Severity.MAJOR,
            null,
            "metal is gone: welding, exchange and paint follow"),
    FLUID_PART_RUSTS(
            FindingKind.RUST_NEED,
            "repair need refinish or patch, of a part that holds fuel or brake fluid",
            Severity.MAJOR,
            Safety.FUEL_OR_BRAKE_PARTS,
            "it may be thinner than it looks"),
    BRAKES_WITH_FAULT(
            FindingKind.TRIAL,
            "brakes work with a fault; a parking brake that does not hold",
            Severity.MAJOR,
            Safety.BRAKES,
            "half a brake is found out on a slope"),
    STEERING_WITH_FAULT(
            FindingKind.TRIAL,
            "steering works with a fault",
            Severity.MAJOR,
            Safety.STEERING,
            "it gets worse on the road"),
    INTERLOCK_BYPASSED(
            FindingKind.TRIAL,
            "a starter interlock bypassed or not working",
            Severity.MAJOR,
            Safety.INTERLOCK,
            "it can start in gear and run into someone"),
    TIRES_BELOW_LIMIT(
            FindingKind.TRIAL,
            "tread below its limit, or a major or graver statement about a tire or wheel",
            Severity.MAJOR,
            Safety.TIRES,
            "not for the road; 49 CFR 570.9 has 2/32 in"),
    BELT_FAILS(
            FindingKind.TRIAL,
            "a seat belt that does not work or not rightly",
            Severity.MAJOR,
            Safety.RESTRAINT,
            "it does not hold when it must"),
    ENGINE_FAILS(
            FindingKind.TRIAL,
            "engine, clutch or gears do not work; a measure of theirs beyond its limit; something heavy observed",
            Severity.MAJOR,
            null,
            "the dearest parts to put right"),
    CLAIM_CONTRADICTED(
            FindingKind.CLAIM,
            "a claim contradicted, by the inspector or by what was found",
            Severity.MAJOR,
            null,
            "the price rests on it, and so does trust in the other claims"),
    NUMBER_CONTRADICTS(
            FindingKind.NUMBER,
            "any other number that differs from what it must match: engine, transmission, axle, castings",
            Severity.MAJOR,
            null,
            "a main part is not the one the car was built with"),
    DATE_ORDER(
            FindingKind.DATE,
            "dates in an order that cannot be, such as a date after shipping",
            Severity.MAJOR,
            null,
            "a part or a paper is not what it is said to be"),
    MAIN_PART_DATE(
            FindingKind.DATE,
            "a date that does not fit the build, of engine, transmission, axle or of a number or tag of the car",
            Severity.MAJOR,
            null,
            "a main part or a tag is of another car or time"),
    GAUGE_FAILED(
            FindingKind.GAUGE_CHECK,
            "a gauge check failed, or the gauge moved between before and after beyond its tolerance",
            Severity.MAJOR,
            null,
            "no reading of the day can be relied on"),
    FILLER_LIKELY(
            FindingKind.FINISH,
            "repair likelihood of 60 or more, from readings or signs of the panel itself",
            Severity.MAJOR,
            null,
            "filler covers damage that cannot be seen"),
    STRUCTURE_NOT_SEEN(
            FindingKind.NOT_LOOKED_AT,
            "zones that carry engine, axles, suspension or the body not looked at for rust",
            Severity.MAJOR,
            null,
            "the gravest finding of a car hides there; nothing is known of them"),
    FUEL_NOT_SEEN(
            FindingKind.NOT_LOOKED_AT,
            "fuel tank or lines stated as not looked at",
            Severity.MAJOR,
            Safety.FUEL,
            "old fuel is a danger whether or not it was seen"),
    PART_DATE(
            FindingKind.DATE,
            "any other date that does not fit the build",
            Severity.MINOR,
            null,
            "parts are renewed in service"),
    FEATURE(
            FindingKind.DATE,
            "a feature that cars of this build do not have, or lack",
            Severity.MINOR,
            null,
            "something was exchanged or added"),
    STATEMENTS_CONFLICT(
            FindingKind.STATEMENT,
            "two statements of the same part that cannot both hold",
            Severity.MINOR,
            null,
            "one of them is wrong, and it is not known which"),
    UNSAID_DAMAGE(
            FindingKind.STATEMENT,
            "damaged, leaking, missing, blocked, rusted through, repaired, filler or does not belong, without a severity given",
            Severity.MINOR,
            null,
            "something is the matter, and it was not said how much"),
    RUST_TO_CLEAN(
            FindingKind.RUST_NEED,
            "repair need refinish",
            Severity.MINOR,
            null,
            "the metal is sound; cleaning and paint are due"),
    REFINISHED(
            FindingKind.FINISH,
            "refinish likelihood of 60 or more, with at least moderate support by the panel's own evidence",
            Severity.MINOR,
            null,
            "paint of another day; what it covers is not known"),
    FUNCTION_FAILS(
            FindingKind.TRIAL,
            "any other function that does not work or is bypassed; a measure beyond its limit; something heavy observed",
            Severity.MINOR,
            null,
            "a repair of ordinary size"),
    LAMP_WITH_FAULT(
            FindingKind.TRIAL,
            "lamps or signals with a fault",
            Severity.MINOR,
            null,
            "others on the road rely on them"),
    SAFETY_NOT_TRIED(
            FindingKind.NOT_LOOKED_AT,
            "brakes or steering not tried",
            Severity.MINOR,
            null,
            "nothing is known of them; try them before it moves"),
    READINGS_NOT_CHECKED(
            FindingKind.GAUGE_CHECK,
            "readings without a gauge check, or with one that states no tolerance",
            Severity.MINOR,
            null,
            "nothing shows that the gauge was right that day"),
    NOTHING_MEASURED(
            FindingKind.NOT_LOOKED_AT,
            "no outer panel measured, of those that the gauge could read",
            Severity.MINOR,
            null,
            "repaint and filler cannot be told without readings"),
    SHELL_NOT_SEEN(
            FindingKind.NOT_LOOKED_AT,
            "zones that share in the load not looked at for rust, all main ones having been looked at",
            Severity.MINOR,
            null,
            "holes there weaken the body"),
    FUNCTION_WITH_FAULT(
            FindingKind.TRIAL,
            "any other function with a fault; something observed",
            Severity.NOTE,
            null,
            "it works, and wants attention"),
    UNSAID_WEAR(
            FindingKind.STATEMENT,
            "any other condition or origin that is not sound, without a severity given",
            Severity.NOTE,
            null,
            "wear of an old car"),
    NOT_TRIED(FindingKind.NOT_LOOKED_AT, "any other function not tried", Severity.NOTE, null, "nothing is known of it"),
    STATED_NOT_SEEN(
            FindingKind.NOT_LOOKED_AT,
            "any other zone stated as not looked at",
            Severity.NOTE,
            null,
            "nothing is known of it; a severity given by the inspector holds instead"),
    CLAIM_OPEN(
            FindingKind.CLAIM,
            "a claim that nothing found supports or contradicts",
            Severity.NOTE,
            null,
            "it is still the seller's word alone");

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
        return when;
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
        return why;
    }
}
