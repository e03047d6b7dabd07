/** Words as tokens, clauses, numbers and codes; read {@link quarterlight.words.text.Clauses} first. */
package quarterlight.words.text;
