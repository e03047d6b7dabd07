package quarterlight.matters.rule;

import static quarterlight.language.Sentences.say;

import quarterlight.units.Worded;

/** In what a finding can hurt someone before anything is repaired; what is most urgent first. Common practice, without a published source. */
public enum Safety implements Worded {
    STRUCTURE("matters.safety.structure", "rust.repair-rule.this-zone-carries-load-have"),
    BRAKES("matters.safety.brakes", "matters.safety.do-not-drive-it-or"),
    STEERING("matters.safety.steering", "matters.safety.do-not-drive-it-until"),
    FUEL("matters.safety.fuel", "matters.safety.fuel-vapor-collects-low-and"),
    FUEL_OR_BRAKE_PARTS("matters.safety.fuel-and-brake-parts", "rust.repair-rule.rust-on-fuel-or-brake"),
    INTERLOCK("matters.safety.starter-interlock", "matters.safety.it-may-start-in-gear"),
    TIRES("matters.safety.tires", "matters.safety.not-for-the-road-on"),
    RESTRAINT("matters.safety.seat-belts", "matters.safety.nobody-rides-in-a-seat"),
    BATTERY("matters.safety.battery", "matters.safety.a-battery-gives-off-gas");

    private final String subject;
    private final String caution;

    Safety(String subject, String caution) {
        this.subject = subject;
        this.caution = caution;
    }

    /** What it is about, to head a line: {@code Brakes}. */
    public String subject() {
        return say(subject);
    }

    /** What to do and not to do, in full sentences. */
    public String caution() {
        return say(caution);
    }
}
