package quarterlight.matters.evidence;

import static quarterlight.language.Sentences.say;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import quarterlight.coverage.MeasureLimit;
import quarterlight.coverage.TrialItem;
import quarterlight.coverage.TrialList;
import quarterlight.findings.Findings;
import quarterlight.matters.rule.EvidenceRow;
import quarterlight.matters.rule.Finding;
import quarterlight.matters.rule.MatterRule;
import quarterlight.units.Numerals;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.trial.Trial;
import quarterlight.visit.trial.TrialNames;
import quarterlight.visit.trial.TrialResult;

/** Functions that do not work, or not as they should, or were not tried. */
final class TrialFindings {
    private static final String TABLE = "trials";
    /** A parking brake alone does not stop a car; that it fails does not keep it from being stopped. */
    private static final List<String> PARKING = List.of(
            "parking",
            "hand brake",
            "handbrake",
            "emergency brake",
            "handbrems",
            "feststellbrems",
            "parkbrems",
            "notbrems");

    /** How many of one unit another is; the bar is 100 kPa, the pound of force per square inch 6.894757 kPa (NIST SP 811, 2008, B.8). */
    private static final Map<String, BigDecimal> AS_MANY =
            Map.of("1/32 in in mm", new BigDecimal("0.79375"), "bar in psi", new BigDecimal("14.50377"));

    private final Findings car;
    private final TrialList list;
    private final ZoneLookup places;

    TrialFindings(Findings car, TrialList list) {
        this.car = car;
        this.list = list;
        this.places = new ZoneLookup(car);
    }

    List<Finding> all() {
        List<Finding> found = new ArrayList<>();
        for (Recorded<Trial> row : car.visit().trials()) {
            rule(row.value()).ifPresent(rule -> found.add(finding(row, rule)));
        }
        return found;
    }

    private Finding finding(Recorded<Trial> row, MatterRule rule) {
        Trial trial = row.value();
        String sentence = sentence(trial);
        boolean named =
                trial.zone().filter(zone -> !zone.value().equals("whole-car")).isPresent();
        return new Finding(
                "trial:" + ZoneLookup.slug(trial.item()),
                rule,
                trial.zone().stream().toList(),
                named ? places.label(trial.zone().orElseThrow()) : say("matters.whole-car"),
                rule.severity().orElseThrow(),
                rule.safety(),
                sentence,
                false,
                List.of(EvidenceRow.of(TABLE, row.id(), say("matters.trial.row", sentence), List.of())));
    }

    /** Name, result, value and note: {@code Brake pedal holds: fails. Goes to the floor.} */
    private static String sentence(Trial trial) {
        String value = trial.value()
                .map(number -> Numerals.typed(number)
                        + trial.unit().map(unit -> "\u2009" + unit).orElse(""))
                .orElse("");
        String word = trial.result() == TrialResult.DOES_NOT
                ? say("matters.trial.fails")
                : trial.result().said();
        String result = trial.result() == TrialResult.MEASURED ? value : word + (value.isEmpty() ? "" : ", " + value);
        return TrialNames.said(trial.item()) + ": " + result + "."
                + trial.note().map(note -> " " + ZoneLookup.sentence(note)).orElse("");
    }

    /** Empty where all is well, and for what the car does not have. */
    private Optional<MatterRule> rule(Trial trial) {
        TrialSubject subject = TrialSubject.of(trial, list);
        return switch (trial.result()) {
            case DOES_NOT -> Optional.of(failing(subject, trial));
            case BYPASSED -> Optional.of(failing(subject, trial));
            case WORKS_WITH_A_FAULT -> Optional.of(faulty(subject));
            case HEAVY -> Optional.of(observed(subject, MatterRule.FUNCTION_FAILS));
            case SOME -> Optional.of(observed(subject, MatterRule.FUNCTION_WITH_FAULT));
            case NOT_TRIED -> Optional.of(untried(subject));
            case WORKS, MEASURED -> isBeyond(trial) ? Optional.of(beyond(subject)) : Optional.empty();
            case NOT_FITTED, NONE -> Optional.empty();
        };
    }

