/**
 * Answers: what does an inspector bring home from one visit? Everything recorded, as values.
 * <p>Uses {@link quarterlight.units} and {@link quarterlight.car}. Read {@link quarterlight.visit.VisitRecord} first.
 *
 * <p>Decided in docs/decisions: 0050, 0135, 0170.
 */
package quarterlight.visit;
