/**
 * What Exif says, and the pictures that cameras keep beside it.
 *
 * <p>Decided in docs/decisions: 0131.
 */
package quarterlight.photo.exif;
