package quarterlight.matters.rule;

import static quarterlight.language.Sentences.say;

import quarterlight.rust.need.RepairRule;
import quarterlight.units.Worded;

/** In what a finding can hurt someone before anything is repaired; what is most urgent first. Common practice, without a published source. */
public enum Safety implements Worded {
    STRUCTURE,
    BRAKES,
    STEERING,
    FUEL,
    FUEL_OR_BRAKE_PARTS,
    INTERLOCK,
    TIRES,
    RESTRAINT,
    BATTERY;

    /** What it is about, to head a line: {@code Brakes}. */
    public String subject() {
        return say("matters.safety." + word());
    }

    /** What to do and not to do, in full sentences. */
    public String caution() {
        return switch (this) {
            case STRUCTURE -> RepairRule.structuralCaution();
            case FUEL_OR_BRAKE_PARTS -> RepairRule.fuelBrakeCaution();
            default -> say("matters.caution." + word());
        };
    }
}
