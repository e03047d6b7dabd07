/** What Exif says, and the pictures that cameras keep beside it. */
package quarterlight.photo.exif;
