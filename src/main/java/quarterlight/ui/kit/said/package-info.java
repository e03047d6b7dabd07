/**
 * Answers: how is a statement said? Origin and condition by letters, what the words suggest, and what stands beside it.
 * <p>Shared by the screens in which something is stated. Read {@link quarterlight.ui.kit.said.FacetBoard} first.
 *
 * <p>Decided in docs/decisions: 0185.
 */
package quarterlight.ui.kit.said;
