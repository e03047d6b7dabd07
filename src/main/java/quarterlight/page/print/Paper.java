package quarterlight.page.print;

import quarterlight.units.Worded;

/** The papers that pages are made for; sizes in mm, upright. */
public enum Paper implements Worded {
    A4(210, 297),
    LETTER(215.9, 279.4),
    A3(297, 420);

    private final double widthMm;
    private final double heightMm;

    Paper(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    public double widthMm() {
        return widthMm;
    }

    public double heightMm() {
        return heightMm;
    }
}
