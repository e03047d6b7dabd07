/**
 * Answers: what do all screens share? The look, type, texts, numbers for people, background work, the open visit.
 * <p>Uses Swing and the look and feel. Read {@code OpenVisit} and {@link quarterlight.ui.kit.look.Palette} first.
 *
 * <p>Decided in docs/decisions: 0113, 0116.
 */
package quarterlight.ui.kit;
