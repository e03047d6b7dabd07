/**
 * Answers: where does the car rust, how much of each zone, and what does it need?
 * <p>The Rust station: the panes about the photo, and what can be done; drawing itself is in {@code draw}. Read
 * {@link quarterlight.ui.rust.RustScreen} first.
 *
 * <p>Decided in docs/decisions: 0098.
 */
package quarterlight.ui.rust;
