package quarterlight.finish.scale;

import quarterlight.car.FinishProfile;
import quarterlight.units.ThicknessUnit;

/**
 * What a factory finish of a kind has been published to read, widest figures.
 * <p>Sources: W. C. Anderson, Old Cars Weekly restoration series, part 9, 2010 (polished survivors 4 to 6 mil, collector cars up to 8
 * when new); the German leaflet on total paint thickness of 11 March 2025 (series finish 80 to 130 um). Lacquer was polished in the
 * plant, so it takes the figures of what was polished: judgement.
 *
 * @param lowUm thinnest
 * @param highUm thickest
 */
public record FactoryRange(double lowUm, double highUm) {
    private static final double SERIES_LOW_UM = 80;
    private static final double SERIES_HIGH_UM = 130;

    public FactoryRange {
        if (!(lowUm > 0 && highUm > lowUm)) {
            throw new IllegalArgumentException("a range runs upward, not from " + lowUm + " to " + highUm);
        }
    }

    public static FactoryRange of(FinishProfile profile) {
        return switch (profile) {
            case LACQUER -> new FactoryRange(mil(4), mil(6));
            case ENAMEL -> new FactoryRange(mil(4), mil(8));
            case MODERN -> new FactoryRange(SERIES_LOW_UM, SERIES_HIGH_UM);
            case UNKNOWN -> new FactoryRange(SERIES_LOW_UM, mil(6));
        };
    }

    private static double mil(double mil) {
        return mil * ThicknessUnit.MIL.toUm(1);
    }
}
