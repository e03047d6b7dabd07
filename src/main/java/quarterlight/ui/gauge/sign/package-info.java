/** Signs taken down in one pass. */
package quarterlight.ui.gauge.sign;
