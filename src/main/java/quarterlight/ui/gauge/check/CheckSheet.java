package quarterlight.ui.gauge.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.units.Thickness;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.GaugeCheck;
import quarterlight.visit.reading.GaugeMoment;
import quarterlight.visit.reading.GaugeSurface;
import quarterlight.visit.reading.GaugeValue;

/**
 * The gauge checks of a visit as a sheet: bare metal first, then each shim by its thickness, before and after side by side. Bare
 * metal stands there before anything was noted. Immutable.
 */
public record CheckSheet(List<Row> rows) {
    private static final double SAME_UM = 1e-9;

    /**
     * A surface, checked before, after, or not yet.
     *
     * @param toleranceUm stated tolerance of the shim
     */
    public record Row(
            GaugeSurface on,
            GaugeValue.Measured nominal,
            OptionalDouble toleranceUm,
            Optional<Recorded<GaugeCheck>> before,
            Optional<Recorded<GaugeCheck>> after) {
        Optional<Recorded<GaugeCheck>> at(GaugeMoment moment) {
            return moment == GaugeMoment.BEFORE ? before : after;
        }

        boolean isSame(GaugeCheck check) {
            return check.on() == on
                    && Math.abs(check.nominal().thickness().um()
                                    - nominal.thickness().um())
                            < SAME_UM;
        }

        private Row with(Recorded<GaugeCheck> check) {
            OptionalDouble tolerance =
                    toleranceUm.isPresent() ? toleranceUm : check.value().nominalToleranceUm();
            return check.value().when() == GaugeMoment.BEFORE
                    ? new Row(on, nominal, tolerance, Optional.of(check), after)
                    : new Row(on, nominal, tolerance, before, Optional.of(check));
        }
    }

    public CheckSheet {
        rows = List.copyOf(rows);
    }

    /** @param planned shims that stand in the sheet although nothing was shown on them yet */
    public static CheckSheet of(VisitRecord visit, List<Row> planned, ThicknessUnit unit) {
        List<Row> rows = new ArrayList<>();
        for (Recorded<GaugeCheck> check : visit.gaugeChecks()) {
            put(rows, check);
        }
        planned.stream()
                .filter(row -> rows.stream().noneMatch(one -> same(one, row)))
                .toList()
                .forEach(rows::add);
        if (rows.stream().noneMatch(row -> row.on() == GaugeSurface.BARE)) {
            rows.add(
                    surface(GaugeSurface.BARE, new GaugeValue.Measured(BigDecimal.ZERO, unit), OptionalDouble.empty()));
        }
        rows.sort(Comparator.comparing(Row::on)
                .thenComparing(row -> row.nominal().thickness().um()));
        return new CheckSheet(rows);
    }

    /** A surface on which nothing was shown yet. */
    public static Row surface(GaugeSurface on, GaugeValue.Measured nominal, OptionalDouble toleranceUm) {
        return new Row(on, nominal, toleranceUm, Optional.empty(), Optional.empty());
    }

    private static boolean same(Row a, Row b) {
        Thickness one = a.nominal().thickness();
        return a.on() == b.on() && Math.abs(one.um() - b.nominal().thickness().um()) < SAME_UM;
    }

    /** Into the first row of the surface that has room at that moment, else into a new one. */
    private static void put(List<Row> rows, Recorded<GaugeCheck> check) {
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            if (row.isSame(check.value()) && row.at(check.value().when()).isEmpty()) {
                rows.set(i, row.with(check));
                return;
            }
        }
        rows.add(surface(
                        check.value().on(),
                        check.value().nominal(),
                        check.value().nominalToleranceUm())
                .with(check));
    }
}
