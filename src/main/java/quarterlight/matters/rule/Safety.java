package quarterlight.matters.rule;

import quarterlight.rust.need.RepairRule;
import quarterlight.units.Worded;

/** In what a finding can hurt someone before anything is repaired; what is most urgent first. Common practice, without a published source. */
public enum Safety implements Worded {
    STRUCTURE("Structure", ""),
    BRAKES(
            "Brakes",
            "Do not drive it or roll it down a slope; chock the wheels and move it on a trailer until a licensed"
                    + " person has put the brakes right."),
    STEERING(
            "Steering", "Do not drive it until a licensed person has judged the steering and what the wheels hang on."),
    FUEL(
            "Fuel",
            "Fuel vapor collects low and burns easily: no flame, spark or cranking near it, and good air, until a"
                    + " licensed person has judged tank and lines."),
    FUEL_OR_BRAKE_PARTS("Fuel and brake parts", ""),
    INTERLOCK(
            "Starter interlock",
            "It may start in gear: chock the wheels, hold the brake and keep people away from the front and rear for"
                    + " every start."),
    TIRES("Tires", "Not for the road on these tires, nor at any speed on a trailer with its own wheels turning."),
    RESTRAINT("Seat belts", "Nobody rides in a seat whose belt does not hold."),
    BATTERY(
            "Battery",
            "A battery gives off gas that explodes and holds acid: no flame or spark, eyes and skin covered, negative"
                    + " cable off first.");

    private final String subject;
    private final String caution;

    Safety(String subject, String caution) {
        this.subject = subject;
        this.caution = caution;
    }

    /** What it is about, to head a line: {@code Brakes}. */
    public String subject() {
        return subject;
    }

    /** What to do and not to do, in full sentences. */
    public String caution() {
        return switch (this) {
            case STRUCTURE -> RepairRule.structuralCaution();
            case FUEL_OR_BRAKE_PARTS -> RepairRule.fuelBrakeCaution();
            default -> caution;
        };
    }
}
