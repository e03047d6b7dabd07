package quarterlight.page.line;

import quarterlight.page.print.DrawnSvg;

/** A time line as an SVG element for pages: the same drawing, with its words as text of the family that pages embed. */
public final class TimeLineSvg {
    private TimeLineSvg() {}

    /**
     * The element, without a declaration of XML.
     *
     * @param title what it shows, for those who hear the page
     */
    public static String element(TimeLineDrawing drawing, String title) {
        return DrawnSvg.element(drawing.widthPx(), drawing.heightPx(), drawing::draw, title);
    }
}
