/**
 * Answers: of everything that matters on any of the cars, what does each of them show in the same place: found, clean, not looked
 * at, or not on this car? One row each, most severe first; never an empty cell, never a prior, no sum and no winner.
 * <p>Uses the findings of all cars. Read {@link quarterlight.compare.matter.MatterTable} first.
 *
 * <p>Decided in docs/decisions: 0200.
 */
package quarterlight.compare.matter;
