/**
 * Reads what the inspector says on film: timed words become drafts of evidence, each tied to its zone and its second. Uses values only,
 * no screen and no file. Read {@link quarterlight.words.rule.Listening} first.
 *
 * <p>Decided in docs/decisions: 0145.
 */
package quarterlight.words;
