/** Whether the gauge can be trusted, and what it can read through. */
package quarterlight.thickness.gauge;
