package quarterlight.walk;

/**
 * The numbers of the walk model. All are judgement, set on simulated walks; a changed number is a new version.
 *
 * @param photosPerStop photos at one stop on average, before any habit is known
 * @param gapPower how strongly the chance of moving rises with the gap against the visit's usual gap
 * @param mostMoves most moves expected within one gap, however long
 * @param anyZone share of moves that go to any zone instead of one next door
 * @param pinSure probability that a pin names the zone where the walker stood
 * @param habitWeight weight of one observed move against the prior weight 1 of each zone next door
 * @param habitPhotos prior weight of {@code photosPerStop}, in observed gaps
 */
public record WalkModel(
        double photosPerStop,
        double gapPower,
        double mostMoves,
        double anyZone,
        double pinSure,
        double habitWeight,
        double habitPhotos) {
    public static final WalkModel V1 = new WalkModel(4, 1.5, 3, 0.06, 0.97, 4, 40);
}
