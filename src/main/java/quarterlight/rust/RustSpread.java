package quarterlight.rust;

import java.util.List;
import java.util.Optional;

/**
 * How rust lies over a surface, by the four types of ASTM D610 (letter behind the grade: 6-G). A suggestion from the
 * sizes of the traced patches; the inspector's eye decides.
 */
public enum RustSpread {
    /** Most of it in a few places. */
    SPOT("S"),
    /** Patches of various sizes spread at random. */
    GENERAL("G"),
    /** Tiny specks. */
    PINPOINT("P"),
    /** Specks and larger patches together. */
    HYBRID("H");

    /** A speck: up to this, about 3.5 mm across. Judgement. */
    private static final double SPECK_MM2 = 10;

    private static final double NEARLY_ALL = 0.8;
    private static final double SOME = 0.2;
    private static final int FEW = 3;

    private final String letter;

    RustSpread(String letter) {
        this.letter = letter;
    }

    public String letter() {
        return letter;
    }

    /**
     * The type that the sizes of the patches suggest. Rule (judgement): specks with 0.8 of the rust or more are pinpoint;
     * with 0.2 or more, hybrid; else 0.8 or more in the three largest patches is spot; else general.
     *
     * @param patchesMm2 area of each patch that hangs together, mm2
     * @return empty if there is no patch
     */
    public static Optional<RustSpread> suggest(List<Double> patchesMm2) {
        double all = sum(patchesMm2);
        if (all <= 0) {
            return Optional.empty();
        }
        double specks = sum(patchesMm2.stream().filter(a -> a <= SPECK_MM2).toList()) / all;
        if (specks >= NEARLY_ALL) {
            return Optional.of(PINPOINT);
        }
        if (specks >= SOME) {
            return Optional.of(HYBRID);
        }
        List<Double> largest = patchesMm2.stream()
                .sorted((a, b) -> Double.compare(b, a))
                .limit(FEW)
                .toList();
        return Optional.of(sum(largest) >= NEARLY_ALL * all ? SPOT : GENERAL);
    }

    private static double sum(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).sum();
    }
}
