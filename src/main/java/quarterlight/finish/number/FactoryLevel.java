package quarterlight.finish.number;

import quarterlight.car.FinishProfile;

/**
 * The prior of a car's factory level by finish profile.
 * <p>Sources: W. C. Anderson, Old Cars Weekly restoration series, part 9, 2010 (collector cars 6 to 8 mil new, polished
 * survivors 4 to 6); the German leaflet on total paint thickness of 11 March 2025 (series finish 80 to 130 um); the I-CAR
 * note on clearcoat thickness (4 to 6 mil). Spreads: judgement.
 *
 * @param medianMil median over cars
 * @param spreadFactor on {@link JudgedNumber#LEVEL_SPREAD}
 */
public record FactoryLevel(double medianMil, double spreadFactor) {
    public static FactoryLevel of(FinishProfile profile) {
        return switch (profile) {
            case LACQUER -> new FactoryLevel(5.2, 1);
            case ENAMEL -> new FactoryLevel(5.8, 1);
            case MODERN -> new FactoryLevel(4.5, .65);
            case UNKNOWN -> new FactoryLevel(5.0, 1.15);
        };
    }

    /** Density of the logarithm of the level: the profile's law, and that of a car unlike its profile. */
    public double density(double logMil, double shift, double spread) {
        double other = FixedNumber.OTHER_LEVEL_SHARE.value();
        return (1 - other) * Lattice.normal(logMil, Math.log(medianMil) + shift, spread * spreadFactor)
                + other
                        * Lattice.normal(
                                logMil,
                                Math.log(FixedNumber.OTHER_LEVEL_MIL.value()),
                                FixedNumber.OTHER_LEVEL_SPREAD.value());
    }
}
