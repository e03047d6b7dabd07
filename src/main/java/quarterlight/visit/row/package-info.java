/**
 * Answers: which kinds of rows has a visit, which fields has a row of each kind, and which facts has the visit itself? One catalog, read by
 * tables, the database, archives and the labels of undo.
 * <p>Uses the values. Read {@link quarterlight.visit.row.RecordKind} first, then one of its families such as {@code CarKinds}.
 *
 * <p>Decided in docs/decisions: 0133.
 */
package quarterlight.visit.row;
