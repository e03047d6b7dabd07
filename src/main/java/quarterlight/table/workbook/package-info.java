/**
 * Answers: what does a sheet of a workbook (.xlsx) say, cell by cell, as text? Values only: no formula is worked out, no macro looked at, no
 * link followed.
 * <p>Uses the archives and the streaming XML reader of the platform. Read {@link quarterlight.table.workbook.Workbook} first.
 *
 * <p>Decided in docs/decisions: 0182.
 */
package quarterlight.table.workbook;
