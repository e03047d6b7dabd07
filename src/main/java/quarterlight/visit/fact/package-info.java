/**
 * Answers: which facts has a visit, how is each set, told, kept and asked for? One list, read by the commands, the form, tables and the
 * database.
 * <p>Uses the values. Read {@link quarterlight.visit.fact.Facts} first.
 *
 * <p>Decided in docs/decisions: 0134.
 */
package quarterlight.visit.fact;
