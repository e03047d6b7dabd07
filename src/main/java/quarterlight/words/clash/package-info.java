/**
 * The contradiction ear: what was said, claimed, written in papers, stamped, measured and stated, laid against each other; read {@link
 * quarterlight.words.clash.Contradictions} first.
 *
 * <p>Decided in docs/decisions: 0247.
 */
package quarterlight.words.clash;
