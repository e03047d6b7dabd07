/**
 * Answers: how are hundreds of photos sorted and pinned in minutes?
 * <p>Read {@link quarterlight.ui.photos.PhotosScreen} first; the parts lie in the packages below it.
 *
 * <p>Decided in docs/decisions: 0058, 0080.
 */
package quarterlight.ui.photos;
