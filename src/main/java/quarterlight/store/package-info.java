/**
 * Answers: how is a visit kept, edited one transaction at a time, undone, and opened again by a later version?
 * <p>The only package that knows SQL. Uses JDBC for SQLite and the values. Read {@link quarterlight.store.VisitStore}
 * first.
 *
 * <p>Decided in docs/decisions: 0030, 0031, 0032, 0033, 0081, 0120.
 */
package quarterlight.store;
