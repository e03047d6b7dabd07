/** The facts of a visit and its car, its clocks and its diagram. */
package quarterlight.edit.fact;
