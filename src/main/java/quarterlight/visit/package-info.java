/**
 * Answers: what does an inspector bring home from one visit? Everything recorded, as values.
 * <p>Uses {@link quarterlight.units} and {@link quarterlight.car}. Read {@link quarterlight.visit.VisitRecord} first.
 */
package quarterlight.visit;
