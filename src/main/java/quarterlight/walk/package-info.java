/**
 * Answers: which zone does a photo that is not pinned yet most likely show?
 * <p>Uses {@link quarterlight.car} and {@link quarterlight.visit}. Read {@link quarterlight.walk.ZoneSuggestions} first.
 *
 * <p>Decided in docs/decisions: 0249, 0283, 0297.
 */
package quarterlight.walk;
