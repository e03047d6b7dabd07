/** The finish history of the zone in hand. */
package quarterlight.ui.gauge.history;
