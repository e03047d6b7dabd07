/**
 * Answers: what can a user do with gauge readings, gauge checks and signs of refinishing?
 * <p>Uses {@code edit} and what edits use. Read {@link quarterlight.edit.gauge.GaugeCheckEdits} first.
 */
package quarterlight.edit.gauge;
