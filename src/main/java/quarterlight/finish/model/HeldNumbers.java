package quarterlight.finish.model;

import java.util.ArrayList;
import java.util.List;
import quarterlight.finish.number.JudgedNumber;

/**
 * Which judged number, if it is wrong, changes what is said of a panel most: each number is held at its low and then at its high end in
 * the same draws of all others, and the car is worked out again. A part of the draws does for that, since both ends see the same ones;
 * how far the log odds move there is how far those of the full answer would.
 */
public final class HeldNumbers {
    /** The 5th and 95th percentile of a judged number as a standard normal score. */
    public static final double END = 1.645;

    /** Of so many groups of four draws, one of each view of the jury, one is used. */
    private static final int EVERY = 8;

    private static final double EVEN = .5;
    private static final double SUREST = 1e-9;
    private static final Draws FEW = Draws.USUAL.every(EVERY);
    private static final List<Draws> LOW = held(-END);
    private static final List<Draws> HIGH = held(END);

    private HeldNumbers() {}

    /**
     * A judged number and the refinish likelihood of a panel with it at its low and at its high end.
     *
     * @param number the one that moves the panel most
     */
    public record Sway(JudgedNumber number, double low, double high) {
        public double reach() {
            return Math.abs(high - low);
        }

        /** True if the finding goes from under 50 of 100 to 50 and more, or back, between both ends. */
        public boolean turns() {
            return Math.min(low, high) < EVEN && Math.max(low, high) >= EVEN;
        }
    }

    private static List<Draws> held(double score) {
        List<Draws> held = new ArrayList<>();
        for (JudgedNumber number : JudgedNumber.values()) {
            held.add(FEW.holding(number, score));
        }
        return List.copyOf(held);
    }

    /** The number that moves each panel of a car most, in the order of its panels. */
    public static List<Sway> of(CarPosterior car) {
        double[] said = refinish(car);
        double[] free = refinish(car.with(FEW));
        Sway[] most = new Sway[said.length];
        for (JudgedNumber number : JudgedNumber.values()) {
            double[] low = refinish(car.with(LOW.get(number.ordinal())));
            double[] high = refinish(car.with(HIGH.get(number.ordinal())));
            for (int p = 0; p < said.length; p++) {
                Sway sway = new Sway(number, moved(said[p], free[p], low[p]), moved(said[p], free[p], high[p]));
                if (most[p] == null || sway.reach() > most[p].reach()) {
                    most[p] = sway;
                }
            }
        }
        return List.of(most);
    }

    private static double[] refinish(CarPosterior car) {
        double[] chances = new double[car.panels.size()];
        for (int p = 0; p < chances.length; p++) {
            chances[p] = 1 - car.panel(p).all()[0];
        }
        return chances;
    }

    /** The likelihood, its log odds moved as far as from one other to another. */
    private static double moved(double said, double from, double to) {
        return 1 / (1 + Math.exp(-(logOdds(said) + logOdds(to) - logOdds(from))));
    }

    private static double logOdds(double chance) {
        double inside = Math.max(SUREST, Math.min(1 - SUREST, chance));
        return Math.log(inside / (1 - inside));
    }
}
