package quarterlight.words.place;

/** The front or the rear of the car. */
public enum End {
    FRONT,
    REAR,
    BOTH
}
