/**
 * Answers: which photos does the Photos station show, in which order, and which is in hand?
 * <p>Uses {@link quarterlight.ui.kit}; knows no component. Read {@link quarterlight.ui.photos.list.PhotosModel} first.
 *
 * <p>Decided in docs/decisions: 0211.
 */
package quarterlight.ui.photos.list;
