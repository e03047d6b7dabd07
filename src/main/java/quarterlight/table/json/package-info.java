/**
 * Rows and drafts as JSON, and the schemas of every document.
 *
 * <p>Decided in docs/decisions: 0261.
 */
package quarterlight.table.json;
