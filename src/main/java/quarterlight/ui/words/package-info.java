/**
 * Answers: what did the inspector say on film, and which of it is evidence?
 * <p>The Words station: drafts of a spoken walk are heard, looked at and kept, changed or dropped. Read {@link quarterlight.ui.words.WordsScreen} first.
 *
 * <p>Decided in docs/decisions: 0228, 0229.
 */
package quarterlight.ui.words;