    private static MatterRule failing(TrialSubject subject, Trial trial) {
        return switch (subject) {
            case BRAKES -> isParking(trial) ? MatterRule.BRAKES_WITH_FAULT : MatterRule.BRAKES_FAIL;
            case STEERING -> MatterRule.STEERING_FAILS;
            case INTERLOCK -> MatterRule.INTERLOCK_BYPASSED;
            case TIRES -> MatterRule.TIRES_BELOW_LIMIT;
            case BELTS -> MatterRule.BELT_FAILS;
            case ENGINE -> MatterRule.ENGINE_FAILS;
            case LAMPS, OTHER, FUEL -> MatterRule.FUNCTION_FAILS;
        };
    }

    private static MatterRule faulty(TrialSubject subject) {
        return switch (subject) {
            case BRAKES -> MatterRule.BRAKES_WITH_FAULT;
            case STEERING -> MatterRule.STEERING_WITH_FAULT;
            case INTERLOCK -> MatterRule.INTERLOCK_BYPASSED;
            case BELTS -> MatterRule.BELT_FAILS;
            case LAMPS -> MatterRule.LAMP_WITH_FAULT;
            case TIRES, ENGINE, FUEL, OTHER -> MatterRule.FUNCTION_WITH_FAULT;
        };
    }

    private static MatterRule observed(TrialSubject subject, MatterRule usual) {
        return switch (subject) {
            case FUEL -> MatterRule.FUEL_ESCAPES;
            case BRAKES -> MatterRule.BRAKES_WITH_FAULT;
            case STEERING -> MatterRule.STEERING_WITH_FAULT;
            case ENGINE -> usual == MatterRule.FUNCTION_FAILS ? MatterRule.ENGINE_FAILS : usual;
            case LAMPS, INTERLOCK, TIRES, BELTS, OTHER -> usual;
        };
    }

    private static MatterRule beyond(TrialSubject subject) {
        return switch (subject) {
            case TIRES -> MatterRule.TIRES_BELOW_LIMIT;
            case ENGINE -> MatterRule.ENGINE_FAILS;
            case BRAKES -> MatterRule.BRAKES_WITH_FAULT;
            case STEERING -> MatterRule.STEERING_WITH_FAULT;
            case LAMPS, INTERLOCK, BELTS, FUEL, OTHER -> MatterRule.FUNCTION_FAILS;
        };
    }

    private static MatterRule untried(TrialSubject subject) {
        return subject == TrialSubject.BRAKES || subject == TrialSubject.STEERING
                ? MatterRule.SAFETY_NOT_TRIED
                : MatterRule.NOT_TRIED;
    }

    /** A value beyond the limit that the list states for it, in its unit or one that stands for so many of it. */
    private boolean isBeyond(Trial trial) {
        Optional<TrialItem> item = TrialSubject.listed(trial, list);
        Optional<MeasureLimit> limit = item.flatMap(TrialItem::limit);
        Optional<BigDecimal> value = trial.value()
                .flatMap(measured -> item.flatMap(listed ->
                        in(listed.unit().orElse(""), measured, trial.unit().orElse(""))));
        return limit.isPresent()
                && value.filter(measured -> !limit.get().isKept(measured)).isPresent();
    }

    /** As many of one unit as of another, to a tenth, as limits are stated: 2/32 in are 1.6 mm. */
    private static Optional<BigDecimal> in(String unit, BigDecimal value, String of) {
        return unit.equals(of)
                ? Optional.of(value)
                : Optional.ofNullable(AS_MANY.get(of + " in " + unit))
                        .map(factor -> value.multiply(factor).setScale(1, RoundingMode.HALF_UP));
    }

    private static boolean isParking(Trial trial) {
        String item = trial.item().toLowerCase(Locale.ROOT);
        return PARKING.stream().anyMatch(item::contains);
    }
}
