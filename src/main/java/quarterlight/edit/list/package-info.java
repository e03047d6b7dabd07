/** The lists that belong to the user or travel with a visit. */
package quarterlight.edit.list;
