/**
 * Answers: which columns has a table of each kind, and which value does a row stand for?
 * <p>Uses {@code table} and {@code table.cell}. Read {@link quarterlight.table.rows.ReadingRows} first.
 */
package quarterlight.table.rows;
