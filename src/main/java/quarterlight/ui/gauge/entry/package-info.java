/** Where the next reading goes. */
package quarterlight.ui.gauge.entry;
