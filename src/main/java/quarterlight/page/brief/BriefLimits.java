package quarterlight.page.brief;

import java.util.List;

/**
 * How much the first page says, so that it stays one page; docs/methods/brief.md shows the steps. What has no room is left out by whole sentences
 * and stands in the report.
 *
 * @param matters at most
 * @param sentence of a matter, characters
 * @param crops whether each has its picture
 * @param drawing whether the letters have their drawing
 * @param claims at most
 * @param looks what to look at next, at most
 * @param paragraph characters
 * @param terms characters
 * @param facts characters of one fact beside the picture
 */
record BriefLimits(
        int matters,
        int sentence,
        boolean crops,
        boolean drawing,
        int claims,
        int looks,
        int paragraph,
        int terms,
        int facts) {
    /** From the usual to the shortest; the first that fits on one page is taken. */
    static final List<BriefLimits> STEPS = List.of(
            new BriefLimits(7, 220, true, true, 5, 5, 1100, 420, 160),
            new BriefLimits(7, 190, true, true, 4, 4, 900, 360, 140),
            new BriefLimits(7, 220, true, false, 5, 5, 1100, 420, 160),
            new BriefLimits(7, 190, true, false, 4, 4, 900, 360, 140),
            new BriefLimits(7, 150, true, false, 4, 3, 800, 300, 120),
            new BriefLimits(7, 120, true, false, 3, 3, 600, 200, 90),
            new BriefLimits(7, 90, true, false, 2, 3, 450, 120, 70),
            new BriefLimits(7, 80, false, false, 2, 2, 360, 80, 60),
            new BriefLimits(7, 60, false, false, 1, 2, 260, 60, 40));
}
