package quarterlight.rust.need;

/**
 * How far one kind of rust goes in a zone.
 *
 * @param largestMm2 the largest patch that hangs together, 0 if none is measured
 * @param allMm2 all patches
 * @param unmeasured true if there is some whose size is not known
 */
public record Loss(double largestMm2, double allMm2, boolean unmeasured) {
    public static final Loss NONE = new Loss(0, 0, false);

    public Loss {
        if (!(largestMm2 >= 0 && allMm2 >= largestMm2)) {
            throw new IllegalArgumentException("the largest patch is part of all: " + largestMm2 + " of " + allMm2);
        }
    }

    boolean found() {
        return allMm2 > 0 || unmeasured;
    }

    Extent largest() {
        return new Extent(largestMm2, unmeasured);
    }

    Extent all() {
        return new Extent(allMm2, unmeasured);
    }
}
