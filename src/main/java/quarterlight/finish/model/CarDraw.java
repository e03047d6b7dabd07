package quarterlight.finish.model;

import java.util.Arrays;
import java.util.List;
import quarterlight.finish.number.FactoryLevel;
import quarterlight.finish.number.FixedNumber;
import quarterlight.finish.number.JudgedNumber;
import quarterlight.finish.number.Lattice;
import quarterlight.finish.number.LifeStory;
import quarterlight.finish.number.StoryNumber;

/**
 * All states of the car under one draw of the judged numbers: level of the factory finish, scenario, how many panels were
 * touched, how many of those hold filler, and the coat of a job on the whole car. Not for several threads.
 */
final class CarDraw {
    private static final int STORIES = LifeStory.values().length;
    private static final int FILLED = LifeStory.PATCH.ordinal();
    /** Five points of a normal law and their weights. */
    private static final double[] FIVE = {-1.35, -.6, 0, .6, 1.35};

    private static final double[] FIVE_WEIGHTS = {.125, .225, .3, .225, .125};
    private static final double LEVEL_STEP = .05;
    private static final double WHOLE_STEP = .16;
    private static final double STRIPPED_STEP = .24;
    private static final double MANY = Math.log(StoryNumber.MANY_COATS_MIL.value());
    /** Coats of a job on the whole car: finer where they are thick against the finish below, .4 to 36 mil. */
    private static final int COATS = 20;

    private static final double[] COAT_MIL = new double[COATS];
    private static final double[] COAT_STEP = new double[COATS];

    static {
        double below = 5;
        double step = Math.log((36 + below) / (.4 + below)) / (COATS - 1);
        for (int k = 0; k < COATS; k++) {
            COAT_MIL[k] = (.4 + below) * Math.exp(k * step) - below;
            COAT_STEP[k] = step * (COAT_MIL[k] + below) / COAT_MIL[k];
        }
    }

    private static final double LOWEST_LEVEL = Math.log(1.6);
    private static final double NEGLIGIBLE = 1e-6;
    private static final double GOLDEN = .6180339887498949;
    private static final int USUAL = Lattice.width(StoryNumber.USUAL_JOB.value());
    private static final int BROAD = Lattice.width(StoryNumber.BROAD_JOB.value());
    private static final int REWORKED = Lattice.width(StoryNumber.REWORKED.value());

    private final List<Panel> panels;
    private final PanelTable[] tables;
    private final FactoryLevel prior;
    private final Draws draws;
    private final int draw;
    private final CarSums sums;

    private final int count;
    private final int within;
    private final int panelWidth;
    private final int over;
    private final int loose;
    private final double[] coats = new double[FIVE.length];
    private final double coat;
    private final double bare;
    private final double firstLevel;
    final double[][][] signs;
    private final double[][] thickness;
    private final double[][] split = new double[3][];
    private final double[][] weighed;
    private final double[][] touchedShares;
    private final double[][] filledWhole;
    private final double[] bareOf;
    private final double[] replacedOf;
    private final double[] skimOf;
    private final double[] leftOut;
    /** The likelihood of the spots of each panel where it was refinished by itself. */
    private final double[] paintedOver;
    /** By how much the factory level of a panel differs from the car's: horizontal ones are a little thicker. */
    private final double horizontalLevel;

    private final double uprightLevel;

    private final double[] guard;
    private final double[] solder;
    private final boolean[] low;
    private final boolean[] horizontal;

