/** The body of a car: its style, construction and main dimensions. */
package quarterlight.car.body;
