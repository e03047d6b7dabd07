/** Files read here and there, and the boxes of ISO media files. */
package quarterlight.photo.bytes;
