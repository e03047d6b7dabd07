/** Rows and drafts as JSON. */
package quarterlight.table.json;
