/**
 * Answers: what lies in the folders that a visit brought home, and what becomes of each file?
 * <p>Uses {@code photo.originals} and {@code photo.worker}; decodes nothing itself. Read {@link quarterlight.photo.intake.FileIntake} first.
 */
package quarterlight.photo.intake;
