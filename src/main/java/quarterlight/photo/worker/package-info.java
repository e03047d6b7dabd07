/**
 * Answers: how is a file of unknown origin decoded, so that nothing in it can harm the program?
 * <p>A small process of its own does it, with limits on memory and time; it is killed and started anew where a file brings it down. Uses
 * {@code photo.decode}, {@code photo.film}, {@code photo.header} and the Java platform's processes.
 * Read {@link quarterlight.photo.worker.DecodingWorkers} first, then {@link quarterlight.photo.worker.WorkerMain}.
 *
 * <p>Decided in docs/decisions: 0127, 0271.
 */
package quarterlight.photo.worker;
