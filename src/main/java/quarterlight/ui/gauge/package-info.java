/**
 * Answers: what did the gauge read, how good is it, and what does it say of the finish?
 * <p>The Gauge station. Read {@link quarterlight.ui.gauge.GaugeScreen} first.
 *
 * <p>Decided in docs/decisions: 0099.
 */
package quarterlight.ui.gauge;
