/**
 * Answers: in which language is a sentence said, and how does it read there?
 * <p>Uses the JDK only and knows nothing of cars. {@link quarterlight.language.Language} is the language in hand,
 * {@link quarterlight.language.Sentences} says sentences in it, from {@code quarterlight/language/AREA.properties} and their
 * neighbors such as {@code AREA_de.properties}; {@link quarterlight.language.Retold} says again what was made in English. Read Sentences first.
 *
 * <p>Decided in docs/decisions: 0279.
 */
package quarterlight.language;
