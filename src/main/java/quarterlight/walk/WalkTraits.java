package quarterlight.walk;

import quarterlight.walk.pace.GapReading;

/**
 * What a walk is like, averaged over its hypotheses. Immutable.
 *
 * @param pace mean chance of moving on from a stop that has two photos and more
 * @param heavyTailed share of gaps of a heavy tail
 * @param inBursts share of bursts
 * @param anywhere share of moves that go to any zone
 * @param mirror share of moves to the same place on the other side
 * @param kind share of moves to a zone of the same kind
 * @param passedOver share of moves that pass over a zone
 */
record WalkTraits(
        double pace,
        double heavyTailed,
        double inBursts,
        double anywhere,
        double mirror,
        double kind,
        double passedOver) {
    static final WalkTraits NONE = new WalkTraits(0, 0, 0, 0, 0, 0, 0);

    WalkTraits plus(double weight, GapReading gaps, WalkModel.Moves moves) {
        return new WalkTraits(
                pace + weight * gaps.pace(),
                heavyTailed + weight * gaps.heavyTailed(),
                inBursts + weight * gaps.inBursts(),
                anywhere + weight * moves.anyZone(),
                mirror + weight * moves.mirror(),
                kind + weight * moves.kind(),
                passedOver + weight * moves.passedOver());
    }
}
