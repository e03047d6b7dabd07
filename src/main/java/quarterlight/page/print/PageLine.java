package quarterlight.page.print;

import java.util.Objects;

/**
 * A line of words on a page, to find what a click points at.
 *
 * @param x left edge as a fraction of the width of the page
 * @param y upper edge as a fraction of its height, from the top
 */
public record PageLine(String text, double x, double y, double width, double height) {
    private static final double BELOW = 1.5;
    private static final double BESIDE = 2;

    public PageLine {
        Objects.requireNonNull(text, "text");
    }

    /** How far a point is from it; what stands below the point is farther than what stands above, since words head what follows. */
    public double from(double px, double py) {
        double beside = Math.max(0, Math.max(x - px, px - x - width));
        double above = Math.max(0, py - y - height);
        double below = Math.max(0, y - py);
        return BESIDE * beside + above + BELOW * below;
    }
}
