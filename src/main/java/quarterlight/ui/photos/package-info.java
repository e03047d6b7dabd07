/**
 * Answers: how are hundreds of photos sorted and pinned in minutes?
 * <p>Read {@link quarterlight.ui.photos.PhotosScreen} first; the parts lie in the packages below it.
 */
package quarterlight.ui.photos;
