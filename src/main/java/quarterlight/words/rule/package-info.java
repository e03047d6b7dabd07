/**
 * The rules that find evidence in a clause; read {@link quarterlight.words.rule.Listening} first.
 *
 * <p>Decided in docs/decisions: 0282.
 */
package quarterlight.words.rule;
