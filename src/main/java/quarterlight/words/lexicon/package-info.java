/** The phrases that the reading knows, as data; read {@link quarterlight.words.lexicon.Lexicon} first. */
package quarterlight.words.lexicon;
