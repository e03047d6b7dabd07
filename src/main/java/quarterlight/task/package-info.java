/**
 * Answers: how does long work report its progress, and how is it cancelled?
 * <p>Uses the JDK only, and knows neither windows nor threads. Read {@link quarterlight.task.Job} first.
 */
package quarterlight.task;
