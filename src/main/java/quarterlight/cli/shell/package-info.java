/**
 * Answers: how does a shell know the verbs? Completion and the manual page, both worked out of the verbs themselves.
 * <p>Uses the library of the command line. Read {@link quarterlight.cli.shell.ManualPage} first.
 *
 * <p>Decided in docs/decisions: 0236.
 */
package quarterlight.cli.shell;
