/** Verbs that make what leaves the house: pages, sheets, exports, archives. */
package quarterlight.cli.delivery;
