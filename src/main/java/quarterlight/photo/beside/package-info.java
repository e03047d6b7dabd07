/**
 * Answers: what do sounds and sidecars say of themselves?
 * <p>Uses ffmpeg through {@code photo.film} and the Java platform's XML reader, without external entities. For workers only. Read
 * {@link quarterlight.photo.beside.SoundFile} first.
 *
 * <p>Decided in docs/decisions: 0172.
 */
package quarterlight.photo.beside;
