/** Readings of the gauge and the checks of the gauge. */
package quarterlight.visit.reading;
