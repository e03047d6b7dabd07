package quarterlight.diagram;

import quarterlight.units.Worded;

/** What a drawn shape is; its word is the class attribute of the SVG path. */
public enum ShapeKind implements Worded {
    SILHOUETTE,
    ZONE,
    GAP,
    DETAIL,
    GLASS,
    WHEEL,
    SHADE
}
