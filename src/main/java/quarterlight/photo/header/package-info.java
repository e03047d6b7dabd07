/**
 * Answers: what does a file say of itself: its kind, size, time, camera, place?
 * <p>Uses the metadata library and values; decodes no pixels. Read {@link quarterlight.photo.header.MetadataReader} first.
 */
package quarterlight.photo.header;
