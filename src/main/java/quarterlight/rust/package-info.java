/**
 * Answers: how much of a zone is rusted, from outlines traced on photos, and which grade is that?
 * <p>Uses the values. Read {@link quarterlight.rust.RustExtent} first.
 */
package quarterlight.rust;
