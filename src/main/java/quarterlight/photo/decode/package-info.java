/**
 * Answers: how does a picture file look, upright, at the size wanted?
 * <p>Uses the image libraries, {@code photo.header}, {@code photo.pixels} and {@code photo.film}. Read {@link quarterlight.photo.decode.Pictures} first.
 * <p>Decided in docs/decisions: 0123.
 */
package quarterlight.photo.decode;
