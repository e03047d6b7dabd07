/**
 * Signs taken down in one pass.
 * <p>Decided in docs/decisions: 0278.
 */
package quarterlight.ui.gauge.sign;
