package quarterlight.ui.rust;

/**
 * A point that can be taken hold of.
 *
 * @param ring number of a closed ring, {@link #OPEN} for the ring being drawn, {@link #SCALE} for the marks of the scale
 * @param at place within the ring
 */
record Handle(int ring, int at) {
    static final int OPEN = -1;
    static final int SCALE = -2;
}
