package quarterlight.finish;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import quarterlight.car.FinishProfile;
import quarterlight.rust.RustExtent;
import quarterlight.visit.SignKind;

/**
 * The numbers of each version of {@link FinishModel}, with their sources. "Judgement" means: from the common practice of
 * the trade, no published source; docs/methods/finish-history.md lists them all for the reader.
 */
final class FinishNumbers {
    private FinishNumbers() {}

    static FinishModel version1() {
        return new FinishModel(
                "1",
                levels(),
                0.15, // judgement; no published spread within a car was found
                List.of(0.06, 0.10, 0.15, 0.22, 0.32), // judgement
                new LogNormal(4.0, 0.60), // judgement
                new LogNormal(7.0, 0.35), // judgement
                0.20, // judgement
                0.4, // judgement
                new LogNormal(25, 0.80), // judgement; filler makers: glaze to 125 mil, filler to 250 mil at most
                0.02, // judgement
                0.2, // judgement
                80, // judgement; about the usual range of a gauge, 2000 um
                new Chances(.005, .01, .005, .25), // judgement
                0.7, // judgement: signs share causes
                panels(),
                new ScenarioPriors(.35, .35, .20, .10), // judgement, as the next two
                new ScenarioPriors(.60, .25, .10, .05),
                new ScenarioPriors(.15, .35, .33, .17),
                signs(),
                rust());
    }

    /**
     * Lacquer, enamel, unknown: W. C. Anderson, Old Cars Weekly restoration series part 9, 2010 (new 6 to 8 mil,
     * polished survivors 4 to 6). Modern: the German leaflet on total paint thickness of 11 March 2025 (series finish
     * 80 to 130 um) and the I-CAR note on clearcoat thickness (4 to 6 mil). Spreads: judgement.
     */
    private static Map<FinishProfile, LogNormal> levels() {
        Map<FinishProfile, LogNormal> levels = new EnumMap<>(FinishProfile.class);
        levels.put(FinishProfile.LACQUER, new LogNormal(5.0, 0.42));
        levels.put(FinishProfile.ENAMEL, new LogNormal(6.0, 0.40));
        levels.put(FinishProfile.MODERN, new LogNormal(4.5, 0.22));
        levels.put(FinishProfile.UNKNOWN, new LogNormal(5.0, 0.50));
        return levels;
    }

    /** Judgement. */
    private static Map<Scenario, Chances> panels() {
        Map<Scenario, Chances> panels = new EnumMap<>(Scenario.class);
        panels.put(Scenario.AS_BUILT, new Chances(.97, .0156, .0048, .0096));
        panels.put(Scenario.SOME_PANELS, new Chances(.70, .156, .048, .096));
        panels.put(Scenario.WHOLE_CAR_OVER, new Chances(.02, .92, .02, .04));
        panels.put(Scenario.WHOLE_CAR_STRIPPED, new Chances(.02, .02, .92, .04));
        return panels;
    }

    /** Judgement. */
    private static Map<SignKind, Chances> signs() {
        Map<SignKind, Chances> signs = new EnumMap<>(SignKind.class);
        signs.put(SignKind.OVERSPRAY, new Chances(.03, .45, .40, .45));
        signs.put(SignKind.TAPE_EDGE, new Chances(.01, .35, .20, .35));
        signs.put(SignKind.SANDING_SCRATCHES, new Chances(.02, .25, .15, .35));
        signs.put(SignKind.TEXTURE_DIFFERS, new Chances(.05, .40, .35, .45));
        signs.put(SignKind.COLOR_DIFFERS, new Chances(.08, .35, .30, .40));
        signs.put(SignKind.RUNS_OR_DIRT, new Chances(.08, .30, .30, .30));
        signs.put(SignKind.FASTENER_DISTURBED, new Chances(.06, .25, .30, .40));
        signs.put(SignKind.GAP_OUT_OF_LINE, new Chances(.10, .15, .20, .40));
        signs.put(SignKind.SEAM_NOT_AS_BUILT, new Chances(.01, .05, .15, .40));
        signs.put(SignKind.WEAK_MAGNET, new Chances(.01, .08, .03, .75));
        signs.put(SignKind.RIPPLE, new Chances(.05, .12, .10, .55));
        signs.put(SignKind.CRACKS_OR_BLISTERS, new Chances(.08, .20, .15, .35));
        signs.put(SignKind.RUST_BUBBLING, new Chances(.06, .10, .08, .30));
        signs.put(SignKind.FACTORY_PRIMER_VISIBLE, new Chances(.60, .45, .10, .15));
        signs.put(SignKind.FACTORY_STENCIL, new Chances(.30, .15, .02, .05));
        return signs;
    }

    /** Judgement. Rust tells repairs under the finish, not coats: only filler differs. */
    private static Map<RustExtent, Chances> rust() {
        Map<RustExtent, Chances> rust = new EnumMap<>(RustExtent.class);
        rust.put(RustExtent.NONE, new Chances(.55, .55, .55, .35));
        rust.put(RustExtent.LIGHT, new Chances(.30, .30, .30, .25));
        rust.put(RustExtent.MODERATE, new Chances(.10, .10, .10, .22));
        rust.put(RustExtent.HEAVY, new Chances(.05, .05, .05, .18));
        return rust;
    }
}
