/**
 * Answers: which zones of cars with unlike bodies are the same place, so that they can be laid side by side, and why?
 * <p>Uses the zone table; which zones correspond is data. Read {@link quarterlight.compare.place.Places} first.
 *
 * <p>Decided in docs/decisions: 0201.
 */
package quarterlight.compare.place;
