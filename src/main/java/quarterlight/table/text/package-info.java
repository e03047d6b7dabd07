/** Numbers, moments, outlines and scales as they stand in a cell. */
package quarterlight.table.text;
