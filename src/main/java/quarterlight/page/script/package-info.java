/**
 * Names and notes in every script that people write in: which typeface sets a character that the main one lacks, how letters join and which
 * way they run. Read {@link quarterlight.page.script.ScriptFont} first.
 *
 * <p>Decided in docs/decisions: 0198, 0212.
 */
package quarterlight.page.script;
