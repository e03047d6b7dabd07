/**
 * Photos, films, papers and sounds as intake found them, with their times and cameras.
 *
 * <p>Decided in docs/decisions: 0169, 0190.
 */
package quarterlight.visit.photo;
