package quarterlight.units;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The two units in which gauges show a thickness. */
public enum ThicknessUnit implements Worded {
    MIL(25.4, "mil mils thou"),
    UM(1.0, "um \u00b5m \u03bcm micron microns");

    private final double umPerUnit;
    private final String spellings;

    ThicknessUnit(double umPerUnit, String spellings) {
        this.umPerUnit = umPerUnit;
        this.spellings = spellings;
    }

    /** How people write it; the micro sign and the Greek letter look alike. */
    public List<String> spellings() {
        return List.of(spellings.split(" "));
    }

    /** The unit that a word stands for, whatever its case. */
    public static Optional<ThicknessUnit> said(String word) {
        String wanted = word.strip().toLowerCase(Locale.ROOT);
        for (ThicknessUnit unit : values()) {
            if (unit.spellings().contains(wanted)) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }

    public double toUm(double value) {
        return value * umPerUnit;
    }

    public double fromUm(double um) {
        return um / umPerUnit;
    }
}
