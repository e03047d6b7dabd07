/** Tables that other programs wrote. */
package quarterlight.table.foreign;
