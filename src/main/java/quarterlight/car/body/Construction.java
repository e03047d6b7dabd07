package quarterlight.car.body;

import quarterlight.units.Worded;

/** How the body is carried. */
public enum Construction implements Worded {
    UNIBODY,
    BODY_ON_FRAME,
    SUBFRAME;

    /** The usual construction of a style: body-on-frame for a pickup, else unibody (common practice). */
    public static Construction usualFor(BodyStyle style) {
        return style == BodyStyle.PICKUP ? BODY_ON_FRAME : UNIBODY;
    }
}
