/**
 * Answers: how does the command line tell a comparison: as a document of JSON, and as text?
 * <p>Both say what the sheet of the comparison says. Read {@link quarterlight.cli.compare.ComparisonJson} first.
 */
package quarterlight.cli.compare;
