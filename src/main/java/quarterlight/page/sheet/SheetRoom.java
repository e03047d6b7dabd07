package quarterlight.page.sheet;

import quarterlight.car.View;
import quarterlight.language.Language;
import quarterlight.page.print.Paper;

/**
 * How a sheet divides its paper, in mm.
 *
 * @param wide between the margins
 * @param scale mm on paper for each mm of an outer view
 * @param small the same for the views on the second page
 * @param endsWide both views of the ends beside each other
 * @param sideWide a view of a side
 * @param smallWide the widest view on the second page
 * @param notes ruled lines that fill the first page where the views leave room
 * @param markRow height of a line for a mark
 * @param signRow height of a line for a sign
 * @param trialRow height of a line for a trial
 */
public record SheetRoom(
        double wide,
        double scale,
        double small,
        double endsWide,
        double sideWide,
        double smallWide,
        int notes,
        double markRow,
        double signRow,
        double trialRow) {
    static final double SIDE_MARGIN = 10;
    static final double TOP_MARGIN = 9;
    static final double BOTTOM_MARGIN = 11;
    /** What stands above and below the views on the first page. */
    private static final double WORDS_MM = 47;
    /** German says the cautions in more words. */
    private static final double GERMAN_WORDS_MM = 58;

    /** Least room beside a view for the panels too small to write into. */
    private static final double BESIDE_MM = 52;
    /** German joins the names of panels into longer words. */
    private static final double GERMAN_BESIDE_MM = 60;
    /** Least room beside the ends for the gauge check. */
    private static final double CHECK_MM = 62;

    /** Height of a ruled line, and of the words above the lines in lines. */
    static final double NOTE_MM = 7;

    private static final double NOTES_HEAD = 0.4;
    private static final double SMALL_WIDE = 66;

    /** @param ease how roomy the lines are, from 0 */
    static SheetRoom of(Paper paper, SheetViews views, double ease) {
        double wide = paper.widthMm() - 2 * SIDE_MARGIN;
        boolean german = Language.inHand() == Language.GERMAN;
        double high = paper.heightMm() - TOP_MARGIN - BOTTOM_MARGIN - (german ? GERMAN_WORDS_MM : WORDS_MM);
        double perScale = views.heightMm(View.FRONT, 1)
                + views.heightMm(View.LEFT, 1)
                + views.heightMm(View.RIGHT, 1)
                + views.heightMm(View.TOP, 1)
                - 4 * SheetViews.TITLE_MM;
        double byHeight = (high - 4 * SheetViews.TITLE_MM) / perScale;
        double bySide = (wide - (german ? GERMAN_BESIDE_MM : BESIDE_MM)) / views.widthMm(View.LEFT, 1);
        double byEnds = (wide - CHECK_MM) / (views.widthMm(View.FRONT, 1) + views.widthMm(View.REAR, 1));
        double scale = Math.min(byHeight, Math.min(bySide, byEnds));
        double small = SMALL_WIDE
                / Math.max(views.widthMm(View.UNDER, 1), views.widthMm(View.BAY, 1) + views.widthMm(View.CABIN, 1));
        return new SheetRoom(
                wide,
                scale,
                small,
                views.widthMm(View.FRONT, scale) + views.widthMm(View.REAR, scale),
                views.widthMm(View.LEFT, scale),
                SMALL_WIDE,
                (int) Math.max(0, (byHeight - scale) * perScale / NOTE_MM - NOTES_HEAD),
                7 + ease,
                5.2 + ease,
                3.5 + ease);
    }
}
