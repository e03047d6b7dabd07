package quarterlight.visit.trial;

import quarterlight.units.Worded;

/** Signs that speak for or against refinishing; their weights stand with the finish history. */
public enum SignKind implements Worded {
    OVERSPRAY,
    TAPE_EDGE,
    SANDING_SCRATCHES,
    TEXTURE_DIFFERS,
    COLOR_DIFFERS,
    RUNS_OR_DIRT,
    FASTENER_DISTURBED,
    GAP_OUT_OF_LINE,
    SEAM_NOT_AS_BUILT,
    WEAK_MAGNET,
    RIPPLE,
    CRACKS_OR_BLISTERS,
    RUST_BUBBLING,
    FACTORY_PRIMER_VISIBLE,
    FACTORY_STENCIL
}
