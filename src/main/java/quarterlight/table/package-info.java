/**
 * Answers: how do tables come in and go out, and which row of a file is refused and why?
 * <p>Uses the CSV library and the values. Read {@link quarterlight.table.CsvFile} first.
 *
 * <p>Decided in docs/decisions: 0041, 0103, 0105.
 */
package quarterlight.table;
