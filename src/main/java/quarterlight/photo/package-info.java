/**
 * Answers: what files did a visit bring home, what do they say of themselves, and how do they look?
 * <p>Uses the metadata and image libraries, values and {@code capture}; writes nothing but copies into the originals.
 * Read {@link quarterlight.photo.FolderScan} and {@link quarterlight.photo.MetadataReader} first.
 */
package quarterlight.photo;
