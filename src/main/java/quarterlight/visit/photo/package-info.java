/** Photos, films, papers and sounds as intake found them, with their times and cameras. */
package quarterlight.visit.photo;
