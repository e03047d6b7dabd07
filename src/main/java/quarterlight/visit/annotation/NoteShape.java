package quarterlight.visit.annotation;

import quarterlight.units.Worded;

/** The shapes of notes on photos, each with the points it is drawn by. */
public enum NoteShape implements Worded {
    /** From its tail to what its head points at. */
    ARROW(2),
    /** Between two opposite corners. */
    BOX(2),
    /** Words that begin at a point, their top left corner. */
    TEXT(1),
    /** A line whose length is taken from a scale. */
    MEASURE(2);

    private final int points;

    NoteShape(int points) {
        this.points = points;
    }

    /** How many points a note of this shape has. */
    public int points() {
        return points;
    }
}
