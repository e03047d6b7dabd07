/**
 * Answers: how is a film or memo played, and what is seen and heard of it at a moment?
 * <p>Decoding is done by workers, the sound goes to the device of the computer if there is one. Read {@link quarterlight.ui.kit.play.Player} first.
 *
 * <p>Decided in docs/decisions: 0229.
 */
package quarterlight.ui.kit.play;
