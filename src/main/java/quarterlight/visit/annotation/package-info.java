/** What is drawn on photos: outlines, scales, notes, hidden regions and traces of rust. */
package quarterlight.visit.annotation;
