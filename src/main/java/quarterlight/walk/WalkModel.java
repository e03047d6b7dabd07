package quarterlight.walk;

import java.util.List;

/**
 * The numbers of the walk model. All are judgement, set on simulated walks; a changed number is a new version.
 * <p>Where a list stands, each value is a hypothesis; the pins of the visit decide how much each counts.
 *
 * @param moves where moves go
 * @param pinSure probability that a pin names the zone where the walker stood
 * @param returns how likely a return to a zone that is pinned elsewhere is, against a zone not pinned yet
 * @param priorMoves how many observed moves from a zone the zones next door are worth together
 * @param habitGaps from how many observed gaps on the habits decide how a gap tells of a move
 * @param pinsOfPace the power with which the pins count where ideas of the pace are weighed: on a wrong map more moves look
 *     likelier than they are, so mostly the gaps decide
 */
public record WalkModel(
        List<Moves> moves, double pinSure, double returns, double priorMoves, int habitGaps, double pinsOfPace) {
    /**
     * A hypothesis of where moves go; what is left of the shares goes next door.
     *
     * @param prior how likely it is beforehand
     * @param anyZone share of moves that go to any zone
     * @param mirror share that go to the same place on the other side
     * @param kind share that go to a zone of the same kind
     * @param passedOver share of moves that pass over a zone without a photo
     * @param single how likely a zone is that has none like it on the other side, against one that has: who goes from the left to the right
     *     one photographs parts of which there are two
     */
    public record Moves(double prior, double anyZone, double mirror, double kind, double passedOver, double single) {}

    public static final WalkModel V5 = new WalkModel(
            List.of(
                    new Moves(0.2, 0.06, 0, 0, 0.08, 1),
                    new Moves(0.2, 0.3, 0, 0, 0.08, 1),
                    new Moves(0.2, 0.1, 0, 0, 0.6, 1),
                    new Moves(0.2, 0.9, 0, 0, 0.08, 1),
                    new Moves(0.2, 0.1, 0.45, 0.1, 0.08, 0.2),
                    new Moves(0.2, 0.15, 0, 0.8, 0.08, 1)),
            0.97,
            0.5,
            0.8,
            40,
            0.3);

    public WalkModel {
        moves = List.copyOf(moves);
    }
}
