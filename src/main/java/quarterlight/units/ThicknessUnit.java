package quarterlight.units;

/** The two units in which gauges show a thickness. */
public enum ThicknessUnit implements Worded {
    MIL(25.4),
    UM(1.0);

    private final double umPerUnit;

    ThicknessUnit(double umPerUnit) {
        this.umPerUnit = umPerUnit;
    }

    public double toUm(double value) {
        return value * umPerUnit;
    }

    public double fromUm(double um) {
        return um / umPerUnit;
    }
}
