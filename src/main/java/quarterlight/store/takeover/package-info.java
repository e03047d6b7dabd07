/**
 * Answers: what of a database that came from somebody else may be taken over?
 * <p>Reads it row by row, runs nothing of it, and writes what holds into a fresh database. Used by {@link quarterlight.store}. Read
 * {@link quarterlight.store.takeover.DatabaseTakeover} first.
 */
package quarterlight.store.takeover;
