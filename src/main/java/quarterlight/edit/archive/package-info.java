/** A visit packed into one file that proves itself, and opened again. */
package quarterlight.edit.archive;
