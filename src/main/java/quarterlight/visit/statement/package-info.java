/** What is said of a zone or the car, by the inspector or by others. */
package quarterlight.visit.statement;
