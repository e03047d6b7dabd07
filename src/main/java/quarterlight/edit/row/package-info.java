/**
 * Rows of evidence added, changed and removed.
 * <p>Decided in docs/decisions: 0277.
 */
package quarterlight.edit.row;
