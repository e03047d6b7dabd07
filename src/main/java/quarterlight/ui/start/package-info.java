/**
 * Answers: how does one begin? The page that the window shows while no visit is open.
 * <p>Read {@link quarterlight.ui.start.StartPage} first. Uses the kit; what it opens it hands to the window.
 *
 * <p>Decided in docs/decisions: 0256.
 */
package quarterlight.ui.start;
