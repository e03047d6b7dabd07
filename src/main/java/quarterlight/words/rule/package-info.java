/** The rules that find evidence in a clause; read {@link quarterlight.words.rule.Listening} first. */
package quarterlight.words.rule;
