/** Where something was recorded: rows by their numbers and points of the diagram. */
package quarterlight.visit.pin;
