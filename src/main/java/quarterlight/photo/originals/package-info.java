/**
 * Answers: are the files of a visit there, byte for byte as they came?
 * <p>Uses the file system and values alone. Read {@link quarterlight.photo.originals.OriginalsFolder} first.
 */
package quarterlight.photo.originals;
