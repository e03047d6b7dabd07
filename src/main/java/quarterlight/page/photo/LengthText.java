package quarterlight.page.photo;

import static quarterlight.language.Sentences.say;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import quarterlight.rust.plane.MarkedLength;
import quarterlight.units.Numerals;

/**
 * A measured length in words: {@code 243 mm ± 2}, where the part after ± is two standard deviations from the marking.
 * <p>That part is rounded up to one digit, or to two if they begin with 1 (GUM, JCGM 100:2008, section 7.2.6, adapted), and
 * the length to the same place, though never finer than a tenth of a mm.
 */
public final class LengthText {
    private static final String THIN = "\u2009";
    private static final int FINEST_PLACES = 1;

    private LengthText() {}

    public static String of(MarkedLength length) {
        if (!Double.isFinite(length.mm()) || !Double.isFinite(length.sdMm())) {
            return say("report.pictures.length-not-known");
        }
        BigDecimal spread = BigDecimal.valueOf(2 * length.sdMm());
        int places = Math.min(FINEST_PLACES, places(spread));
        BigDecimal shown = spread.setScale(places, RoundingMode.UP);
        BigDecimal mm = BigDecimal.valueOf(length.mm()).setScale(places, RoundingMode.HALF_UP);
        return Numerals.typed(mm) + THIN + "mm ± " + Numerals.typed(shown);
    }

    /** The decimal places that leave one digit of a number, or two if it begins with 1. */
    private static int places(BigDecimal spread) {
        if (spread.signum() == 0) {
            return FINEST_PLACES;
        }
        BigDecimal first = spread.round(new MathContext(1, RoundingMode.DOWN));
        int onePlace = first.stripTrailingZeros().scale();
        boolean beginsWithOne = first.stripTrailingZeros().unscaledValue().intValueExact() == 1;
        return beginsWithOne ? onePlace + 1 : onePlace;
    }
}
