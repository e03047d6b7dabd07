/**
 * Answers: which car is it, and which zones does a car of its kind have?
 * <p>Uses {@link quarterlight.units}. Read {@link quarterlight.car.Car} and {@link quarterlight.car.ZoneCatalog} first.
 */
package quarterlight.car;
