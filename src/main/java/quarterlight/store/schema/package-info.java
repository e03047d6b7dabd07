/** The database and its schema, and the triggers that undo is made of. */
package quarterlight.store.schema;
