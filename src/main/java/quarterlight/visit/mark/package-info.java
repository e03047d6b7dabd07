/** Stamps, tags and other marks, dated features, and figures of the odometer. */
package quarterlight.visit.mark;
