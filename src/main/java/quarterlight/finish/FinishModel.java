package quarterlight.finish;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import quarterlight.car.FinishProfile;
import quarterlight.rust.RustExtent;
import quarterlight.visit.SignKind;

/**
 * The numbers of the finish history, all of them; {@link #V1} has the source of each. Thicknesses in mil, spreads as
 * standard deviations of the natural logarithm. Immutable; a changed number is a new version.
 *
 * @param version shown with every result
 * @param levels factory level of the car, by profile
 * @param panelLogSd spread of a factory finish from panel to panel
 * @param withinLogSds values of the spread within a panel, equally likely, shared by the car
 * @param coat coat added by a refinish
 * @param bareCoat coat on a stripped panel
 * @param jobLogSd spread of either coat from panel to panel within one whole-car job; below the spread of either coat
 * @param fillerShare share of the spots of a repaired panel that lie on filler
 * @param filler thickness of such a spot
 * @param strayShare share of readings that say nothing of the panel
 * @param strayLowMil lower end of their log-uniform law
 * @param strayHighMil upper end of it
 * @param noMetal chance that the gauge finds no metal at a spot
 * @param signExponent power on the product of sign and rust factors, since they share causes
 * @param panels chances of a panel's histories in each scenario
 * @param middle priors of the scenarios that the figure rests on
 * @param low priors of a car little worked on
 * @param high priors of a car much worked on
 * @param signs chance that a sign is seen, given the history
 * @param rust factor of a zone looked at for rust, given the history
 */
public record FinishModel(
        String version,
        Map<FinishProfile, LogNormal> levels,
        double panelLogSd,
        List<Double> withinLogSds,
        LogNormal coat,
        LogNormal bareCoat,
        double jobLogSd,
        double fillerShare,
        LogNormal filler,
        double strayShare,
        double strayLowMil,
        double strayHighMil,
        Chances noMetal,
        double signExponent,
        Map<Scenario, Chances> panels,
        ScenarioPriors middle,
        ScenarioPriors low,
        ScenarioPriors high,
        Map<SignKind, Chances> signs,
        Map<RustExtent, Chances> rust) {
    /** The first version; every number with its source. */
    public static final FinishModel V1 = FinishNumbers.version1();

    public FinishModel {
        levels = Map.copyOf(levels);
        withinLogSds = List.copyOf(withinLogSds);
        panels = Map.copyOf(panels);
        signs = Map.copyOf(signs);
        rust = Map.copyOf(rust);
        if (!(jobLogSd > 0) || jobLogSd >= Math.min(coat.logSd(), bareCoat.logSd())) {
            throw new IllegalArgumentException("coats of one job vary less than coats of different jobs");
        }
        requireAll(FinishProfile.class, levels);
        requireAll(Scenario.class, panels);
        requireAll(SignKind.class, signs);
        requireAll(RustExtent.class, rust);
    }

    private static <E extends Enum<E>> void requireAll(Class<E> type, Map<E, ?> table) {
        for (E constant : type.getEnumConstants()) {
            if (!table.containsKey(constant)) {
                throw new IllegalArgumentException("the finish model lacks a number for " + constant);
            }
        }
    }

    /** The same with another factory level for one profile. */
    public FinishModel withLevel(String newVersion, FinishProfile profile, LogNormal level) {
        Map<FinishProfile, LogNormal> changed = new EnumMap<>(levels);
        changed.put(profile, level);
        return with(newVersion, changed, signs);
    }

    /** The same with other chances for one sign; each within 0 and 1. */
    public FinishModel withSign(String newVersion, SignKind sign, Chances seen) {
        if (Math.max(Math.max(seen.factory(), seen.over()), Math.max(seen.stripped(), seen.filler())) > 1) {
            throw new IllegalArgumentException("the chance of seeing " + sign.word() + " is at most 1");
        }
        Map<SignKind, Chances> changed = new EnumMap<>(signs);
        changed.put(sign, seen);
        return with(newVersion, levels, changed);
    }

    private FinishModel with(
            String newVersion, Map<FinishProfile, LogNormal> newLevels, Map<SignKind, Chances> newSigns) {
        return new FinishModel(
                newVersion,
                newLevels,
                panelLogSd,
                withinLogSds,
                coat,
                bareCoat,
                jobLogSd,
                fillerShare,
                filler,
                strayShare,
                strayLowMil,
                strayHighMil,
                noMetal,
                signExponent,
                panels,
                middle,
                low,
                high,
                newSigns,
                rust);
    }
}
