package quarterlight.units;

import java.util.Objects;

/** Thicknesses in the one unit of a comparison: mil with one decimal, um with none, and no line break before the unit. */
public record ThicknessText(ThicknessUnit unit) {
    private static final String NARROW = "\u202f";

    public ThicknessText {
        Objects.requireNonNull(unit, "unit");
    }

    public String number(double um) {
        return Numerals.fixed(unit.fromUm(um), unit == ThicknessUnit.MIL ? 1 : 0);
    }

    public String unitName() {
        return unit == ThicknessUnit.MIL ? "mil" : "\u00b5m";
    }

    public String of(double um) {
        return number(um) + NARROW + unitName();
    }
}
