/**
 * Answers: how do two candidate cars stand side by side?
 * <p>The second window. Read {@link quarterlight.ui.compare.TwoCarsWindow} first.
 */
package quarterlight.ui.compare;
