/**
 * Answers: how do two cars stand side by side, zone by zone and as a whole, and which differences go beyond what the
 * evidence leaves open? It names what speaks for each; it declares no winner.
 * <p>Uses the findings of both and the sciences behind them. Read {@link quarterlight.compare.Comparison} first.
 *
 * <p>Decided in docs/decisions: 0203.
 */
package quarterlight.compare;
