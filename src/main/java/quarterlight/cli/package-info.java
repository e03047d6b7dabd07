/**
 * Answers: what does each verb of the command line do, print and return?
 * <p>Uses edits, adapters and science; knows no window. Read {@link quarterlight.cli.Program} first, then one verb.
 *
 * <p>Decided in docs/decisions: 0040.
 */
package quarterlight.cli;
