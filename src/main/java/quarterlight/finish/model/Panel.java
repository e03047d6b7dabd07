package quarterlight.finish.model;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import quarterlight.finish.number.FixedNumber;
import quarterlight.finish.place.SpotNeighbors;
import quarterlight.rust.RustExtent;
import quarterlight.visit.trial.SignKind;

/**
 * What the model takes of one panel.
 *
 * @param spotsMil values of spots in mil, those beyond the gauge's range as the range
 * @param noMetal spots without metal
 * @param signs true for seen, false for looked for and not there
 * @param silent signs that were noted elsewhere on the car and never as absent: not noting them here says a little
 * @param neighbors which spots lie beside which, if all have places in one view
 */
public record Panel(
        String zone,
        List<Double> spotsMil,
        int noMetal,
        Map<SignKind, Boolean> signs,
        List<SignKind> silent,
        Optional<RustExtent> rust,
        Optional<SpotNeighbors> neighbors) {
    static final int UNTOLD = 0;
    static final int SEEN = 1;
    static final int ABSENT = 2;
    static final int SILENT = 3;
    private static final SignKind[] KINDS = SignKind.values();
    private static final List<String> HORIZONTAL =
            List.of("hood", "roof", "decklid", "front-lid", "engine-lid", "cowl");
    private static final List<String> LESS_PRONE = List.of("roof", "cowl", "cab-back");
    private static final List<String> LOW = List.of("rocker", "valance");
    private static final List<String> SIDES = List.of("fender", "quarter", "bed-side");

    /** Of a panel whose spots have no places. */
    public Panel(
            String zone,
            List<Double> spotsMil,
            int noMetal,
            Map<SignKind, Boolean> signs,
            List<SignKind> silent,
            Optional<RustExtent> rust) {
        this(zone, spotsMil.stream().sorted().toList(), noMetal, signs, silent, rust, Optional.empty());
    }

    public Panel {
        spotsMil = List.copyOf(spotsMil);
        signs = Map.copyOf(signs);
        silent = List.copyOf(silent);
    }

    /** What was noted of a sign: seen, absent, silent, or 0 for nothing. */
    int mark(int sign) {
        Boolean seen = signs.get(KINDS[sign]);
        if (seen != null) {
            return seen ? SEEN : ABSENT;
        }
        return silent.contains(KINDS[sign]) ? SILENT : UNTOLD;
    }

    /** The panel as if nothing were known of it. */
    public Panel unknown() {
        return new Panel(zone, List.of(), 0, Map.of(), List.of(), Optional.empty());
    }

    double[] logMil() {
        double low = FixedNumber.FLOOR_MIL.value();
        double high = FixedNumber.CAP_MIL.value();
        return spotsMil.stream()
                .mapToDouble(mil -> Math.log(Math.max(low, Math.min(high, mil))))
                .toArray();
    }

    boolean isHorizontal() {
        return HORIZONTAL.contains(zone);
    }

    boolean isSail() {
        return zone.startsWith("sail");
    }

    /** Factor on the odds of having been touched. */
    public double proneness() {
        return isLessProne() ? FixedNumber.PRONE_LESS.value() : 1;
    }

    /** Factor on the odds that it holds filler if it was touched: those that are seldom hit or rusted are painted with the rest. */
    double fillerOdds() {
        return isLessProne() ? FixedNumber.FILLER_LESS.value() : 1;
    }

    private boolean isLessProne() {
        return LESS_PRONE.contains(zone) || zone.toLowerCase(Locale.ROOT).contains("pillar") || isSail();
    }

    /** True for a panel that a guard against chips may cover whole; on others it covers the lower part. */
    boolean isLow() {
        return LOW.stream().anyMatch(zone::startsWith);
    }

    /** Chance of a factory guard against chips. */
    double guard() {
        if (isLow()) {
            return FixedNumber.GUARD_LOW.value();
        }
        return SIDES.stream().anyMatch(zone::startsWith) ? FixedNumber.GUARD_SIDE.value() : 0;
    }

    /** Log of the middle spot; only of a panel with spots. */
    double median() {
        double[] all = logMil();
        Arrays.sort(all);
        return (all[(all.length - 1) / 2] + all[all.length / 2]) / 2;
    }
}
