/**
 * Answers: what does the rust or damage of a zone ask for, given how far it goes there, whether it went through, and
 * whether the zone carries load in this construction?
 * <p>Uses the values only. The numbers stand in {@link quarterlight.rust.need.NeedClause}, which zone carries load in
 * {@link quarterlight.rust.need.LoadTable}. Read {@link quarterlight.rust.need.RepairRule} first.
 */
package quarterlight.rust.need;
