/** Rows of evidence added, changed and removed. */
package quarterlight.edit.row;
