/**
 * Answers: what do all my visits say, where are they, and are they kept twice? Never writes to a visit.
 * <p>Uses the store and the tables. Read {@link quarterlight.edit.library.VisitLibrary} first.
 *
 * <p>Decided in docs/decisions: 0238.
 */
package quarterlight.edit.library;
