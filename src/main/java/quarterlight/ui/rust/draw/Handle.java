package quarterlight.ui.rust.draw;

/**
 * A point that can be taken hold of.
 *
 * @param ring number of a closed ring, {@link #OPEN} for the ring being drawn, {@link #SCALE} for the marks of the scale
 * @param at place within the ring
 */
public record Handle(int ring, int at) {
    public static final int OPEN = -1;
    public static final int SCALE = -2;
}
