/**
 * Answers: what kinds of files does a visit bring home, and why is one refused? The packages below read, decode and keep them.
 * <p>Uses values alone. Read {@link quarterlight.photo.MediaType} first.
 */
package quarterlight.photo;
