package quarterlight.visit.annotation;

import java.util.List;

/**
 * A closed outline on an upright photo, with holes if need be; rings are not closed (the last point joins the first).
 *
 * @param shell outer ring, 3 points or more, pixels
 * @param holes inner rings
 */
public record Outline(List<PixelPoint> shell, List<List<PixelPoint>> holes) {
    private static final int MIN_POINTS = 3;

    public Outline {
        shell = List.copyOf(shell);
        holes = holes.stream().map(List::copyOf).toList();
        if (shell.size() < MIN_POINTS || holes.stream().anyMatch(hole -> hole.size() < MIN_POINTS)) {
            throw new IllegalArgumentException("an outline has 3 points or more");
        }
    }
}
