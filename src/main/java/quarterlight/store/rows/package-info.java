/**
 * Answers: how does each recorded value stand in a table of the visit's database?
 * <p>Uses JDBC and the values; used by {@link quarterlight.store} alone. Read {@link quarterlight.store.rows.TableShape}
 * first.
 */
package quarterlight.store.rows;
