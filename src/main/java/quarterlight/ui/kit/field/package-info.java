/**
 * What every field of the window does with typed text: leaving keeps it, Escape takes it back. Read {@link quarterlight.ui.kit.field.TypedText}
 * first. Uses Swing alone.
 *
 * <p>Decided in docs/decisions: 0210.
 */
package quarterlight.ui.kit.field;
