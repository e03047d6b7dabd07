/**
 * Answers: what kinds of files does a visit bring home, and why is one refused? The packages below read, decode and keep them.
 * <p>Uses values alone. Read {@link quarterlight.photo.MediaType} first.
 *
 * <p>Decided in docs/decisions: 0035, 0037, 0075, 0076, 0077, 0119, 0128, 0129, 0130.
 */
package quarterlight.photo;
