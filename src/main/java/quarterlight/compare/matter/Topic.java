package quarterlight.compare.matter;

/** In what respect a place of a car is looked at: only like is laid beside like. */
public enum Topic {
    RUST(Concern.STRUCTURE),
    FINISH(Concern.FINISH),
    /** Damage, wear, leaks, repairs, and what is missing. */
    CONDITION(Concern.RUNNING_AND_DRIVING),
    /** Whether a part is the one with which the car was built. */
    ORIGIN(Concern.ORIGINALITY),
    /** Dates, numbers and features that must agree with the car. */
    NUMBER(Concern.ORIGINALITY),
    TRIAL(Concern.RUNNING_AND_DRIVING),
    GAUGE(Concern.FINISH),
    CLAIM(Concern.DOCUMENTS),
    ODOMETER(Concern.DOCUMENTS),
    /** Two statements that cannot both hold. */
    CONFLICT(Concern.DOCUMENTS),
    /** What matters because nobody looked. */
    UNSEEN(Concern.STRUCTURE);

    private final Concern concern;

    Topic(Concern concern) {
        this.concern = concern;
    }

    Concern concern() {
        return concern;
    }
}
