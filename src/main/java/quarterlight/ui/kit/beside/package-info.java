/**
 * Answers: what does the photo look like that the row in hand is about?
 * <p>Shared by the stations that read something off photos: the photo in hand large, with a loupe, two side by side, in another tone. Uses
 * the kit. Read {@link quarterlight.ui.kit.beside.PhotoBeside} first.
 *
 * <p>Decided in docs/decisions: 0220.
 */
package quarterlight.ui.kit.beside;
