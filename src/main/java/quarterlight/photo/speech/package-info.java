/**
 * Answers: what is said in a sound, as words with times, by a speech recognizer on this computer?
 * <p>A library runs a model file that the user names, in a process of its own with limits on memory and time; nothing is fetched. Uses {@code photo.worker},
 * {@code photo.wire} and the recognizer's library. Read {@link quarterlight.photo.speech.LocalRecognizer} first.
 *
 * <p>Decided in docs/decisions: 0230.
 */
package quarterlight.photo.speech;
