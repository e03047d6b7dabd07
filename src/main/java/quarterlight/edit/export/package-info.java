/** A visit written for other programs, and how much of it goes out. */
package quarterlight.edit.export;