    CarDraw(List<Panel> panels, PanelTable[] tables, FactoryLevel prior, Draws draws, int draw) {
        this.panels = panels;
        this.tables = tables;
        this.prior = prior;
        this.draws = draws;
        this.draw = draw;
        count = panels.size();
        sums = new CarSums(count);
        within = PanelTable.within(value(JudgedNumber.WITHIN_SPREAD));
        panelWidth = Lattice.width(value(JudgedNumber.PANEL_SPREAD));
        over = Lattice.width(Math.hypot(
                StoryNumber.PANEL_IN_COAT.value() * value(JudgedNumber.PANEL_SPREAD),
                StoryNumber.JOB_IN_COAT.value() * value(JudgedNumber.JOB_SPREAD)));
        loose = Lattice.width(Math.hypot(value(JudgedNumber.PANEL_SPREAD), StoryNumber.LOOSE_JOB.value()));
        coat = value(JudgedNumber.COAT);
        for (int k = 0; k < FIVE.length; k++) {
            coats[k] = coat * Math.exp(value(JudgedNumber.COAT_SPREAD) * FIVE[k]);
        }
        bare = value(JudgedNumber.BARE_COAT);
        firstLevel = LOWEST_LEVEL + LEVEL_STEP * (draw * GOLDEN % 1);
        horizontalLevel = value(JudgedNumber.HORIZONTAL);
        uprightLevel = -StoryNumber.UPRIGHT_LESS.value() * horizontalLevel;
        signs = new double[2][count][];
        bareOf = new double[count];
        replacedOf = new double[count];
        skimOf = new double[count];
        leftOut = new double[count];
        paintedOver = new double[count];
        guard = new double[count];
        solder = new double[count];
        low = new boolean[count];
        horizontal = new boolean[count];
        thickness = new double[count][STORIES];
        weighed = new double[count][STORIES];
        for (int n = 0; n < split.length; n++) {
            split[n] = new double[count];
        }
        touchedShares = new double[StoryShares.TOUCHED.length + 2][count];
        filledWhole = StoryShares.filled(StoryShares.FILLED_WHOLE, panels);
        for (int p = 0; p < count; p++) {
            double[] others = SignFactors.others(panels.get(p), draws, draw);
            for (int kind = 0; kind < 2; kind++) {
                signs[kind][p] = draws.signs().factors(panels.get(p), draw, kind == 1, null);
                for (int s = 0; s < STORIES; s++) {
                    signs[kind][p][s] *= others[s];
                }
            }
            prepare(p);
            double odds = panels.get(p).proneness();
            for (int n = 0; n < StoryShares.TOUCHED.length; n++) {
                touchedShares[n][p] = StoryShares.prone(StoryShares.TOUCHED[n], odds);
            }
            double built = FixedNumber.TOUCHED_AS_BUILT.value();
            touchedShares[StoryShares.TOUCHED.length][p] = StoryShares.prone(built, odds);
            touchedShares[StoryShares.TOUCHED.length + 1][p] = 1 - FixedNumber.LEFT_OUT.value();
        }
    }

    /** What does not hang on the state of the car. */
    private void prepare(int p) {
        Panel panel = panels.get(p);
        horizontal[p] = panel.isHorizontal();
        guard[p] = panel.guard();
        solder[p] = panel.isSail() ? FixedNumber.SOLDER.value() : 0;
        low[p] = panel.isLow();
        PanelTable t = tables[p];
        if (t != null) {
            bareOf[p] = t.plain(within, BROAD, Lattice.place(Math.log(bare)));
            replacedOf[p] = replaced(t);
            skimOf[p] = t.skim(within, Lattice.place(Math.log(value(JudgedNumber.SKIM))));
        }
    }

    private double value(JudgedNumber number) {
        return draws.value(draw, number);
    }

    CarSums sums() {
        double[] chances = StoryShares.scenarios(draws, draw);
        somePanels(chances[0], chances[1]);
        wholeCarOver(chances[2]);
        wholeCarStripped(chances[3]);
        return sums;
    }

    private double levelPrior(double level, double step) {
        return step * prior.density(level, value(JudgedNumber.LEVEL_SHIFT), value(JudgedNumber.LEVEL_SPREAD));
    }

    private void somePanels(double built, double some) {
        double[] shares = StoryShares.some(draws, draw);
        weigh(0, shares);
        double highest = Math.log(FixedNumber.HIGHEST_LEVEL_MIL.value());
        double[][] filledSome = StoryShares.filled(StoryShares.FILLED_SOME, panels);
        for (double level = firstLevel; level < highest; level += LEVEL_STEP) {
            double chance = levelPrior(level, LEVEL_STEP);
            if (chance < NEGLIGIBLE) {
                continue;
            }
            StoryLevels flat = StoryLevels.of(level + horizontalLevel, coat, coats);
            StoryLevels upright = StoryLevels.of(level + uprightLevel, coat, coats);
            for (int p = 0; p < count; p++) {
                ofSome(p, horizontal[p] ? flat : upright);
            }
            combine();
            for (double[] filled : filledSome) {
                double weight = chance / filledSome.length;
                sums.add(weight * built, touchedShares[StoryShares.TOUCHED.length], filled, split, 0, Math.exp(level));
                for (int n = 0; n < StoryShares.TOUCHED.length; n++) {
                    double each = weight * some / StoryShares.TOUCHED.length;
                    sums.add(each, touchedShares[n], filled, split, 1, Math.exp(level));
                }
            }
            sums.share(0, thickness, shares);
        }
        sums.close(0, shares);
    }

