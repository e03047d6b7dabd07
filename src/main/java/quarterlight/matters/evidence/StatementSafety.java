package quarterlight.matters.evidence;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import quarterlight.car.ZoneId;
import quarterlight.matters.rule.Safety;
import quarterlight.rust.need.Load;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.statement.Statement;

/** Whether what a statement tells of can hurt someone; written out in {@code docs/methods/what-matters.md}. Common practice. */
final class StatementSafety {
    private static final Set<String> FUEL_ZONES = Set.of("fuel-tank", "fuel-brake-lines", "intake-fuel");
    private static final Set<String> STEERING_ZONES =
            Set.of("steering-linkage", "steering-column", "front-suspension-left", "front-suspension-right");
    /** English, then German as typed: German compounds name it anywhere in a word, a tank of water or a filler flap is none of fuel. */
    private static final Pattern FUEL =
            Pattern.compile("\\b(fuel|gasoline|petrol|gas (tank|line|smell))|benzin|kraftstoff|treibstoff"
                    + "|(?<!\\p{L})(sprit|autogas|(zusatz|reserve|diesel)?tank)(geruch|leitung|stutzen|geber|deckel|pumpe|s)?(?!\\p{L})|(?<!\\p{L})(gas|diesel)(anlage|geruch|leitung|tank)|nach"
                    + " (gas|diesel)(?!\\p{L})|diesel (tritt|läuft|tropft)");

    private static final Pattern BRAKE = Pattern.compile("\\bbrak(e|es|ing)\\b(?!\\s*(lamp|light))|\\bwheel cylinder"
            + "|(?<!unge)brems(?!leucht|licht|lamp|lämp|staub|spur)|radzylinder");
    private static final Set<Condition> ESCAPES = EnumSet.of(Condition.LEAKING, Condition.SMELL);
    private static final Set<Condition> FAILS = EnumSet.of(
            Condition.LEAKING, Condition.DAMAGED, Condition.MISSING, Condition.RUSTED_THROUGH, Condition.BLOCKED);
    private static final Set<Condition> METAL = EnumSet.of(
            Condition.SURFACE_RUST,
            Condition.SCALE,
            Condition.PITTED,
            Condition.RUSTED_THROUGH,
            Condition.DAMAGED,
            Condition.ADDED_COATING,
            Condition.FILLER,
            Condition.REPAIRED);

    private StatementSafety() {}

    static boolean isFuelZone(ZoneId zone) {
        return FUEL_ZONES.contains(zone.value());
    }

    /** Whether it tells of fuel that gets out. */
    static boolean fuelEscapes(Statement statement) {
        boolean there = isFuelZone(statement.zone()) && !speaksOf(BRAKE, statement) || speaksOf(FUEL, statement);
        return there && hasOneOf(ESCAPES, statement);
    }

    /**
     * In what it can hurt someone.
     *
     * @param load what its zone does in this construction
     * @param severity that its own rule gives it
     */
    static Optional<Safety> of(Statement statement, Load load, Severity severity) {
        String zone = statement.zone().value();
        boolean major = severity.compareTo(Severity.MAJOR) >= 0;
        if (fuelEscapes(statement)) {
            return Optional.of(Safety.FUEL);
        }
        boolean brakes =
                speaksOf(BRAKE, statement) || zone.equals("fuel-brake-lines") || zone.equals("steering-brake-bay");
        if (brakes && (statement.is(Condition.LEAKING) || major && hasOneOf(FAILS, statement))) {
            return Optional.of(Safety.BRAKES);
        }
        if (zone.equals("battery-tray") && statement.is(Condition.LEAKING)) {
            return Optional.of(Safety.BATTERY);
        }
        boolean carries = load == Load.MAIN && major || load == Load.SHELL && severity == Severity.GRAVE;
        if (STEERING_ZONES.contains(zone) && major && hasOneOf(FAILS, statement)) {
            return Optional.of(Safety.STEERING);
        }
        if (carries && hasOneOf(METAL, statement)) {
            return Optional.of(Safety.STRUCTURE);
        }
        return major
                        && zone.startsWith("wheel-")
                        && !zone.startsWith("wheel-lip")
                        && !statement.is(Condition.NOT_LOOKED_AT)
                ? Optional.of(Safety.TIRES)
                : Optional.empty();
    }

    private static boolean hasOneOf(Set<Condition> conditions, Statement statement) {
        return statement.what().condition().filter(conditions::contains).isPresent();
    }

    private static boolean speaksOf(Pattern what, Statement statement) {
        String words = statement.details().part().orElse("") + " " + statement.text();
        return what.matcher(words.toLowerCase(Locale.ROOT)).find();
    }
}
