/**
 * Answers: how do tables come in and go out, and which row of a file is refused and why?
 * <p>Uses the CSV library and the values. Read {@link quarterlight.table.CsvFile} first.
 */
package quarterlight.table;
