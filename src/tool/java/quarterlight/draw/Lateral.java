package quarterlight.draw;

/** Which coordinate of a view runs from the middle of the car to its left; {@code NONE} in a side view. */
enum Lateral {
    NONE,
    FIRST,
    SECOND
}
