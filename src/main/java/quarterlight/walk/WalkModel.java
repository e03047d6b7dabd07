package quarterlight.walk;

import java.util.List;

/**
 * The numbers of the walk model. All are judgement, set on simulated walks; a changed number is a new version.
 * <p>Where a list stands, each value is a hypothesis; the pins of the visit decide how much each counts.
 *
 * @param photosPerStop photos at one stop on average, before any habit is known
 * @param gapPower how strongly the chance of moving rises with the gap against the visit's usual gap
 * @param mostMoving the greatest chance of a move in one gap, however long
 * @param anyZone share of moves that go to any zone instead of one next door
 * @param passedOver share of moves that pass over a zone without a photo
 * @param restless chance of moving on after the first photo of a stop, against the chance that the gap alone gives
 * @param settled the same after later photos of a stop
 * @param pinSure probability that a pin names the zone where the walker stood
 * @param nearestPin how much more the zone of the pin nearest in time counts than the chain says, since the chain may go by a wrong map
 * @param priorMoves how many observed moves from a zone the zones next door are worth together
 * @param habitGaps from how many observed gaps on the habits decide how a gap tells of a move
 */
public record WalkModel(
        List<Double> photosPerStop,
        double gapPower,
        double mostMoving,
        List<Double> anyZone,
        double passedOver,
        double restless,
        double settled,
        double pinSure,
        double nearestPin,
        double priorMoves,
        int habitGaps) {
    public static final WalkModel V2 =
            new WalkModel(List.of(3.5, 7.0), 1.5, 0.95, List.of(0.06, 0.9), 0.08, 0.6, 1.2, 0.97, 1.3, 0.8, 40);

    public WalkModel {
        photosPerStop = List.copyOf(photosPerStop);
        anyZone = List.copyOf(anyZone);
    }
}
