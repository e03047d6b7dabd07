/**
 * Answers: which zone does a photo that is not pinned yet most likely show?
 * <p>Uses {@link quarterlight.car} and {@link quarterlight.visit}. Read {@link quarterlight.walk.ZoneSuggestions} first.
 */
package quarterlight.walk;
