/**
 * Answers: which pixels of a region look like rust by their color?
 * <p>Pixels in, a mask out; uses nothing else of the program. Read {@link quarterlight.rust.color.ColorShare} first.
 */
package quarterlight.rust.color;