    private void ofSome(int p, StoryLevels at) {
        double[] out = thickness[p];
        PanelTable t = tables[p];
        if (t == null) {
            Arrays.fill(out, 1);
            return;
        }
        double part = t.part(within, panelWidth, at.own());
        double patch = t.patch(within, panelWidth, at.own());
        out[LifeStory.FACTORY.ordinal()] = factory(p, t, at, part, patch);
        double plainOver = 0;
        double patchOver = 0;
        for (int k = 0; k < FIVE.length; k++) {
            plainOver += FIVE_WEIGHTS[k] * t.plain(within, over, at.over()[k]);
            patchOver += FIVE_WEIGHTS[k] * t.patch(within, over, at.over()[k]);
        }
        out[LifeStory.OVER.ordinal()] = plainOver;
        out[LifeStory.LEVELLED.ordinal()] = t.plain(within, loose, at.equal());
        out[LifeStory.PARTLY.ordinal()] = StoryNumber.PARTLY_SPOTS.value() * part
                + StoryNumber.PARTLY_BLENDED.value() * t.plain(within, loose, at.blended())
                + StoryNumber.PARTLY_BOTH.value() * t.part(within, loose, at.blended());
        out[LifeStory.STRIPPED.ordinal()] = bareOf[p];
        out[LifeStory.REPLACED.ordinal()] = replacedOf[p];
        out[FILLED] = StoryNumber.PATCH_OVER.value() * patchOver
                + StoryNumber.PATCH_AS_WAS.value() * patch
                + StoryNumber.PATCH_LEVELLED.value() * t.patch(within, loose, at.equal());
        out[LifeStory.SKIM.ordinal()] = skimOf[p];
    }

    private double factory(int p, PanelTable t, StoryLevels at, double part, double patch) {
        double thick = value(JudgedNumber.FACTORY_THICK);
        double thinned = FixedNumber.THINNED.value();
        double more = t.plain(within, REWORKED, at.reworked());
        return (1 - thick - thinned - guard[p] - solder[p]) * t.plain(within, panelWidth, at.own())
                + thick * (more + part) / 2
                + thinned * t.plain(within, BROAD, at.thinned())
                + guard[p] * (low[p] ? mixed(StoryNumber.GUARD_ALL_OVER, more, part) : part)
                + solder[p] * patch;
    }

    /** A new panel in primer three times in four, else one off another car, refinished over. */
    private double replaced(PanelTable t) {
        double fresh = t.plain(within, USUAL, StoryLevels.ofMil(coat + StoryNumber.PRIMER_MIL.value()));
        double used = t.plain(within, BROAD, StoryLevels.ofMil(coat + StoryNumber.USED_MIL.value()));
        return mixed(StoryNumber.NEW_PANELS, fresh, used);
    }

    private void wholeCarOver(double chance) {
        double[] shares = StoryShares.over();
        weigh(1, shares);
        double[] ofCoat = new double[COATS];
        for (int k = 0; k < COATS; k++) {
            ofCoat[k] = COAT_STEP[k] * overCoat(Math.log(COAT_MIL[k]));
        }
        for (double level = firstLevel; level < Math.log(10); level += WHOLE_STEP) {
            double ofLevel = levelPrior(level, WHOLE_STEP);
            if (ofLevel < NEGLIGIBLE) {
                continue;
            }
            leftOut(level);
            double above = Math.exp(level + horizontalLevel);
            double beside = Math.exp(level + uprightLevel);
            for (int k = 0; k < COATS; k++) {
                if (ofCoat[k] > NEGLIGIBLE) {
                    double onTop = StoryLevels.ofMil(above + COAT_MIL[k]);
                    double onSides = StoryLevels.ofMil(beside + COAT_MIL[k]);
                    for (int p = 0; p < count; p++) {
                        double job = horizontal[p] ? onTop : onSides;
                        ofWhole(p, job, LifeStory.OVER, StoryNumber.OVER_EVEN.value());
                    }
                    wholeState(ofLevel * ofCoat[k] * chance, 2, shares, Math.exp(level));
                }
            }
        }
        sums.close(1, shares);
    }

    /** Density of the logarithm of what jobs on the whole car added: one coat, sanded first, two jobs, several. */
    double overCoat(double log) {
        return jobs(StoryNumber.ONE_COAT, log, Math.log(coat), StoryNumber.ONE_COAT_SPREAD)
                + jobs(StoryNumber.SANDED_FIRST, log, 0, StoryNumber.SANDED_FIRST_SPREAD)
                + jobs(StoryNumber.TWO_COATS, log, Math.log(2 * coat), StoryNumber.TWO_COATS_SPREAD)
                + jobs(StoryNumber.MANY_COATS, log, MANY, StoryNumber.MANY_COATS_SPREAD);
    }

