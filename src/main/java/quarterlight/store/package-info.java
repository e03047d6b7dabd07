/**
 * Answers: how is a visit kept, edited one transaction at a time, undone, and opened again by a later version?
 * <p>The only package that knows SQL. Uses JDBC for SQLite and the values. Read {@link quarterlight.store.VisitStore}
 * first.
 */
package quarterlight.store;
