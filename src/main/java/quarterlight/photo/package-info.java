/**
 * Answers: what files did a visit bring home, what do they say of themselves, and how do they look?
 * <p>Uses the packages below it and values; writes nothing but copies into the originals.
 * Read {@link quarterlight.photo.FolderScan} and {@link quarterlight.photo.Taking} first.
 */
package quarterlight.photo;
