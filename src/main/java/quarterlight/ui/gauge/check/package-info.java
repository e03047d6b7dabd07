/** The gauge check and the mode of each zone. */
package quarterlight.ui.gauge.check;
