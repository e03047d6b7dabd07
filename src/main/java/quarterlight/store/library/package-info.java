/**
 * Answers: what do many visits say, found by words? An index that is a cache: it may be deleted at any time and is made anew.
 * <p>Uses JDBC for SQLite. Read {@link quarterlight.store.library.LibraryIndex} first.
 *
 * <p>Decided in docs/decisions: 0238.
 */
package quarterlight.store.library;
