package quarterlight.walk.pace;

import java.util.Arrays;

/**
 * What the gaps of a walk tell under one idea of its stops: the chance that each gap was a move, right after the first photo of a stop and after
 * a later one.
 *
 * @param logWeight logarithm of how well the idea explains the gaps
 * @param heavyTailed share of the idea's gap shapes that have a heavy tail, each counting by how well it fits
 * @param inBursts share of those that know bursts
 * @param pace the mean chance of moving on from a stop that has two photos and more
 */
@SuppressWarnings("ArrayRecordComponent") // made once, read in the inner loop, compared by nobody
public record GapReading(
        double logWeight, double heavyTailed, double inBursts, double pace, double[] ifCome, double[] ifStayed) {
    public GapReading(double logWeight, double heavyTailed, double inBursts, double[] ifCome, double[] ifStayed) {
        this(logWeight, heavyTailed, inBursts, Arrays.stream(ifStayed).average().orElse(0), ifCome, ifStayed);
    }

    /** The same with another weight. */
    GapReading weighing(double log) {
        return new GapReading(log, heavyTailed, inBursts, pace, ifCome, ifStayed);
    }
}