    private static double jobs(StoryNumber share, double log, double center, StoryNumber spread) {
        return share.value() * Lattice.normal(log, center, spread.value());
    }

    /** A share of the one likelihood and the rest of the other. */
    private static double mixed(StoryNumber share, double one, double other) {
        return share.value() * one + (1 - share.value()) * other;
    }

    private void wholeCarStripped(double chance) {
        double[] shares = StoryShares.stripped();
        weigh(1, shares);
        for (double level = firstLevel; level < Math.log(10); level += STRIPPED_STEP) {
            double ofLevel = levelPrior(level, STRIPPED_STEP);
            if (ofLevel < NEGLIGIBLE) {
                continue;
            }
            leftOut(level);
            for (int k = -4; k <= 4; k++) {
                double job = Math.log(bare) + WHOLE_STEP * k;
                double ofJob = WHOLE_STEP * Lattice.normal(job, Math.log(bare), StoryNumber.STRIPPED_JOB.value());
                double place = Lattice.place(job);
                for (int p = 0; p < count; p++) {
                    ofWhole(p, place, LifeStory.STRIPPED, StoryNumber.STRIPPED_EVEN.value());
                }
                wholeState(ofLevel * ofJob * chance, 3, shares, Math.exp(level));
            }
        }
        sums.close(1, shares);
    }

    private void leftOut(double level) {
        StoryLevels flat = StoryLevels.of(level + horizontalLevel, coat, coats);
        StoryLevels upright = StoryLevels.of(level + uprightLevel, coat, coats);
        for (int p = 0; p < count; p++) {
            StoryLevels at = horizontal[p] ? flat : upright;
            leftOut[p] = tables[p] == null ? 1 : tables[p].plain(within, panelWidth, at.own());
            paintedOver[p] = tables[p] == null ? 1 : tables[p].plain(within, BROAD, at.paintedOver());
        }
    }

    /**
     * @param job where the level of the job lies
     * @param plain share of panels whose finish of the job is even; the others were worked on in part later
     */
    private void ofWhole(int p, double job, LifeStory main, double plain) {
        double[] out = thickness[p];
        PanelTable t = tables[p];
        if (t == null) {
            Arrays.fill(out, 1);
            return;
        }
        double even = t.plain(within, panelWidth, job);
        boolean onTop = main == LifeStory.OVER;
        double finished = plain * even + (1 - plain) * t.part(within, panelWidth, job);
        out[LifeStory.FACTORY.ordinal()] = leftOut[p];
        out[LifeStory.OVER.ordinal()] = onTop ? finished : paintedOver[p];
        out[LifeStory.LEVELLED.ordinal()] = 0;
        out[LifeStory.PARTLY.ordinal()] = 0;
        out[LifeStory.STRIPPED.ordinal()] = onTop ? bareOf[p] : finished;
        out[LifeStory.REPLACED.ordinal()] =
                mixed(StoryNumber.REPLACED_APART, replacedOf[p], t.plain(within, USUAL, job));
        out[LifeStory.PATCH.ordinal()] = t.patch(within, panelWidth, job);
        out[LifeStory.SKIM.ordinal()] = skimOf[p];
    }

    private void wholeState(double weight, int scenario, double[] shares, double mil) {
        combine();
        for (double[] filled : filledWhole) {
            sums.add(
                    weight / filledWhole.length,
                    touchedShares[StoryShares.TOUCHED.length + 1],
                    filled,
                    split,
                    scenario,
                    mil);
        }
        sums.share(1, thickness, shares);
    }

    /** How much the stories of each panel count where the likelihood of the spots is left out. */
    private void weigh(int kind, double[] shares) {
        for (int p = 0; p < count; p++) {
            for (int s = 0; s < STORIES; s++) {
                weighed[p][s] = shares[s] * signs[kind][p][s];
            }
        }
    }

    private void combine() {
        for (int p = 0; p < count; p++) {
            double[] likelihood = thickness[p];
            double[] weight = weighed[p];
            double touched = 0;
            for (int s = 1; s < FILLED; s++) {
                touched += weight[s] * likelihood[s];
            }
            double filled = 0;
            for (int s = FILLED; s < STORIES; s++) {
                filled += weight[s] * likelihood[s];
            }
            split[0][p] = weight[0] * likelihood[0];
            split[1][p] = touched;
            split[2][p] = filled;
        }
    }
}
