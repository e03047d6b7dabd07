/**
 * Answers: where does the car rust, how much of each zone, and what does it need?
 * <p>The Rust station; it shows what the visit holds. Read {@link quarterlight.ui.rust.RustScreen} first.
 */
package quarterlight.ui.rust;
