package quarterlight.walk;

import java.util.List;

/**
 * The numbers of the walk model. All are judgement, set on simulated walks; a changed number is a new version.
 * <p>Where a list stands, each value is a hypothesis; the pins of the visit decide how much each counts.
 *
 * @param paces how many photos a stop has and how the chance of moving rises with the gap, before any habit is known
 * @param mostMoving the greatest chance of a move in one gap, however long
 * @param moves where moves go
 * @param passedOver share of moves that pass over a zone without a photo
 * @param restless chance of moving on after the first photo of a stop, against the chance that the gap alone gives
 * @param settled the same after later photos of a stop
 * @param pinSure probability that a pin names the zone where the walker stood
 * @param returns how likely a return to a zone that is pinned elsewhere is, against a zone not pinned yet
 * @param priorMoves how many observed moves from a zone the zones next door are worth together
 * @param habitGaps from how many observed gaps on the habits decide how a gap tells of a move
 */
public record WalkModel(
        List<Pace> paces,
        double mostMoving,
        List<Moves> moves,
        double passedOver,
        double restless,
        double settled,
        double pinSure,
        double returns,
        double priorMoves,
        int habitGaps) {
    /**
     * A hypothesis of the pace.
     *
     * @param photosPerStop photos at one stop on average
     * @param gapPower how strongly the chance of moving rises with the gap against the visit's usual gap
     */
    public record Pace(double photosPerStop, double gapPower) {}

    /**
     * A hypothesis of where moves go; what is left of the shares goes next door.
     *
     * @param anyZone share of moves that go to any zone
     * @param mirror share that go to the same place on the other side
     * @param kind share that go to a zone of the same kind
     * @param nearestPin how much more the zone of the pin nearest in time counts than the chain says, since the chain may go by
     *     a wrong map
     */
    public record Moves(double anyZone, double mirror, double kind, double nearestPin) {}

    public static final WalkModel V3 = new WalkModel(
            List.of(new Pace(3.5, 1.5), new Pace(8, 1.5), new Pace(6, 0.5)),
            0.95,
            List.of(
                    new Moves(0.06, 0, 0, 1.3),
                    new Moves(0.9, 0, 0, 1.8),
                    new Moves(0.1, 0.45, 0.1, 1.5),
                    new Moves(0.1, 0.1, 0.7, 1.5)),
            0.08,
            0.3,
            1.4,
            0.97,
            0.5,
            0.8,
            40);

    public WalkModel {
        paces = List.copyOf(paces);
        moves = List.copyOf(moves);
    }
}
