/**
 * What a walk does not say: promises without a sequel, the other side of a pair, zones never spoken of; read {@link
 * quarterlight.words.unsaid.NotSaid} first.
 *
 * <p>Decided in docs/decisions: 0246.
 */
package quarterlight.words.unsaid;
