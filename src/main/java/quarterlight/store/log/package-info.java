/**
 * Answers: does the edit log hang together, and are the rows of the visit those that it tells of?
 * <p>Uses JDBC and SHA-256 alone; used by {@link quarterlight.store}. Read {@link quarterlight.store.log.LogChain} first.
 *
 * <p>Decided in docs/decisions: 0177, 0260.
 */
package quarterlight.store.log;
