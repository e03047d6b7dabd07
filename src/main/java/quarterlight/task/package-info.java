/**
 * Answers: how does work run in the background, report its progress and end early?
 * <p>Uses the JDK only and knows no window. {@link quarterlight.task.Job} is work that somebody waits for, {@link quarterlight.task.LatestWork}
 * work that newer work replaces, and {@link quarterlight.task.Threads} makes the threads of both. Read Job first.
 *
 * <p>Decided in docs/decisions: 0164.
 */
package quarterlight.task;
